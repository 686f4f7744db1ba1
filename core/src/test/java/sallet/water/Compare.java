package sallet.water;

import java.util.List;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;

/** Compares a row's expected value by its own tolerance: absolute, in percent or word for word. */
final class Compare {
  private Compare() {}

  static List<Outcome> number(CaseRow row, double ours) {
    String what = row.text("quantity") + ", " + row.text("unit");
    double tolerance = row.number("tolerance");
    return List.of(
        row.text("tolerance_kind").equals("pct")
            ? Outcome.relative(what, row.number("expected"), ours, tolerance / 100)
            : Outcome.number(what, row.number("expected"), ours, tolerance));
  }

  static List<Outcome> word(CaseRow row, String ours) {
    return List.of(Outcome.same(row.text("quantity"), row.text("expected"), ours));
  }

  /** The part of "day/night", or the one value there is. */
  static double part(CaseRow row, String column, int part) {
    String[] parts = row.text(column).split("/", -1);
    return Double.parseDouble(parts[Math.min(part, parts.length - 1)]);
  }
}
