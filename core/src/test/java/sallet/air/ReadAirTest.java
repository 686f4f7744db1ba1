package sallet.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sallet.household.Watering.AirReading;

/** A profile put right by readings. */
class ReadAirTest {
  private static final LocalDate DAY = LocalDate.of(2027, 1, 10);
  private static final int DAYS = 10;

  /** 20 °C by day and 16 °C at night, 1.2 kPa all day. */
  private static final HourlyAir PROFILE =
      new HourlyAir(
          DAY,
          IntStream.range(0, 24 * DAYS)
              .mapToObj(h -> new MoistAir(h % 24 >= 8 && h % 24 < 20 ? 20 : 16, 1.2))
              .toList());

  private static AirReading reading(int day, int hour, double c, double percent) {
    return new AirReading(
        DAY.plusDays(day),
        LocalTime.of(hour, 30),
        OptionalDouble.of(c),
        OptionalDouble.of(percent));
  }

  @Test
  void withoutReadingsTheProfileStays() {
    assertThat(ReadAir.of(PROFILE, List.of())).isEqualTo(PROFILE);
  }

  @Test
  void aLoggersHoursComeOutAsRead() {
    List<AirReading> logged =
        IntStream.range(0, 24).mapToObj(h -> reading(2, h, 18 + h / 10.0, 40 + h)).toList();
    HourlyAir air = ReadAir.of(PROFILE, logged);
    for (int h = 0; h < 24; h++) {
      assertThat(air.at(2, h).temperatureC()).isCloseTo(18 + h / 10.0, within(1e-9));
      assertThat(air.at(2, h).humidityPercent()).isCloseTo(40 + h, within(1e-9));
    }
  }

  /** One look at noon, 2 °C warmer: the night is 2 °C warmer as well, a week before and after. */
  @Test
  void oneReadingKeepsTheSwingOfDayAndNight() {
    HourlyAir air =
        ReadAir.of(
            PROFILE,
            List.of(
                new AirReading(
                    DAY.plusDays(3),
                    LocalTime.NOON,
                    OptionalDouble.of(22),
                    OptionalDouble.empty())));
    assertThat(air.at(0, 2).temperatureC()).isCloseTo(18, within(1e-9));
    assertThat(air.at(9, 12).temperatureC()).isCloseTo(22, within(1e-9));
    assertThat(air.at(9, 12).vapourKpa()).isCloseTo(1.2, within(1e-9));
  }

  /** FAO-56 table of saturation: 2.338 kPa at 20 °C, so 50 % is 1.169 kPa, 0.031 below 1.2. */
  @Test
  void humidityIsPutRightInVapourPressure() {
    HourlyAir air =
        ReadAir.of(
            PROFILE,
            List.of(
                new AirReading(
                    DAY, LocalTime.NOON, OptionalDouble.empty(), OptionalDouble.of(50))));
    assertThat(air.at(5, 3).vapourKpa()).isCloseTo(1.169, within(1e-3));
    assertThat(air.at(5, 3).temperatureC()).isEqualTo(16);
  }
}
