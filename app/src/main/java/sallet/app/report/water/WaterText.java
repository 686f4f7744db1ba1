package sallet.app.report.water;

import java.util.List;
import sallet.app.report.Words;
import sallet.water.flood.FloodSchedule;
import sallet.water.home.WaterSheet;
import sallet.water.reservoir.TankForecast;

/** The sheet of water as text for a terminal of 80 columns. */
public final class WaterText {
  private static final int MOST_POTS = 8;
  private static final int EVERY_DAYS = 2;

  private final TextLines out = new TextLines();

  private WaterText() {}

  /** The sheet, or how the number asked for comes about. */
  public static String of(WaterReport report) {
    return report
        .explained()
        .map(Explained::text)
        .orElseGet(() -> new WaterText().sheet(report.sheet(), report.basis()));
  }

  private String sheet(WaterSheet sheet, List<String> basis) {
    out.line("WATER FROM %s", Words.dayAndYear(sheet.day()));
    out.wrap("", WaterWords.verdict(sheet));
    out.wrap("", WaterWords.planted(sheet));
    timer(sheet);
    reservoir(sheet);
    if (sheet.planted() > 0) {
      pots(sheet);
    }
    list("SOLUTION", WaterWords.solution(sheet.solution()));
    sheet.cells().ifPresent(c -> list("SEED CELLS", List.of(WaterWords.cells(c))));
    list("WHAT READINGS TAUGHT", WaterWords.learned(sheet.before(), sheet.learned()));
    list("WHAT TO KNOW", sheet.notes());
    list("WHAT THIS RESTS ON", basis);
    list("HOW IT IS RECKONED", WaterWords.how());
    list("CLEANING BETWEEN CROPS", List.of(WaterWords.cleaning(sheet.cleaning())));
    out.heading("CAUTION");
    sheet.cautions().forEach(c -> out.wrap("! ", c.text()));
    return out.toString();
  }

  private void timer(WaterSheet sheet) {
    FloodSchedule s = sheet.floods().schedule();
    out.heading("TIMER (█ the pump runs)");
    if (s.everyMinutes().isEmpty()) {
      Dial.text(s).lines().forEach(line -> out.line("%s", line));
      List<String> times = WaterWords.timer(s);
      out.wrap("", String.join(", ", times));
    } else {
      WaterWords.timer(s).forEach(line -> out.wrap("", line));
    }
    out.wrap("", WaterWords.flood(sheet.floods()));
  }

  private void reservoir(WaterSheet sheet) {
    out.heading("RESERVOIR IF NOBODY TOPS UP (█ sure, ░ band, │ a flood needs)");
    List<TankForecast.Day> days = sheet.tank().days();
    for (int i = EVERY_DAYS - 1; i < days.size(); i += EVERY_DAYS) {
      out.line("%s", LevelChart.row(sheet.tank(), days.get(i)));
      if (days.get(i).highL() <= sheet.tank().tank().leastL()) {
        break;
      }
    }
    out.wrap("", WaterWords.reservoir(sheet));
    WaterWords.before(sheet).ifPresent(line -> out.wrap("", line));
    out.wrap("", WaterWords.refill(sheet));
  }

  private void pots(WaterSheet sheet) {
    out.heading("POTS, the ones that wilt first when the pump fails");
    out.line("%-5s %-28s %8s %13s %10s", "pot", "plant", "mL a day", "floods a day", "wilts in");
    List<WaterSheet.PotLine> pots = WaterWords.telling(sheet);
    for (WaterSheet.PotLine p : pots.subList(0, Math.min(MOST_POTS, pots.size()))) {
      out.line(
          "%-5s %-28s %8.0f %13.1f %10s",
          p.pot(),
          Words.spoken(p.crop()),
          p.useMlPerDay(),
          p.floodsPerDay(),
          WaterWords.survives(p));
    }
    if (pots.size() > MOST_POTS) {
      out.line("and %d more, which last as long or longer", pots.size() - MOST_POTS);
    }
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      out.heading(title);
      lines.forEach(line -> out.wrap("- ", line));
    }
  }
}
