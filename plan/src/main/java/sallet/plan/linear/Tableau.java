package sallet.plan.linear;

import java.util.Arrays;

/**
 * Where a linear programme stands: which variables are basic, what they are worth and what the
 * others would cost. Rows read {@code Ax - s = 0} with a slack s between the row's bounds; columns
 * are 0 or more.
 */
final class Tableau {
  /** How far a value may lie outside its bounds. */
  static final double OUTSIDE = 1e-7;

  final Columns columns = new Columns();
  final Basis basis = new Basis(columns);
  private int rows;
  private double[] lowest = new double[64];
  private double[] highest = new double[64];
  private boolean[] atHighest = new boolean[64];
  private double[] cost = new double[256];

  /** What is added to the costs for a while; of slacks too. */
  private double[] columnShift = new double[256];

  private double[] rowShift = new double[64];
  private boolean[] basicColumn = new boolean[256];
  private boolean[] basicSlack = new boolean[64];
  private double[] value = new double[0];
  private double[] columnCost = new double[256];
  private double[] slackCost = new double[64];
  private double[] multiplier = new double[0];
  private double[] inverseRow = new double[0];
  private double[] columnInRow = new double[256];
  private boolean grown;

  int addRow(double low, double high) {
    if (rows == lowest.length) {
      lowest = Arrays.copyOf(lowest, 2 * rows);
      highest = Arrays.copyOf(highest, 2 * rows);
      atHighest = Arrays.copyOf(atHighest, 2 * rows);
      rowShift = Arrays.copyOf(rowShift, 2 * rows);
      basicSlack = Arrays.copyOf(basicSlack, 2 * rows);
      slackCost = Arrays.copyOf(slackCost, 2 * rows);
    }
    lowest[rows] = low;
    highest[rows] = high;
    basicSlack[rows] = true;
    grown = true;
    return rows++;
  }

  int addColumn(double columnCost) {
    int column = columns.add();
    if (column == cost.length) {
      cost = Arrays.copyOf(cost, 2 * column);
      columnShift = Arrays.copyOf(columnShift, 2 * column);
      basicColumn = Arrays.copyOf(basicColumn, 2 * column);
      columnInRow = Arrays.copyOf(columnInRow, 2 * column);
      this.columnCost = Arrays.copyOf(this.columnCost, 2 * column);
    }
    cost[column] = columnCost;
    return column;
  }

  void set(int row, int column, double coefficient) {
    columns.set(column, row, coefficient);
    grown |= basicColumn[column];
  }

  void lowest(int row, double low) {
    lowest[row] = low;
  }

  int rows() {
    return rows;
  }

  /** The basic variable of a row. */
  int variable(int row) {
    return basis.variable(row);
  }

  /** Whether it is time to work everything out anew. */
  boolean worn() {
    return basis.worn();
  }

  /** Squared length of a variable's column with its cost's place. */
  double squaredLength(int v) {
    return v < 0 ? 2 : 1 + columns.squaredLength(v);
  }

  /** What the minimum would rise by for one more of a row's bound. */
  double multiplier(int row) {
    return row < multiplier.length ? multiplier[row] : 0;
  }

  /** Values of all columns. */
  double[] columnValues() {
    double[] all = new double[columns.count()];
    for (int i = 0; i < rows; i++) {
      if (variable(i) >= 0) {
        all[variable(i)] = Math.max(0, value[i]);
      }
    }
    return all;
  }

  /** Cost of these values. */
  double objective(double[] values) {
    double sum = 0;
    for (int j = 0; j < values.length; j++) {
      sum += cost[j] * values[j];
    }
    return sum;
  }

  /** Takes in new rows and coefficients and works everything out anew. */
  void refresh() {
    if (grown || basis.worn()) {
      factor();
    }
    values();
    costs();
  }

  /** Factors the basis anew. */
  void factor() {
    if (basis.rows() < rows) {
      basis.grow(rows);
      value = new double[rows];
      multiplier = new double[rows];
      inverseRow = new double[rows];
    }
    basis.factor();
    Arrays.fill(basicColumn, false);
    Arrays.fill(basicSlack, false);
    for (int i = 0; i < rows; i++) {
      mark(basis.variable(i), true);
    }
    grown = false;
  }

  private void mark(int variable, boolean basic) {
    if (variable < 0) {
      basicSlack[~variable] = basic;
    } else {
      basicColumn[variable] = basic;
    }
  }

  /** Values of the basic variables, from those of the slacks at their bounds. */
  void values() {
    for (int i = 0; i < rows; i++) {
      value[i] = basicSlack[i] ? 0 : slackAtBound(i);
    }
    basis.solve(value);
  }

  /** What a slack that is not basic is worth; a bound that has become free is left. */
  private double slackAtBound(int row) {
    double bound = atHighest[row] ? highest[row] : lowest[row];
    if (Double.isInfinite(bound)) {
      atHighest[row] = !atHighest[row];
      bound = atHighest[row] ? highest[row] : lowest[row];
    }
    return Double.isInfinite(bound) ? 0 : bound;
  }

  /** Reduced costs of all variables that are not basic, shifts and all. */
  void costs() {
    for (int i = 0; i < rows; i++) {
      multiplier[i] = costOf(basis.variable(i));
    }
    basis.solveTransposed(multiplier);
    for (int j = 0; j < columns.count(); j++) {
      columnCost[j] = basicColumn[j] ? 0 : cost[j] + columnShift[j] - columns.times(j, multiplier);
    }
    for (int i = 0; i < rows; i++) {
      slackCost[i] = basicSlack[i] ? 0 : rowShift[i] + multiplier[i];
    }
  }

  private double costOf(int v) {
    return v < 0 ? rowShift[~v] : cost[v] + columnShift[v];
  }

  /** Takes all shifts of costs away. */
  void unshift() {
    Arrays.fill(columnShift, 0);
    Arrays.fill(rowShift, 0);
  }

  /** Shifts the cost of a variable that is not basic so that its reduced cost becomes this. */
  void shiftTo(int v, double reduced) {
    if (v < 0) {
      rowShift[~v] += reduced - slackCost[~v];
      slackCost[~v] = reduced;
    } else {
      columnShift[v] += reduced - columnCost[v];
      columnCost[v] = reduced;
    }
  }

  /** Whether a variable may enter the basis: it is not basic and can move. */
  boolean mayEnter(int v) {
    return v < 0 ? !basicSlack[~v] && lowest[~v] < highest[~v] : !basicColumn[v];
  }

  /** 1 for a variable at its lower bound, -1 at its upper. */
  int direction(int v) {
    return v < 0 && atHighest[~v] ? -1 : 1;
  }

  /** Whether a variable that is not basic has no bound at all. */
  boolean free(int v) {
    return v < 0 && Double.isInfinite(lowest[~v]) && Double.isInfinite(highest[~v]);
  }

  double reducedCost(int v) {
    return v < 0 ? slackCost[~v] : columnCost[v];
  }

  double low(int v) {
    return v < 0 ? lowest[~v] : 0;
  }

  double high(int v) {
    return v < 0 ? highest[~v] : LinearProgramme.FREE;
  }

  /** Value of the basic variable of a row. */
  double value(int row) {
    return value[row];
  }

  /** How far the basic variable of a row lies below (negative) or above its bounds. */
  double outside(int row) {
    int v = basis.variable(row);
    return value[row] < low(v) - OUTSIDE
        ? value[row] - low(v)
        : value[row] > high(v) + OUTSIDE ? value[row] - high(v) : 0;
  }

  /** Works out a row of the inverse times the matrix. */
  void pivotRow(int row) {
    Arrays.fill(inverseRow, 0);
    inverseRow[row] = 1;
    basis.solveTransposed(inverseRow);
    for (int j = 0; j < columns.count(); j++) {
      columnInRow[j] = basicColumn[j] ? 0 : columns.times(j, inverseRow);
    }
  }

  /** Coefficient of a variable that is not basic in that row. */
  double inRow(int v) {
    return v < 0 ? -inverseRow[~v] : columnInRow[v];
  }

  /** The column of a variable in terms of the basic ones. */
  double[] column(int v) {
    double[] alpha = new double[rows];
    basis.scatter(v, alpha);
    basis.solve(alpha);
    return alpha;
  }

  /** Moves a variable that is not basic by a step, and the basic ones along. */
  void move(double[] alpha, double step) {
    for (int i = 0; i < rows; i++) {
      value[i] -= step * alpha[i];
    }
  }

  /** A slack goes from one bound to the other. */
  void flip(int v) {
    atHighest[~v] = !atHighest[~v];
  }

  /**
   * A variable takes the place of the basic one of a row, which goes to a bound. The row must have
   * been worked out.
   *
   * @param alpha the variable's column
   * @param step how far it moves
   */
  void exchange(int row, int entering, double[] alpha, double step, boolean toHighest) {
    int leaving = basis.variable(row);
    updateCosts(entering, leaving, alpha[row]);
    double enteringValue = resting(entering) + step;
    move(alpha, step);
    mark(leaving, false);
    if (leaving < 0) {
      atHighest[~leaving] = toHighest;
    }
    basis.exchange(row, entering, alpha);
    mark(entering, true);
    value[row] = enteringValue;
  }

  /** Value of a variable that is not basic. */
  double resting(int v) {
    return v < 0 ? slackAtBound(~v) : 0;
  }

  /** Reduced costs once a variable has come in by the row worked out last. */
  private void updateCosts(int entering, int leaving, double pivot) {
    double step = reducedCost(entering) / pivot;
    for (int j = 0; j < columns.count(); j++) {
      columnCost[j] -= step * columnInRow[j];
    }
    for (int i = 0; i < rows; i++) {
      slackCost[i] += basicSlack[i] ? 0 : step * inverseRow[i];
    }
    setReduced(entering, 0);
    setReduced(leaving, -step);
  }

  private void setReduced(int v, double reduced) {
    if (v < 0) {
      slackCost[~v] = reduced;
    } else {
      columnCost[v] = reduced;
    }
  }
}
