package sallet.feed;

import sallet.cases.CaseRow;
import sallet.cases.Outcome;

/** Reads "tolerance" and "tol_type" of a row: percent or absolute, or at most for an objective. */
final class Tolerance {
  private Tolerance() {}

  static Outcome compare(CaseRow row, double ours) {
    String what = row.text("quantity") + ", " + row.text("unit");
    double expected = row.number("expected");
    double tolerance = row.number("tolerance");
    return row.text("tol_type").startsWith("pct")
        ? Outcome.relative(what, expected, ours, tolerance / 100)
        : Outcome.number(what, expected, ours, tolerance);
  }
}
