package sallet.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealVector;

/**
 * Unknowns that are independent and normal beforehand, and readings that are weighted sums of them
 * with normal noise: y = H x + e. What is believed afterwards is normal again and exact: m = C H'
 * S⁻¹ y, V = C - C H' S⁻¹ H C with S = H C H' + R (Gelman and others 2013, Bayesian Data Analysis,
 * third edition, section 14.8; from memory).
 */
final class LinearGaussian {
  private final List<Double> priorSd = new ArrayList<>();

  /**
   * A reading.
   *
   * @param terms the unknowns it sums, each with its weight
   * @param value what was read, less what was expected beforehand
   * @param sd standard deviation of its noise, above 0
   */
  record Reading(List<Term> terms, double value, double sd) {
    Reading {
      terms = List.copyOf(terms);
    }
  }

  /** A weighted unknown. */
  record Term(int unknown, double weight) {}

  /** Adds an unknown of mean 0; gives its number. */
  int unknown(double sd) {
    priorSd.add(sd);
    return priorSd.size() - 1;
  }

  /** What is believed after some readings. */
  Posterior after(List<Reading> readings) {
    int n = readings.size();
    double[][] ch = new double[n][priorSd.size()];
    for (int i = 0; i < n; i++) {
      for (Term term : readings.get(i).terms()) {
        double sd = priorSd.get(term.unknown());
        ch[i][term.unknown()] += term.weight() * sd * sd;
      }
    }
    return new Posterior(priorSd, readings, ch);
  }

  /** The sum of some unknowns, weighted, in a row that holds one number for each. */
  private static double sum(List<Term> terms, double[] row) {
    double sum = 0;
    for (Term term : terms) {
      sum += term.weight() * row[term.unknown()];
    }
    return sum;
  }

  /**
   * The unknowns after the readings. The covariance is worked out only for the sums asked for: H is
   * nearly empty, and few entries of V are ever looked at.
   */
  static final class Posterior {
    private final List<Double> priorSd;
    private final double[][] ch;
    private final double[] mean;
    private final Optional<DecompositionSolver> solver;
    private final double logEvidence;

    private Posterior(List<Double> priorSd, List<Reading> readings, double[][] ch) {
      int n = readings.size();
      this.priorSd = List.copyOf(priorSd);
      this.ch = ch;
      this.mean = new double[priorSd.size()];
      if (n == 0) {
        solver = Optional.empty();
        logEvidence = 0;
        return;
      }
      double[][] s = new double[n][n];
      double[] y = new double[n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j <= i; j++) {
          s[i][j] = s[j][i] = sum(readings.get(i).terms(), ch[j]);
        }
        s[i][i] += readings.get(i).sd() * readings.get(i).sd();
        y[i] = readings.get(i).value();
      }
      CholeskyDecomposition factored =
          new CholeskyDecomposition(new Array2DRowRealMatrix(s, false), 1e-9, 0);
      solver = Optional.of(factored.getSolver());
      double[] weights = factored.getSolver().solve(new ArrayRealVector(y, false)).toArray();
      double half = n * Math.log(2 * Math.PI);
      for (int i = 0; i < n; i++) {
        half += y[i] * weights[i] + 2 * Math.log(factored.getL().getEntry(i, i));
        for (int k = 0; k < mean.length; k++) {
          mean[k] += ch[i][k] * weights[i];
        }
      }
      logEvidence = -0.5 * half;
    }

    /** Logarithm of the density of the readings beforehand. */
    double logEvidence() {
      return logEvidence;
    }

    /** Whether the means are the same but for rounding. */
    boolean nearly(Posterior other) {
      boolean same = mean.length == other.mean.length;
      for (int k = 0; same && k < mean.length; k++) {
        same = Math.abs(mean[k] - other.mean[k]) < 1e-6;
      }
      return same;
    }

    double mean(List<Term> terms) {
      return sum(terms, mean);
    }

    double variance(List<Term> terms) {
      double[] own = new double[priorSd.size()];
      terms.forEach(t -> own[t.unknown()] += t.weight());
      double variance = 0;
      for (int k = 0; k < own.length; k++) {
        variance += own[k] * own[k] * priorSd.get(k) * priorSd.get(k);
      }
      if (solver.isEmpty()) {
        return variance;
      }
      RealVector q =
          new ArrayRealVector(Arrays.stream(ch).mapToDouble(row -> sum(terms, row)).toArray());
      return Math.max(0, variance - q.dotProduct(solver.get().solve(q)));
    }
  }
}
