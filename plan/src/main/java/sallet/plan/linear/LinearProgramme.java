package sallet.plan.linear;

/**
 * A linear programme that is minimised again and again while it grows: rows and columns are named
 * by the number they got when they were made. All columns are 0 or more.
 */
public interface LinearProgramme extends AutoCloseable {
  /** No bound. */
  double FREE = Double.POSITIVE_INFINITY;

  /** What has changed since the last solution, so that the solver can go on from it. */
  enum Change {
    /** Columns, rows or coefficients were added. */
    COLUMNS,
    /** Only bounds of rows moved. */
    BOUNDS
  }

  /** A new row without coefficients; returns its number. */
  int row(double lowest, double highest);

  /** A new column of 0 or more without coefficients; returns its number. */
  int column(double cost);

  /** Sets a coefficient. */
  void set(int row, int column, double coefficient);

  /** Sets the least value of a row. */
  void lowest(int row, double lowest);

  /**
   * Finds the minimum. A solver that gives up is started anew once.
   *
   * @return whether a minimum was found; if not, the values below must not be read
   */
  boolean solve(Change change);

  /** The minimum. */
  double objective();

  /** Value of a column at the minimum. */
  double value(int column);

  /** What the minimum would rise by for one more of a row's bound. */
  double dual(int row);

  @Override
  void close();
}
