package sallet.crop;

import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Time from sowing to emergence: the published table where it has the crop (ln days linear in
 * temperature), else thermal time.
 *
 * @param tableDays days to emergence by °C, empty when the table lacks the crop
 * @param baseC Tb, °C; NaN when unknown
 * @param thermalTimeCd theta, °C d; NaN when unknown
 * @param timeFactor factor on the time for crops that stand in for a relative
 */
public record Germination(
    NavigableMap<Double, Double> tableDays, double baseC, double thermalTimeCd, double timeFactor) {
  public Germination {
    tableDays = java.util.Collections.unmodifiableNavigableMap(new TreeMap<>(tableDays));
  }

  /** Days from sowing to emergence at a steady temperature; empty where it does not emerge. */
  public OptionalDouble daysAt(double temperatureC) {
    throw new UnsupportedOperationException("not built yet");
  }
}
