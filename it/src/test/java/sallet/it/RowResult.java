package sallet.it;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;

/**
 * What came of one row.
 *
 * @param row the row
 * @param outcomes the compared values
 * @param skipped why nothing could be compared
 */
record RowResult(CaseRow row, List<Outcome> outcomes, Optional<String> skipped) {

  boolean passed() {
    return !outcomes.isEmpty() && outcomes.stream().allMatch(Outcome::passed);
  }

  boolean failed() {
    return outcomes.stream().anyMatch(outcome -> !outcome.passed());
  }

  /** Whether no compared value differs at all. */
  boolean exact() {
    return outcomes.stream().allMatch(outcome -> outcome.deviation() == 0);
  }

  /** The value that used the largest share of its tolerance. */
  Optional<Outcome> worst() {
    return outcomes.stream().max(Comparator.comparingInt(RowResult::percentOfTolerance));
  }

  /** Whole percent of the tolerance used, so that noise in the last digits cannot be seen. */
  static int percentOfTolerance(Outcome outcome) {
    return Double.isNaN(outcome.deviation())
        ? Integer.MAX_VALUE
        : (int) Math.min(Integer.MAX_VALUE, Math.round(100 * outcome.deviation()));
  }
}
