package sallet.water.absence;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import sallet.water.flood.FloodSchedule;
import sallet.water.home.HomeBench;
import sallet.water.reservoir.TankForecast;

/** One page for the person who looks in, who knows nothing of plants. */
final class HelperNote {
  private HelperNote() {}

  static List<String> of(
      HomeBench bench, Preparation best, List<AwaySheet.Visit> visits, LocalDate from, int days) {
    List<String> note = new ArrayList<>();
    double cmPerL = 0.1 / bench.tankM2();
    double fullL = best.scene().levelL() + best.connectedL();
    DoubleFunction<String> high =
        litres ->
            best.connectedL() > 0
                ? String.format(Locale.ROOT, "%.0f %% full", 100 * litres / fullL)
                : String.format(Locale.ROOT, "%.0f cm", litres * cmPerL);
    if (visits.isEmpty()) {
      TankForecast.Day middle = best.outlook().tank().days().get(days / 2);
      note.add(
          String.format(
              Locale.ROOT,
              "Look in once, about %s. The reservoir then stands near %.0f L (%s) while the tray is empty; anything above %.0f L is well.",
              DayWords.of(from.plusDays(days / 2)),
              middle.levelL(),
              high.apply(middle.levelL()),
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
            "If it ever stands below %.0f L (%s) with the tray empty, fill it up with plain water.",
            Math.ceil(bench.tank().leastL()),
            high.apply(Math.ceil(bench.tank().leastL()))));
    note.add(
        "If leaves hang: look whether the timer shows the right time%s and the pump runs when it should (%s). Start one flood by hand at the timer, and wait until the tray has drained."
            .formatted(
                summerTime(bench, from) ? ", which is an hour behind the clock now," : "",
                floods(best.outlook().schedule())));
    note.add(
        "If there is water on the floor: pull the plug of the pump with dry hands, at the wall and not in the water, and call the number below.");
    note.add("Do not add fertiliser, acid or anything else; do not move the lamp or the cables.");
    note.add("You may eat outer leaves, washed.");
    return note;
  }

  private static boolean summerTime(HomeBench bench, LocalDate day) {
    ZoneId zone = bench.household().place().timeZone();
    return zone.getRules().isDaylightSavings(day.atTime(12, 0).atZone(zone).toInstant());
  }

  private static String floods(FloodSchedule schedule) {
    return schedule.everyMinutes().isPresent()
        ? String.format(Locale.ROOT, "every %.1f hours", schedule.everyMinutes().getAsInt() / 60.0)
        : String.join(", ", schedule.clockTimes());
  }
}
