package sallet.plan.linear;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The square matrix of the basic variables, factored: triangles where it can be put in order, Gauss
 * elimination with threshold pivoting (Markowitz 1957) for the rest, and one elementary matrix for
 * each exchange since (product form of the inverse, Dantzig and Orchard-Hays 1954).
 *
 * <p>A basic variable is named by the row it is pivoted on, so that vectors over rows and over
 * basic variables are the same arrays. Column {@code j} of the programme is variable j, the slack
 * of row i (coefficient -1 there) is variable {@code ~i}.
 */
final class Basis {
  /** A pivot below this share of its column's largest value is not taken. */
  private static final double THRESHOLD = 0.1;

  /** Values below this count as nothing. */
  private static final double ZERO = 1e-12;

  /** A column without a value above this in any row left depends on the others. */
  private static final double SINGULAR = 1e-8;

  private static final int MOST_EXCHANGES = 64;

  private final Columns columns;
  private final Vectors lower = new Vectors();
  private final Vectors upper = new Vectors();
  private final Vectors exchanges = new Vectors();
  private int[] variable = new int[0];
  private boolean[] pivoted = new boolean[0];
  private double[] work = new double[0];

  Basis(Columns columns) {
    this.columns = columns;
  }

  /** The variable pivoted on a row. */
  int variable(int row) {
    return variable[row];
  }

  int rows() {
    return variable.length;
  }

  /** Adds rows, their slacks basic. */
  void grow(int rows) {
    int before = variable.length;
    variable = Arrays.copyOf(variable, rows);
    for (int i = before; i < rows; i++) {
      variable[i] = ~i;
    }
    pivoted = new boolean[rows];
    work = new double[rows];
  }

  /** Whether it is time to factor anew. */
  boolean worn() {
    return exchanges.count() >= MOST_EXCHANGES;
  }

  /** Factors the matrix; columns that depend on others give way to slacks. */
  void factor() {
    lower.clear();
    upper.clear();
    exchanges.clear();
    Arrays.fill(pivoted, false);
    int[] old = variable.clone();
    Arrays.fill(variable, Integer.MIN_VALUE);
    new Order(old).all().forEach(this::pivot);
    for (int i = 0; i < variable.length; i++) {
      if (!pivoted[i]) {
        pivot(new Pivot(~i, i));
      }
    }
  }

  /**
   * A variable and the row to pivot it on.
   *
   * @param row the row, or -1 when the largest value shall decide
   */
  private record Pivot(int variable, int row) {}

  private void pivot(Pivot p) {
    Arrays.fill(work, 0);
    scatter(p.variable, work);
    for (int k = 0; k < lower.count(); k++) {
      lower.eliminate(k, work);
    }
    int row = p.row >= 0 ? p.row : bestRow();
    if (row < 0) {
      return;
    }
    double pivot = work[row];
    upper.begin(row, pivot);
    boolean begun = false;
    for (int i = 0; i < work.length; i++) {
      if (i != row && Math.abs(work[i]) > ZERO) {
        if (pivoted[i]) {
          upper.add(i, work[i]);
        } else {
          if (!begun) {
            lower.begin(row, 1);
            begun = true;
          }
          lower.add(i, work[i] / pivot);
        }
      }
    }
    pivoted[row] = true;
    variable[row] = p.variable;
  }

  private int bestRow() {
    int best = -1;
    for (int i = 0; i < work.length; i++) {
      if (!pivoted[i] && Math.abs(work[i]) > (best < 0 ? SINGULAR : Math.abs(work[best]))) {
        best = i;
      }
    }
    return best;
  }

  /** Writes the column of a variable into an empty vector. */
  void scatter(int v, double[] x) {
    if (v < 0) {
      x[~v] = -1;
      return;
    }
    for (int i = 0; i < columns.size(v); i++) {
      x[columns.row(v, i)] = columns.value(v, i);
    }
  }

  /** Solves B x = a in place. */
  void solve(double[] x) {
    for (int k = 0; k < lower.count(); k++) {
      lower.eliminate(k, x);
    }
    for (int k = upper.count() - 1; k >= 0; k--) {
      upper.solve(k, x);
    }
    for (int k = 0; k < exchanges.count(); k++) {
      exchanges.solve(k, x);
    }
  }

  /** Solves yB = c in place. */
  void solveTransposed(double[] y) {
    for (int k = exchanges.count() - 1; k >= 0; k--) {
      exchanges.solveTransposed(k, y);
    }
    for (int k = 0; k < upper.count(); k++) {
      upper.solveTransposed(k, y);
    }
    for (int k = lower.count() - 1; k >= 0; k--) {
      lower.solveTransposed(k, y);
    }
  }

  /**
   * Exchanges the variable of a row for another.
   *
   * @param alpha the other's column, solved for
   */
  void exchange(int row, int entering, double[] alpha) {
    exchanges.begin(row, alpha[row]);
    for (int i = 0; i < alpha.length; i++) {
      if (i != row && Math.abs(alpha[i]) > ZERO) {
        exchanges.add(i, alpha[i]);
      }
    }
    variable[row] = entering;
  }

  /** Finds an order in which most columns need no elimination. */
  private final class Order {
    private final int[] vars;
    private final int[] colCount;
    private final int[] rowCount;
    private final List<List<Integer>> inRow = new ArrayList<>();
    private final boolean[] colDone;
    private final boolean[] rowDone;
    private final List<Pivot> order = new ArrayList<>();

    Order(int[] vars) {
      this.vars = vars;
      int m = vars.length;
      colCount = new int[m];
      rowCount = new int[m];
      colDone = new boolean[m];
      rowDone = new boolean[m];
      for (int i = 0; i < m; i++) {
        inRow.add(new ArrayList<>());
      }
      for (int c = 0; c < m; c++) {
        colCount[c] = size(vars[c]);
        for (int i = 0; i < size(vars[c]); i++) {
          inRow.get(row(vars[c], i)).add(c);
        }
      }
    }

    private int size(int v) {
      return v < 0 ? 1 : columns.size(v);
    }

    private int row(int v, int i) {
      return v < 0 ? ~v : columns.row(v, i);
    }

    private double value(int v, int i) {
      return v < 0 ? -1 : columns.value(v, i);
    }

    List<Pivot> all() {
      columnSingletons();
      rowSingletons();
      List<Integer> rest = new ArrayList<>();
      for (int c = 0; c < vars.length; c++) {
        if (!colDone[c]) {
          rest.add(c);
        }
      }
      rest.sort(Comparator.comparingInt(c -> colCount[c]));
      rest.forEach(c -> order.add(new Pivot(vars[c], -1)));
      return order;
    }

    private void columnSingletons() {
      Deque<Integer> single = new ArrayDeque<>();
      for (int c = 0; c < vars.length; c++) {
        if (colCount[c] == 1) {
          single.add(c);
        }
      }
      while (!single.isEmpty()) {
        int c = single.remove();
        for (int i = 0; i < size(vars[c]); i++) {
          int r = row(vars[c], i);
          if (!rowDone[r] && Math.abs(value(vars[c], i)) > SINGULAR) {
            take(c, r);
            for (int other : inRow.get(r)) {
              if (--colCount[other] == 1 && !colDone[other]) {
                single.add(other);
              }
            }
          }
        }
      }
    }

    private void rowSingletons() {
      Deque<Integer> single = new ArrayDeque<>();
      for (int r = 0; r < vars.length; r++) {
        for (int c : inRow.get(r)) {
          rowCount[r] += colDone[c] ? 0 : 1;
        }
        if (!rowDone[r] && rowCount[r] == 1) {
          single.add(r);
        }
      }
      while (!single.isEmpty()) {
        int r = single.remove();
        for (int c : inRow.get(r)) {
          if (!colDone[c] && largeEnough(c, r)) {
            take(c, r);
            for (int i = 0; i < size(vars[c]); i++) {
              int other = row(vars[c], i);
              if (--rowCount[other] == 1 && !rowDone[other]) {
                single.add(other);
              }
            }
          }
        }
      }
    }

    private boolean largeEnough(int c, int r) {
      double here = 0;
      double largest = SINGULAR;
      for (int i = 0; i < size(vars[c]); i++) {
        if (!rowDone[row(vars[c], i)]) {
          double v = Math.abs(value(vars[c], i));
          largest = Math.max(largest, v);
          here = row(vars[c], i) == r ? v : here;
        }
      }
      return here >= THRESHOLD * largest;
    }

    private void take(int c, int r) {
      colDone[c] = true;
      rowDone[r] = true;
      order.add(new Pivot(vars[c], r));
    }
  }
}
