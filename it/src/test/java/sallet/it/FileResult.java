package sallet.it;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.cases.UnreadableCase;

/**
 * What came of one check file.
 *
 * @param file its path below the folder of cases
 * @param rows its rows, in order
 */
record FileResult(String file, List<RowResult> rows) {

  /**
   * Compares every row.
   *
   * @throws UnreadableCase when the file has no rows, is no table or lacks a column
   */
  static FileResult of(String file, RowCheck check, CaseFolder folder) {
    List<RowResult> results = new ArrayList<>();
    for (CaseRow row : folder.rows(file)) {
      results.add(compare(row, check, folder));
    }
    if (results.isEmpty()) {
      throw new UnreadableCase(file + " has no rows.");
    }
    return new FileResult(file, results);
  }

  /** A refusal or defect of Sallet is a failed row, not the end of the run. */
  private static RowResult compare(CaseRow row, RowCheck check, CaseFolder folder) {
    try {
      return new RowResult(row, check.check(row, folder), Optional.empty());
    } catch (RowCheck.Skipped e) {
      return new RowResult(row, List.of(), Optional.ofNullable(e.getMessage()));
    } catch (UnreadableCase e) {
      throw e;
    } catch (RuntimeException e) {
      Outcome refused = new Outcome("an answer", "a value", e.toString(), Double.POSITIVE_INFINITY);
      return new RowResult(row, List.of(refused), Optional.empty());
    }
  }

  long passed() {
    return count(RowResult::passed);
  }

  long failed() {
    return count(RowResult::failed);
  }

  long skipped() {
    return count(row -> row.skipped().isPresent());
  }

  /** Rows that hold nothing to compare. */
  long dataOnly() {
    return rows.size() - passed() - failed() - skipped();
  }

  private long count(Predicate<RowResult> which) {
    return rows.stream().filter(which).count();
  }

  /** The first of the rows that used the largest share of their tolerance. */
  Optional<RowResult> worst() {
    return rows.stream()
        .filter(row -> !row.outcomes().isEmpty())
        .min(
            Comparator.comparingInt(
                row -> -RowResult.percentOfTolerance(row.worst().orElseThrow())));
  }
}
