package sallet.learn;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
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
    if (n == 0) {
      return new Posterior(new ArrayRealVector(priorSd.size()), prior(), 0);
    }
    RealMatrix h = new Array2DRowRealMatrix(n, priorSd.size());
    RealVector y = new ArrayRealVector(n);
    for (int i = 0; i < n; i++) {
      for (Term term : readings.get(i).terms()) {
        h.addToEntry(i, term.unknown(), term.weight());
      }
      y.setEntry(i, readings.get(i).value());
    }
    RealMatrix c = prior();
    RealMatrix ch = c.multiplyTransposed(h);
    RealMatrix s = h.multiply(ch);
    for (int i = 0; i < n; i++) {
      s.addToEntry(i, i, readings.get(i).sd() * readings.get(i).sd());
    }
    CholeskyDecomposition factored = new CholeskyDecomposition(s, 1e-9, 0);
    RealVector weights = factored.getSolver().solve(y);
    RealMatrix gain = factored.getSolver().solve(ch.transpose());
    return new Posterior(
        ch.operate(weights),
        c.subtract(ch.multiply(gain)),
        -0.5
            * (y.dotProduct(weights)
                + Math.log(factored.getDeterminant())
                + n * Math.log(2 * Math.PI)));
  }

  private RealMatrix prior() {
    RealMatrix c = new Array2DRowRealMatrix(priorSd.size(), priorSd.size());
    for (int i = 0; i < priorSd.size(); i++) {
      c.setEntry(i, i, priorSd.get(i) * priorSd.get(i));
    }
    return c;
  }

  /**
   * The unknowns after the readings.
   *
   * @param logEvidence logarithm of the density of the readings beforehand
   */
  record Posterior(RealVector mean, RealMatrix covariance, double logEvidence) {
    double mean(List<Term> sum) {
      return sum.stream().mapToDouble(t -> t.weight() * mean.getEntry(t.unknown())).sum();
    }

    double variance(List<Term> sum) {
      double variance = 0;
      for (Term a : sum) {
        for (Term b : sum) {
          variance += a.weight() * b.weight() * covariance.getEntry(a.unknown(), b.unknown());
        }
      }
      return Math.max(0, variance);
    }
  }
}
