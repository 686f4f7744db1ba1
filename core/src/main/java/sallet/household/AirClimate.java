package sallet.household;

import java.util.List;

/**
 * Air of the room, January to December.
 *
 * @param dayC temperature in hours with light on the bench, °C
 * @param nightC temperature in dark hours, °C
 * @param humidityPercent relative humidity, 1 to 100
 * @param co2Ppm carbon dioxide that growth is reckoned with, ppm
 */
public record AirClimate(
    List<Double> dayC, List<Double> nightC, double humidityPercent, double co2Ppm) {
  public AirClimate {
    dayC = List.copyOf(dayC);
    nightC = List.copyOf(nightC);
    if (dayC.size() != 12 || nightC.size() != 12) {
      throw new IllegalArgumentException("needs 12 day and 12 night temperatures");
    }
  }
}
