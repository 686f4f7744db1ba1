package sallet.household;

import java.time.LocalTime;

/**
 * What electricity costs by the hour of the day, standard time.
 *
 * @param dayPrice for a kilowatt hour, in any currency
 * @param nightPrice the same in the cheap hours
 * @param nightFrom cheap hours begin
 * @param nightTo cheap hours end; may be past midnight
 */
public record Tariff(double dayPrice, double nightPrice, LocalTime nightFrom, LocalTime nightTo) {

  /** Mean price of the hour that begins at {@code hour}. */
  public double ofHour(int hour) {
    int cheap = 0;
    for (int quarter = 0; quarter < 4; quarter++) {
      LocalTime at = LocalTime.of(hour, 15 * quarter);
      boolean after = !at.isBefore(nightFrom);
      boolean before = at.isBefore(nightTo);
      boolean night = nightFrom.isAfter(nightTo) ? after || before : after && before;
      cheap += night ? 1 : 0;
    }
    return dayPrice + (nightPrice - dayPrice) * cheap / 4.0;
  }
}
