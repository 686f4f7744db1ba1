package sallet.water.learn;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The household's factor on computed water use, lognormal: air that moves more or less than
 * thought, a humidity meter that is off, leaves that are larger.
 *
 * @param median median
 * @param logSd standard deviation of its logarithm
 * @param readings how many intervals have taught it
 */
public record UseFactor(double median, double logSd, int readings) {
  /**
   * Spread of one interval's measured over computed loss, of its logarithm, the ruler's error and
   * the factor's wandering left out. Judgement.
   */
  public static final double READING_LOG_SD = 0.12;

  /**
   * How far the factor wanders, of its logarithm and the root of a day: leaves grow a little other
   * than forecast. Judgement.
   */
  private static final double WANDERS = 0.03;

  /** By how much the spread opens when season, crops or fan change. Judgement. */
  private static final double CHANGE_LOG_SD = 0.10;

  private static final double PRIOR_LOG_SD = 0.35;

  private static final NormalDistribution NORMAL = new NormalDistribution();

  public UseFactor {
    if (!(median > 0 && logSd > 0)) {
      throw new IllegalArgumentException(
          "a factor and its spread must be above 0, were %s and %s".formatted(median, logSd));
    }
  }

  /** Before any reading: 0.85, and 30 to 35 % either way. Judgement. */
  public static UseFactor prior() {
    return new UseFactor(0.85, PRIOR_LOG_SD, 0);
  }

  /**
   * After intervals, weighing each by its spread (normal-normal update of logarithms).
   *
   * @param ratios measured loss over computed loss at factor 1, each above 0
   * @param readingLogSd spread of one of them
   */
  public UseFactor after(List<Double> ratios, double readingLogSd) {
    double weight = 1 / (readingLogSd * readingLogSd);
    double precision = 1 / (logSd * logSd);
    double sum = Math.log(median) * precision;
    for (double ratio : ratios) {
      if (!(ratio > 0)) {
        throw new IllegalArgumentException("a measured share must be above 0, was " + ratio);
      }
      sum += Math.log(ratio) * weight;
      precision += weight;
    }
    return new UseFactor(
        Math.exp(sum / precision), Math.sqrt(1 / precision), readings + ratios.size());
  }

  /**
   * After losses between readings of the level, in the order of time. Between intervals the factor
   * wanders, so that the latest counts most; the error of a reading that ends one interval and
   * begins the next counts with opposite signs and goes out of their sum. Prediction of a normal
   * variable from others, as for Gaussian processes (Rasmussen and Williams 2006, equations 2.23
   * and 2.24).
   *
   * @param intervals intervals with a loss above 0
   */
  public UseFactor afterLosses(List<Interval> intervals) {
    return intervals.isEmpty()
        ? this
        : afterLosses(intervals, afterLosses(intervals, median).median);
  }

  private UseFactor afterLosses(List<Interval> intervals, double likely) {
    int n = intervals.size();
    RealMatrix together = MatrixUtils.createRealMatrix(n, n);
    RealVector withLast = new ArrayRealVector(n);
    RealVector seen = new ArrayRealVector(n);
    double wandered = 0;
    for (int i = 0; i < n; i++) {
      Interval now = intervals.get(i);
      wandered += i == 0 ? 0 : WANDERS * WANDERS * now.days();
      double shared = logSd * logSd + wandered;
      withLast.setEntry(i, shared);
      seen.setEntry(i, Math.log(now.ratio() / median));
      together.setEntry(i, i, shared + now.logSd(likely) * now.logSd(likely));
      for (int j = i + 1; j < n; j++) {
        Interval next = intervals.get(j);
        boolean sameReading = j == i + 1 && next.goesOn();
        double ruler = sameReading ? -now.rulerLogSd(likely) * next.rulerLogSd(likely) : 0;
        together.setEntry(i, j, shared + ruler);
        together.setEntry(j, i, shared + ruler);
      }
    }
    DecompositionSolver solver = new CholeskyDecomposition(together).getSolver();
    RealVector weights = solver.solve(withLast);
    double variance = logSd * logSd + wandered - weights.dotProduct(withLast);
    return new UseFactor(
        median * Math.exp(weights.dotProduct(seen)), Math.sqrt(variance), readings + n);
  }

  /**
   * So many days after the last reading: what was learned grows old, until it is as unsure as
   * before any reading.
   */
  public UseFactor later(double days) {
    double wandered = Math.sqrt(logSd * logSd + WANDERS * WANDERS * days);
    return new UseFactor(median, Math.max(logSd, Math.min(PRIOR_LOG_SD, wandered)), readings);
  }

  /** After a change of season, crops or fan: what was learned counts for less. */
  public UseFactor loosened() {
    return new UseFactor(
        median, Math.sqrt(logSd * logSd + CHANGE_LOG_SD * CHANGE_LOG_SD), readings);
  }

  /** The value that the factor stays below with a probability. */
  public double quantile(double probability) {
    return median * Math.exp(logSd * NORMAL.inverseCumulativeProbability(probability));
  }
}
