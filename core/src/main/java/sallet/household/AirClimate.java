package sallet.household;

import java.util.Collections;
import java.util.List;

/**
 * Air of the room, January to December.
 *
 * @param dayC temperature in hours with light on the bench, °C
 * @param nightC temperature in dark hours, °C
 * @param humidityPercent relative humidity in hours with light, 1 to 100
 * @param co2Ppm carbon dioxide that growth is reckoned with, ppm
 */
public record AirClimate(
    List<Double> dayC, List<Double> nightC, List<Double> humidityPercent, double co2Ppm) {
  public AirClimate {
    dayC = List.copyOf(dayC);
    nightC = List.copyOf(nightC);
    humidityPercent = List.copyOf(humidityPercent);
    if (dayC.size() != 12 || nightC.size() != 12 || humidityPercent.size() != 12) {
      throw new IllegalArgumentException("needs 12 day and 12 night temperatures and humidities");
    }
  }

  /** Air of the same humidity all year. */
  public AirClimate(List<Double> dayC, List<Double> nightC, double humidityPercent, double co2Ppm) {
    this(dayC, nightC, Collections.nCopies(12, humidityPercent), co2Ppm);
  }
}
