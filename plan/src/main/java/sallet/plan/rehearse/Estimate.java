package sallet.plan.rehearse;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * A mean over seasons with the interval that holds the true one in nine of ten rehearsals:
 * percentile bootstrap (Efron and Tibshirani 1993, An Introduction to the Bootstrap, chapter 13;
 * from memory), because shares near 0 and 1 are not normal.
 *
 * @param mean the mean
 * @param low lower end
 * @param high upper end
 */
public record Estimate(double mean, double low, double high) {
  private static final int RESAMPLES = 2000;
  private static final double TAIL = 0.05;

  /** The estimate from one value for each season. */
  static Estimate of(double[] values, long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    double[] means = new double[RESAMPLES];
    for (int i = 0; i < RESAMPLES; i++) {
      double sum = 0;
      for (int j = 0; j < values.length; j++) {
        sum += values[dice.nextInt(values.length)];
      }
      means[i] = sum / values.length;
    }
    Arrays.sort(means);
    return new Estimate(
        Arrays.stream(values).average().orElse(Double.NaN),
        means[(int) (TAIL * RESAMPLES)],
        means[(int) ((1 - TAIL) * RESAMPLES) - 1]);
  }
}
