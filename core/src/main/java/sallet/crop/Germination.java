package sallet.crop;

import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Time from sowing to emergence: the published table where it has the crop (ln days linear in
 * temperature), else thermal time.
 *
 * <p>Table: Harrington and Minges (1954) Vegetable Seed Germination, emergence from 13 mm depth.
 * Thermal time: rate (T - Tb)/theta up to the best temperature To, from there falling in a straight
 * line to nothing at the ceiling Tc. The table is not stretched beyond its ends: colder than its
 * coldest emergence thermal time goes on (never faster than the table's end), warmer than its
 * warmest nothing emerges. Nothing emerges below freezing.
 *
 * @param tableDays days to emergence by °C, empty when the table lacks the crop
 * @param baseC Tb, °C
 * @param optimumC To, warmest of the best temperatures, °C
 * @param ceilingC Tc, temperature from which nothing emerges, °C
 * @param thermalTimeCd theta, °C d
 * @param timeFactor factor on the time for crops that stand in for a relative
 */
public record Germination(
    NavigableMap<Double, Double> tableDays,
    double baseC,
    double optimumC,
    double ceilingC,
    double thermalTimeCd,
    double timeFactor) {

  public Germination {
    tableDays = Collections.unmodifiableNavigableMap(new TreeMap<>(tableDays));
    for (Map.Entry<Double, Double> point : tableDays.entrySet()) {
      if (!(point.getValue() > 0)) {
        throw new IllegalArgumentException(
            "days to emergence at "
                + point.getKey()
                + " °C must be above 0, were "
                + point.getValue());
      }
    }
    if (!(baseC < optimumC && optimumC < ceilingC)) {
      throw new IllegalArgumentException(
          "germination temperatures must rise from base over optimum to ceiling, were "
              + baseC
              + ", "
              + optimumC
              + ", "
              + ceilingC
              + " °C");
    }
    if (!(thermalTimeCd > 0)) {
      throw new IllegalArgumentException(
          "thermal time to emergence must be above 0 °C d, was " + thermalTimeCd);
    }
    if (!(timeFactor > 0)) {
      throw new IllegalArgumentException(
          "factor on the time to emergence must be above 0, was " + timeFactor);
    }
  }

  /** Days from sowing to emergence at a steady temperature; empty where it does not emerge. */
  public OptionalDouble daysAt(double temperatureC) {
    if (temperatureC < 0) {
      return OptionalDouble.empty();
    }
    double days = tableDays.isEmpty() ? thermalDays(temperatureC) : tabulatedDays(temperatureC);
    return Double.isInfinite(days) ? OptionalDouble.empty() : OptionalDouble.of(days * timeFactor);
  }

  /**
   * Whole days from sowing to emergence under changing temperature: each day adds the share of the
   * way that it would be of the days at its temperature. Empty when it has not come up by the end.
   *
   * @param dailyMeanC mean temperature of each day from the day of sowing on, °C
   */
  public OptionalInt daysAlong(double[] dailyMeanC) {
    double way = 0;
    for (int day = 0; day < dailyMeanC.length; day++) {
      OptionalDouble days = daysAt(dailyMeanC[day]);
      way += days.isPresent() ? 1 / days.getAsDouble() : 0;
      if (way >= 1 - 1e-9) {
        return OptionalInt.of(day + 1);
      }
    }
    return OptionalInt.empty();
  }

  private double tabulatedDays(double temperatureC) {
    Map.Entry<Double, Double> below = tableDays.floorEntry(temperatureC);
    Map.Entry<Double, Double> above = tableDays.ceilingEntry(temperatureC);
    if (below == null) {
      return Math.max(tableDays.firstEntry().getValue(), thermalDays(temperatureC));
    }
    if (above == null) {
      return Double.POSITIVE_INFINITY;
    }
    if (above.getKey().equals(below.getKey())) {
      return below.getValue();
    }
    double part = (temperatureC - below.getKey()) / (above.getKey() - below.getKey());
    return below.getValue() * Math.pow(above.getValue() / below.getValue(), part);
  }

  private double thermalDays(double temperatureC) {
    double degrees = degreesAt(temperatureC, baseC, optimumC, ceilingC);
    return degrees > 0 ? thermalTimeCd / degrees : Double.POSITIVE_INFINITY;
  }

  /** Degrees a day at a steady temperature adds towards the thermal time, °C. */
  static double degreesAt(double temperatureC, double baseC, double optimumC, double ceilingC) {
    if (temperatureC <= optimumC) {
      return Math.max(0, temperatureC - baseC);
    }
    return Math.max(0, (optimumC - baseC) * (ceilingC - temperatureC) / (ceilingC - optimumC));
  }
}
