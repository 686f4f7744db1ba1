package sallet.app.report.rehearse;

import java.util.List;
import java.util.Locale;
import sallet.app.report.Words;
import sallet.plan.rehearse.Estimate;
import sallet.plan.rehearse.Result;

/** A rehearsal for the terminal: at most 80 columns of UTF-8. */
public final class RehearsalText {
  private static final int WIDTH = 80;
  private static final int NAME = 14;
  private static final int COLUMN = 11;

  private final RehearsalReport report;
  private final List<Measure> measures;
  private final StringBuilder out = new StringBuilder();

  private RehearsalText(RehearsalReport report) {
    this.report = report;
    this.measures = Measure.all(report);
  }

  /** The report. */
  public static String of(RehearsalReport report) {
    RehearsalText text = new RehearsalText(report);
    text.table();
    text.notes();
    return Words.printable(text.out.toString());
  }

  private void table() {
    out.append("REHEARSAL\n");
    wrapped("", RehearsalWords.played(report));
    out.append('\n');
    head(0);
    head(1);
    report.results().forEach(this::row);
    out.append('\n');
    wrapped("", RehearsalWords.INTERVAL + " " + RehearsalWords.TUNED);
  }

  private void head(int line) {
    StringBuilder row = new StringBuilder(" ".repeat(NAME));
    measures.forEach(m -> row.append(pad(m.column().get(line))));
    out.append(row.toString().stripTrailing()).append('\n');
  }

  private void row(Result result) {
    StringBuilder means =
        new StringBuilder(String.format("%-" + NAME + "s", result.habit().word()));
    StringBuilder ends = new StringBuilder(" ".repeat(NAME));
    for (Measure measure : measures) {
      Estimate estimate = result.estimate(measure.part());
      means.append(pad(measure.say(estimate.mean()) + measure.unit()));
      ends.append(pad(measure.say(estimate.low()) + "-" + measure.say(estimate.high())));
    }
    out.append(means).append('\n').append(ends).append('\n');
  }

  private static String pad(String text) {
    return String.format(Locale.ROOT, "%" + COLUMN + "s", text);
  }

  private void notes() {
    title("THE HABITS");
    report.results().forEach(result -> wrapped("  - ", RehearsalWords.habit(result)));
    title("WHAT THE SEASONS HIDE");
    RehearsalWords.hidden(report.hidden()).forEach(text -> wrapped("  - ", text));
  }

  private void title(String text) {
    out.append('\n').append(text).append('\n');
  }

  /** Words in lines of at most 80 columns; the first starts with the mark, the rest below it. */
  private void wrapped(String mark, String text) {
    String indent = " ".repeat(mark.length());
    StringBuilder line = new StringBuilder(mark);
    for (String word : text.split(" ", -1)) {
      if (line.length() > indent.length() && line.length() + 1 + word.length() > WIDTH) {
        out.append(line).append('\n');
        line = new StringBuilder(indent);
      }
      line.append(line.length() > indent.length() ? " " : "").append(word);
    }
    out.append(line).append('\n');
  }
}
