package sallet.plan.linear;

import java.util.Arrays;

/** A growing list of sparse vectors, each with a row of its own and the value it has there. */
final class Vectors {
  private int count;
  private int[] start = new int[64];
  private int[] pivotRow = new int[64];
  private double[] pivot = new double[64];
  private int[] row = new int[256];
  private double[] value = new double[256];

  void clear() {
    count = 0;
  }

  int count() {
    return count;
  }

  /** A new vector without values but its pivot. */
  void begin(int ownRow, double ownValue) {
    if (count + 1 == start.length) {
      start = Arrays.copyOf(start, 2 * start.length);
      pivotRow = Arrays.copyOf(pivotRow, start.length);
      pivot = Arrays.copyOf(pivot, start.length);
    }
    start[count + 1] = start[count];
    pivotRow[count] = ownRow;
    pivot[count++] = ownValue;
  }

  /** Adds a value to the vector begun last. */
  void add(int atRow, double v) {
    int at = start[count]++;
    if (at == row.length) {
      row = Arrays.copyOf(row, 2 * at);
      value = Arrays.copyOf(value, 2 * at);
    }
    row[at] = atRow;
    value[at] = v;
  }

  /** Takes a vector out of x as often as x has its pivot; returns how often. */
  double eliminate(int k, double[] x) {
    double times = x[pivotRow[k]] / pivot[k];
    if (times != 0) {
      for (int i = start[k]; i < start[k + 1]; i++) {
        x[row[i]] -= times * value[i];
      }
    }
    return times;
  }

  /** The same, leaving in x how often it was. */
  void solve(int k, double[] x) {
    x[pivotRow[k]] = eliminate(k, x);
  }

  /** The transpose of {@link #solve}. */
  void solveTransposed(int k, double[] y) {
    double sum = y[pivotRow[k]];
    for (int i = start[k]; i < start[k + 1]; i++) {
      sum -= value[i] * y[row[i]];
    }
    y[pivotRow[k]] = sum / pivot[k];
  }
}
