package sallet.water.learn;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

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

  private static final NormalDistribution NORMAL = new NormalDistribution();

  public UseFactor {
    if (!(median > 0 && logSd > 0)) {
      throw new IllegalArgumentException(
          "a factor and its spread must be above 0, were %s and %s".formatted(median, logSd));
    }
  }

  /** Before any reading: 0.85, and 30 to 35 % either way. Judgement. */
  public static UseFactor prior() {
    return new UseFactor(0.85, 0.35, 0);
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

  /** So many days later: what was learned grows old, so that the latest interval counts most. */
  public UseFactor later(double days) {
    return new UseFactor(median, Math.sqrt(logSd * logSd + WANDERS * WANDERS * days), readings);
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
