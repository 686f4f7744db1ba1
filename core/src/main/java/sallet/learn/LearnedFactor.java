package sallet.learn;

import sallet.crop.forecast.Band;

/**
 * A factor, log-normal, before and after the household's own readings.
 *
 * @param priorMedian before any reading
 * @param priorSpread standard deviation of its logarithm before any reading
 * @param readings readings that bear on it
 * @param median now
 * @param spread standard deviation of its logarithm now
 */
public record LearnedFactor(
    double priorMedian, double priorSpread, int readings, double median, double spread) {
  /** Standard normal deviate that one in ten lies above. */
  static final double TENTH = 1.2815515655446004;

  /** A factor of which nothing was read yet. */
  public static LearnedFactor prior(double median, double spread) {
    return new LearnedFactor(median, spread, 0, median, spread);
  }

  /** What is believed now: 10, 50 and 90 %. */
  public Band band() {
    return logNormal(median, spread);
  }

  /** What was believed before: 10, 50 and 90 %. */
  public Band priorBand() {
    return logNormal(priorMedian, priorSpread);
  }

  /** 10, 50 and 90 % of a log-normal quantity. */
  static Band logNormal(double median, double spread) {
    return new Band(median * Math.exp(-TENTH * spread), median, median * Math.exp(TENTH * spread));
  }
}
