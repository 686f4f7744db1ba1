package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.water.home.HomeBench;
import sallet.water.reservoir.TankForecast;

/** One page for the person who looks in, who knows nothing of plants. */
final class HelperNote {
  private HelperNote() {}

  static List<String> of(
      HomeBench bench, Preparation best, List<AwaySheet.Visit> visits, LocalDate from, int days) {
    List<String> note = new ArrayList<>();
    double cmPerL = 0.1 / bench.tankM2();
    if (visits.isEmpty()) {
      TankForecast.Day middle = best.outlook().tank().days().get(days / 2);
      note.add(
          String.format(
              Locale.ROOT,
              "Look in once, about %s. The reservoir then stands near %.0f L (%.0f cm) while the tray is empty; anything above %.0f L is well.",
              DayWords.of(from.plusDays(days / 2)),
              middle.levelL(),
              middle.levelL() * cmPerL,
              middle.lowL()));
    }
    for (AwaySheet.Visit visit : visits) {
      note.add(
          String.format(
              Locale.ROOT,
              "On %s: wait until the tray is empty, then fill the reservoir with plain cold tap water up to %.0f cm. It takes about %.0f L.",
              DayWords.of(visit.day()),
              best.scene().levelL() * cmPerL,
              visit.litres()));
    }
    note.add(
        String.format(
            Locale.ROOT,
            "If it ever stands below %.0f L (%.0f cm) with the tray empty, fill it up with plain water.",
            Math.ceil(bench.tank().leastL()),
            Math.ceil(bench.tank().leastL() * cmPerL)));
    note.add(
        "If leaves hang: look whether the timer shows the right time and the pump runs. Turn the timer by hand to start one flood, and wait until the tray has drained.");
    note.add(
        "If there is water on the floor: pull the plug of the pump with dry hands, at the wall and not in the water, and call the number below.");
    note.add("Do not add fertiliser, acid or anything else; do not move the lamp or the cables.");
    note.add("You may eat outer leaves, washed.");
    return note;
  }
}
