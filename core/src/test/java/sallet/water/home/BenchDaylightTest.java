package sallet.water.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.household.Lamp;
import sallet.household.Place;
import sallet.household.WeatherSource;
import sallet.water.flood.FloodTimes;

/** The day that lamps make together, by hand on a dial of 24 hours, and that the sun makes. */
class BenchDaylightTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "06:00+16 | 6 | 16",
        "06:00+8, 12:00+8 | 6 | 14",
        "12:00+8, 06:00+8 | 6 | 14",
        "06:00+4, 13:00+4 | 6 | 11",
        "22:00+6, 02:00+5 | 22 | 9",
        "18:00+14, 06:00+6 | 18 | 18",
        "00:00+24 | 0 | 24",
        "07:00+0, 09:00+10 | 9 | 10",
      })
  void theNightIsTheLongestDark(String lamps, double dawn, double hours) {
    List<Lamp> all = Arrays.stream(lamps.split(", ")).map(BenchDaylightTest::lamp).toList();
    FloodTimes.Light light = BenchDaylight.byLamps(all).orElseThrow();
    assertThat(light.onMinute() / 60.0).isEqualTo(dawn);
    assertThat(light.hours()).isEqualTo(hours);
  }

  /**
   * Golden, Colorado on 17 October 2003: up at 06:12:43, down at 17:20:19 standard time, the latter
   * on the same day in universal time, which is the evening before. Source: worked example of Reda
   * and Andreas 2008, Solar position algorithm, NREL/TP-560-34302 (from memory).
   */
  @Test
  void withoutLampsTheSunMakesTheDay() {
    LocalDate day = LocalDate.of(2003, 10, 17);
    Place golden =
        new Place(
            39.742476, -105.1786, 1830, ZoneId.of("America/Denver"), new WeatherSource.Nearest());
    assertThat(BenchDaylight.byLamps(List.of())).isEmpty();
    assertThat(BenchDaylight.bySun(golden, day).onMinute()).isEqualTo(6 * 60 + 13);
    FloodTimes.Light before = BenchDaylight.bySun(golden, day.minusDays(1));
    double set = before.onMinute() + 60 * before.hours();
    assertThat(set).isCloseTo(17 * 60 + 20 + 19 / 60.0, within(0.6));
  }

  /** Polar night and midnight sun: true by the sun's height at 69 degrees north. */
  @Test
  void aDayWithoutSunAndOneWithoutNight() {
    Place north = new Place(69.6, 19, 0, ZoneId.of("Europe/Oslo"), new WeatherSource.Nearest());
    assertThat(BenchDaylight.bySun(north, LocalDate.of(2026, 12, 21)).hours()).isZero();
    assertThat(BenchDaylight.bySun(north, LocalDate.of(2027, 6, 21)).hours()).isEqualTo(24);
  }

  private static Lamp lamp(String text) {
    String[] parts = text.split("\\+", -1);
    return new Lamp(
        1, 1, 0.9, 0.3, 100, 2.2, 0.5, LocalTime.parse(parts[0]), Double.parseDouble(parts[1]), 1);
  }
}
