package sallet.crop.forecast;

import java.util.Arrays;

/**
 * A forecast with its spread: one in ten lies below the low end, one in ten above the high end.
 *
 * @param low 10 %
 * @param median 50 %
 * @param high 90 %
 */
public record Band(double low, double median, double high) {
  /** The band of some values, at least one. */
  public static Band of(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return new Band(quantile(sorted, 0.1), quantile(sorted, 0.5), quantile(sorted, 0.9));
  }

  /** The band times a factor of 0 or more. */
  public Band times(double factor) {
    return new Band(low * factor, median * factor, high * factor);
  }

  /** Whether a value lies within. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }

  /** Straight between the values of rank (n - 1) p, the usual rule of statistics programs. */
  private static double quantile(double[] sorted, double p) {
    if (sorted.length == 0) {
      throw new IllegalArgumentException("a band needs at least one value");
    }
    double rank = (sorted.length - 1) * p;
    int below = (int) rank;
    int above = Math.min(sorted.length - 1, below + 1);
    double part = rank - below;
    return part == 0 || sorted[below] == sorted[above]
        ? sorted[below]
        : sorted[below] + part * (sorted[above] - sorted[below]);
  }
}
