package sallet.feed.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Minimises ½ xᵀG x − gᵀx under lower and upper bounds and rows aᵀx ≥ b, G positive definite.
 *
 * <p>Dual active-set method of Goldfarb and Idnani (1983, Mathematical Programming 27:1): starts at
 * the free minimum and takes in violated rows one by one, so it needs no feasible start and notices
 * when there is none. For the twenty variables of a shelf it takes some tens of microseconds, which
 * makes the search over bags affordable; why not a library: docs/decisions/0003.
 */
final class QuadraticProgram {
  private static final double TOLERANCE = 1e-10;
  private static final int MOST_STEPS = 2000;

  private final double[][] cholesky;
  private final double[] linear;
  private final List<double[]> rows;
  private final List<Double> limits;
  private final int size;

  /**
   * @param matrix G
   * @param linear g
   * @param rows the a of each further row
   * @param limits the b of each further row
   */
  QuadraticProgram(double[][] matrix, double[] linear, List<double[]> rows, List<Double> limits) {
    this.size = linear.length;
    this.cholesky = factor(matrix);
    this.linear = linear.clone();
    this.rows = List.copyOf(rows);
    this.limits = List.copyOf(limits);
  }

  /** The minimum within bounds, or nothing when bounds and rows exclude each other. */
  Optional<double[]> solve(double[] lower, double[] upper) {
    return new Run(lower, upper).minimise();
  }

  /** Whether a point keeps all rows, within rounding. */
  boolean holds(double[] x) {
    for (int row = 0; row < rows.size(); row++) {
      if (dot(rows.get(row), x) < limits.get(row) - 1e-6 * (1 + Math.abs(limits.get(row)))) {
        return false;
      }
    }
    return true;
  }

  private static double[][] factor(double[][] matrix) {
    int n = matrix.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        if (i == j && !(sum > 0)) {
          throw new IllegalArgumentException("matrix is not positive definite");
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
    return l;
  }

  /** L y = v. */
  private double[] forward(double[] v) {
    double[] y = new double[size];
    for (int i = 0; i < size; i++) {
      double sum = v[i];
      for (int k = 0; k < i; k++) {
        sum -= cholesky[i][k] * y[k];
      }
      y[i] = sum / cholesky[i][i];
    }
    return y;
  }

  /** Lᵀ y = v. */
  private double[] backward(double[] v) {
    double[] y = new double[size];
    for (int i = size - 1; i >= 0; i--) {
      double sum = v[i];
      for (int k = i + 1; k < size; k++) {
        sum -= cholesky[k][i] * y[k];
      }
      y[i] = sum / cholesky[i][i];
    }
    return y;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** One minimisation. */
  private final class Run {
    private final List<double[]> normals = new ArrayList<>(rows);
    private final List<Double> bounds = new ArrayList<>(limits);
    private final List<Integer> active = new ArrayList<>();
    private final List<Double> multipliers = new ArrayList<>();
    private double[] x;

    /** Orthonormal basis of the active normals in the metric of G, and its triangle. */
    private final List<double[]> basis = new ArrayList<>();

    private final List<double[]> triangle = new ArrayList<>();

    Run(double[] lower, double[] upper) {
      for (int i = 0; i < size; i++) {
        addBound(i, 1, lower[i]);
        addBound(i, -1, -upper[i]);
      }
      x = backward(forward(linear));
    }

    private void addBound(int variable, double sign, double bound) {
      if (Double.isFinite(bound)) {
        double[] normal = new double[size];
        normal[variable] = sign;
        normals.add(normal);
        bounds.add(bound);
      }
    }

    Optional<double[]> minimise() {
      for (int step = 0; step < MOST_STEPS; step++) {
        int worst = mostViolated();
        if (worst < 0) {
          return Optional.of(x);
        }
        if (!takeIn(worst)) {
          return Optional.empty();
        }
      }
      throw new IllegalStateException("quadratic programme does not settle");
    }

    private double violation(int row) {
      return dot(normals.get(row), x) - bounds.get(row);
    }

    private int mostViolated() {
      int worst = -1;
      double least = 0;
      for (int row = 0; row < normals.size(); row++) {
        double value = violation(row);
        if (value < least - TOLERANCE * (1 + Math.abs(bounds.get(row)))) {
          least = value;
          worst = row;
        }
      }
      return worst;
    }

    /** Moves until the row holds, dropping rows whose multiplier would turn negative. */
    private boolean takeIn(int row) {
      double multiplier = 0;
      double[] normal = normals.get(row);
      while (true) {
        double[] d = forward(normal);
        double[] r = project(d);
        double[] z = backward(d);
        double along = dot(z, normal);
        int leaving = -1;
        double dualStep = Double.POSITIVE_INFINITY;
        for (int j = 0; j < active.size(); j++) {
          if (r[j] > 1e-14 && multipliers.get(j) / r[j] < dualStep) {
            dualStep = multipliers.get(j) / r[j];
            leaving = j;
          }
        }
        double fullStep =
            along > 1e-12 * (1 + dot(normal, normal))
                ? -violation(row) / along
                : Double.POSITIVE_INFINITY;
        double step = Math.min(dualStep, fullStep);
        if (Double.isInfinite(step)) {
          return false;
        }
        for (int j = 0; j < active.size(); j++) {
          multipliers.set(j, Math.max(0, multipliers.get(j) - step * r[j]));
        }
        multiplier += step;
        if (!Double.isInfinite(fullStep)) {
          for (int i = 0; i < size; i++) {
            x[i] += step * z[i];
          }
        }
        if (step == fullStep) {
          active.add(row);
          multipliers.add(multiplier);
          extendBasis(row);
          return true;
        }
        active.remove(leaving);
        multipliers.remove(leaving);
        basis.clear();
        triangle.clear();
        active.forEach(this::extendBasis);
      }
    }

    /** Takes the active normals out of d; returns d's coordinates along them. */
    private double[] project(double[] d) {
      int q = active.size();
      double[] along = new double[q];
      for (int j = 0; j < q; j++) {
        along[j] = dot(basis.get(j), d);
        subtract(d, along[j], basis.get(j));
      }
      for (int j = 0; j < q; j++) {
        double again = dot(basis.get(j), d);
        along[j] += again;
        subtract(d, again, basis.get(j));
      }
      for (int i = q - 1; i >= 0; i--) {
        for (int k = i + 1; k < q; k++) {
          along[i] -= triangle.get(k)[i] * along[k];
        }
        along[i] /= triangle.get(i)[i];
      }
      return along;
    }

    /** Adds a normal to the basis, made orthogonal twice for the sake of rounding. */
    private void extendBasis(int row) {
      double[] b = forward(normals.get(row));
      double[] column = new double[basis.size() + 1];
      for (int pass = 0; pass < 2; pass++) {
        for (int j = 0; j < basis.size(); j++) {
          double part = dot(basis.get(j), b);
          column[j] += part;
          subtract(b, part, basis.get(j));
        }
      }
      double length = Math.sqrt(dot(b, b));
      column[basis.size()] = length;
      for (int i = 0; i < size; i++) {
        b[i] /= length;
      }
      basis.add(b);
      triangle.add(column);
    }

    private void subtract(double[] from, double factor, double[] what) {
      for (int i = 0; i < size; i++) {
        from[i] -= factor * what[i];
      }
    }
  }
}
