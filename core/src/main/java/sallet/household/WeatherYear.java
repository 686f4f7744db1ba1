package sallet.household;

import java.util.List;

/**
 * A year of hourly light outdoors as a weather file has it.
 *
 * @param name what the file calls the place, for notes
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 * @param elevationM above the sea, m
 * @param clockHours what the file's clock is ahead of universal time, h; no summer time
 * @param hours 8760 or, with a 29 February, 8784, from 1 January on
 */
public record WeatherYear(
    String name,
    double latitudeDeg,
    double longitudeDeg,
    double elevationM,
    double clockHours,
    List<Hour> hours) {
  public WeatherYear {
    hours = List.copyOf(hours);
  }

  /**
   * One hour, W/m²; a value the file lacks is NaN.
   *
   * @param month 1 to 12
   * @param day of the month
   * @param middleHour hours from midnight to the middle of the hour, by the file's clock
   * @param globalWm2 on the flat
   * @param diffuseWm2 on the flat from the sky
   * @param beamWm2 on a face turned to the sun
   */
  public record Hour(
      int month, int day, double middleHour, double globalWm2, double diffuseWm2, double beamWm2) {}
}
