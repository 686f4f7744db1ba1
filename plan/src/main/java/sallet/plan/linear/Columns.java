package sallet.plan.linear;

import java.util.Arrays;

/** The coefficients of a growing matrix, column by column. */
final class Columns {
  private int count;
  private int[] size = new int[256];
  private int[][] row = new int[256][];
  private double[][] value = new double[256][];

  int count() {
    return count;
  }

  /** A new column without coefficients; returns its number. */
  int add() {
    if (count == size.length) {
      size = Arrays.copyOf(size, 2 * count);
      row = Arrays.copyOf(row, 2 * count);
      value = Arrays.copyOf(value, 2 * count);
    }
    row[count] = new int[8];
    value[count] = new double[8];
    return count++;
  }

  /** Sets a coefficient, in place of an older one. */
  void set(int column, int atRow, double coefficient) {
    int n = size[column];
    for (int i = 0; i < n; i++) {
      if (row[column][i] == atRow) {
        value[column][i] = coefficient;
        return;
      }
    }
    if (n == row[column].length) {
      row[column] = Arrays.copyOf(row[column], 2 * n);
      value[column] = Arrays.copyOf(value[column], 2 * n);
    }
    row[column][n] = atRow;
    value[column][n] = coefficient;
    size[column]++;
  }

  int size(int column) {
    return size[column];
  }

  int row(int column, int i) {
    return row[column][i];
  }

  double value(int column, int i) {
    return value[column][i];
  }

  /** Sum of a column's squares. */
  double squaredLength(int column) {
    double sum = 0;
    for (int i = 0; i < size[column]; i++) {
      sum += value[column][i] * value[column][i];
    }
    return sum;
  }

  /** Scalar product of a column with a vector over all rows. */
  double times(int column, double[] y) {
    int[] rows = row[column];
    double[] values = value[column];
    double sum = 0;
    for (int i = 0; i < size[column]; i++) {
      sum += values[i] * y[rows[i]];
    }
    return sum;
  }
}
