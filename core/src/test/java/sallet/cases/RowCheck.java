package sallet.cases;

import java.util.List;

/** Compares Sallet with one row of a check file. */
@FunctionalInterface
public interface RowCheck {
  /**
   * The compared values of a row; empty for a row that is data only.
   *
   * @param folder the folder the row comes from, for companion files
   * @throws Skipped when the row needs something the folder does not hold
   */
  List<Outcome> check(CaseRow row, CaseFolder folder);

  /** The row cannot be checked with this folder; the message says what is missing. */
  final class Skipped extends RuntimeException {
    private static final long serialVersionUID = 1;

    public Skipped(String message) {
      super(message);
    }
  }
}
