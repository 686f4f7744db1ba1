package sallet.air;

import java.time.LocalDate;
import sallet.household.AirClimate;

/** Indoor temperature hour by hour. */
public final class RoomAir {
  private RoomAir() {}

  /**
   * Temperature of the 24 hours of a day: the month's day value in hours with light, the night
   * value in dark hours, °C.
   *
   * @param lit for each hour whether there is light
   */
  public static double[] hoursC(AirClimate air, LocalDate day, boolean[] lit) {
    if (lit.length != 24) {
      throw new IllegalArgumentException("a day needs 24 hours, had " + lit.length);
    }
    double[] hours = new double[24];
    int month = day.getMonthValue() - 1;
    for (int h = 0; h < 24; h++) {
      hours[h] = lit[h] ? air.dayC().get(month) : air.nightC().get(month);
    }
    return hours;
  }
}
