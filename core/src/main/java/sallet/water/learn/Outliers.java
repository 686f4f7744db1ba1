package sallet.water.learn;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Readings that do not fit their neighbours (identifier of Hampel). */
public final class Outliers {
  /** Turns a median of deviations into a standard deviation of a normal spread. */
  private static final double TO_SD = 1.4826;

  private static final int EACH_SIDE = 3;

  private Outliers() {}

  /**
   * Whether each reading lies more than so many scaled median deviations from the median of the
   * seven around it (fewer at the ends).
   *
   * @param resolution smallest step of the meter, below which nothing counts as deviation; 0 for
   *     none
   */
  public static List<Boolean> flags(List<Double> readings, double deviations, double resolution) {
    return IntStream.range(0, readings.size())
        .mapToObj(i -> flag(readings, i, deviations, resolution))
        .toList();
  }

  private static boolean flag(List<Double> all, int at, double deviations, double resolution) {
    double[] window =
        all.subList(Math.max(0, at - EACH_SIDE), Math.min(all.size(), at + EACH_SIDE + 1)).stream()
            .mapToDouble(Double::doubleValue)
            .toArray();
    double median = median(window);
    double spread = median(Arrays.stream(window).map(x -> Math.abs(x - median)).toArray());
    double limit = deviations * TO_SD * Math.max(spread, resolution);
    return Math.abs(all.get(at) - median) > limit;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
