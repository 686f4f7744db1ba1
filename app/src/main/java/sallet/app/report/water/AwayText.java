package sallet.app.report.water;

import java.util.List;
import java.util.Locale;
import sallet.water.absence.AwaySheet;
import sallet.water.absence.Step;
import sallet.water.reservoir.TankForecast;

/** The sheet of an absence as text for a terminal of 80 columns. */
public final class AwayText {
  private final TextLines out = new TextLines();

  private AwayText() {}

  /** The sheet, or how the number asked for comes about. */
  public static String of(AwayReport report) {
    return report
        .explained()
        .map(Explained::text)
        .orElseGet(() -> new AwayText().sheet(report.sheet(), report.basis()));
  }

  private String sheet(AwaySheet sheet, List<String> basis) {
    out.line("AWAY FROM %s", AwayWords.span(sheet));
    out.wrap("", AwayWords.verdict(sheet));
    if (!sheet.chosen().isEmpty()) {
      out.heading("BEFORE YOU LEAVE");
      sheet.chosen().forEach(step -> out.wrap("[ ] ", step.text()));
      out.wrap("[ ] ", AwayWords.leaveWith(sheet));
    }
    out.heading("AS IT STANDS");
    out.wrap("", AwayWords.departure(sheet));
    out.wrap("", AwayWords.asItStands(sheet));
    if (!sheet.chosen().isEmpty()) {
      out.heading("ONCE PREPARED");
      out.wrap("", AwayWords.prepared(sheet));
    }
    level(sheet.prepared().tank());
    timer(sheet);
    steps(sheet);
    list("WHAT WOULD BREAK IT", sheet.breaks());
    list("FOR THE PERSON WHO LOOKS IN", sheet.note());
    out.line("  %s", AwayWords.BLANKS);
    list("WHAT THIS RESTS ON", basis);
    out.heading("CAUTION");
    sheet.cautions().forEach(c -> out.wrap("! ", c.text()));
    return out.toString();
  }

  private void level(TankForecast tank) {
    out.heading("RESERVOIR (█ sure, ░ band, │ a flood needs)");
    int every = Math.max(1, tank.days().size() / 12);
    for (int i = every - 1; i < tank.days().size(); i += every) {
      out.line("%s", LevelChart.row(tank, tank.days().get(i)));
    }
  }

  private void timer(AwaySheet sheet) {
    out.heading("TIMER");
    out.wrap("", String.join(", ", WaterWords.timer(sheet.prepared().schedule())));
  }

  private void steps(AwaySheet sheet) {
    if (!sheet.steps().isEmpty()) {
      out.heading(AwayWords.helps(sheet).toUpperCase(Locale.ROOT));
      out.line("Each done alone, after the reservoir is filled up:");
      for (Step step : sheet.steps()) {
        out.wrap("- ", step.text() + " (" + AwayWords.effect(step) + ")");
      }
    }
  }

  private void list(String title, List<String> lines) {
    out.heading(title);
    lines.forEach(line -> out.wrap("- ", line));
  }
}
