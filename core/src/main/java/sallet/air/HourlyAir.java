package sallet.air;

import java.time.LocalDate;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import sallet.household.AirClimate;

/**
 * Air of the room on consecutive days, hour by hour.
 *
 * @param from first day
 * @param hours the air of each hour, 24 a day
 */
public record HourlyAir(LocalDate from, List<MoistAir> hours) {
  public HourlyAir {
    hours = List.copyOf(hours);
    if (hours.isEmpty() || hours.size() % 24 != 0) {
      throw new IllegalArgumentException("air needs whole days, had " + hours.size() + " hours");
    }
  }

  /**
   * The plain profile: day and night temperature of the month, and one vapour pressure all day. The
   * stated humidity is that of the hours with light; in the cooler dark the same water makes damper
   * air, at most saturated.
   *
   * @param lit for each day whether its 24 hours have light
   */
  public static HourlyAir profile(
      AirClimate climate, LocalDate from, int days, IntFunction<boolean[]> lit) {
    return new HourlyAir(
        from,
        IntStream.range(0, days)
            .boxed()
            .flatMap(day -> profile(climate, from.plusDays(day), lit.apply(day)).stream())
            .toList());
  }

  private static List<MoistAir> profile(AirClimate climate, LocalDate day, boolean[] lit) {
    int month = day.getMonthValue() - 1;
    MoistAir light = MoistAir.of(climate.dayC().get(month), climate.humidityPercent().get(month));
    double[] hoursC = RoomAir.hoursC(climate, day, lit);
    return IntStream.range(0, 24).mapToObj(h -> light.at(hoursC[h])).toList();
  }

  /** Number of days. */
  public int days() {
    return hours.size() / 24;
  }

  /** Air of an hour, 0 to 23, of a day counted from the first. */
  public MoistAir at(int day, int hour) {
    return hours.get(day * 24 + hour);
  }
}
