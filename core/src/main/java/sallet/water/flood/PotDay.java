package sallet.water.flood;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What one pot uses in a day, and how much of it may go between two floods.
 *
 * @param pot its name
 * @param allowedMl water that may go before the next flood, mL
 * @param mostMl water that may go at the very most, mL
 * @param mlPerHour use in each hour of the day, mL
 */
public record PotDay(String pot, double allowedMl, double mostMl, List<Double> mlPerHour) {
  private static final int HOURS = 24;
  private static final double LONGEST_MIN = 3 * 24 * 60;

  public PotDay {
    mlPerHour = List.copyOf(mlPerHour);
    if (mlPerHour.size() != HOURS || !(allowedMl > 0)) {
      throw new IllegalArgumentException(
          "pot %s needs 24 hours and water to spare, had %d hours and %.1f mL"
              .formatted(pot, mlPerHour.size(), allowedMl));
    }
  }

  /** A pot with one use by day and one by night. */
  public static PotDay steady(
      String pot, double allowedMl, double dayMlH, double nightMlH, int onHour, int offHour) {
    return new PotDay(
        pot,
        allowedMl,
        Double.POSITIVE_INFINITY,
        IntStream.range(0, HOURS)
            .mapToObj(h -> h >= onHour && h < offHour ? dayMlH : nightMlH)
            .toList());
  }

  /** The same pot when more may go between floods, up to its most. */
  public PotDay stretched(double factor) {
    return new PotDay(pot, Math.min(mostMl, factor * allowedMl), mostMl, mlPerHour);
  }

  /** Use of the whole day, mL. */
  public double dayMl() {
    return mlPerHour.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** How many times a day it uses up what may go. */
  public double floodsPerDay() {
    return dayMl() / allowedMl;
  }

  /**
   * Shortest time from a flood at any minute until what may go is gone, minutes. Use is even within
   * an hour, so the shortest time begins or ends on a full hour.
   */
  public double shortestMinutes() {
    return IntStream.range(0, HOURS)
        .mapToDouble(h -> Math.min(lastsMinutes(60.0 * h), lastedMinutes(60.0 * h)))
        .min()
        .orElseThrow();
  }

  /** How long ago it was full when what may go is gone at a full hour, at most three days. */
  private double lastedMinutes(double until) {
    double left = allowedMl;
    double now = until;
    while (until - now < LONGEST_MIN) {
      double rate = mlPerHour.get((int) Math.floorMod(Math.round(now / 60) - 1, 24L));
      if (rate >= left && rate > 0) {
        return until - now + left / rate * 60;
      }
      left -= rate;
      now -= 60;
    }
    return LONGEST_MIN;
  }

  /**
   * Minutes from a flood until what may go is gone, at most three days.
   *
   * @param minute minute of the day at which it was full
   */
  public double lastsMinutes(double minute) {
    double left = allowedMl;
    double now = minute;
    while (now - minute < LONGEST_MIN) {
      double hourEnd = (Math.floor(now / 60 + 1e-12) + 1) * 60;
      double rate = mlPerHour.get((int) Math.floorMod((long) Math.floor(now / 60 + 1e-12), 24L));
      double goes = rate * (hourEnd - now) / 60;
      if (goes >= left && rate > 0) {
        return now + left / rate * 60 - minute;
      }
      left -= goes;
      now = hourEnd;
    }
    return LONGEST_MIN;
  }
}
