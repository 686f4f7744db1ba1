package sallet.feed.water;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A water analysis as written down.
 *
 * @param name what the grower calls the water
 * @param pure whether it is said to be rain, distilled or reverse-osmosis water
 * @param entries values with their units
 * @param ph measured pH
 * @param ecMsCm measured conductivity at 25 °C, mS/cm
 */
public record WaterReport(
    String name,
    boolean pure,
    Map<WaterEntry, Value> entries,
    Optional<Double> ph,
    Optional<Double> ecMsCm) {

  /**
   * One figure.
   *
   * @param number as printed
   * @param unit as printed
   */
  public record Value(double number, AnalysisUnit unit) {}

  public WaterReport {
    EnumMap<WaterEntry, Value> copy = new EnumMap<>(WaterEntry.class);
    copy.putAll(entries);
    entries = Collections.unmodifiableMap(copy);
  }
}
