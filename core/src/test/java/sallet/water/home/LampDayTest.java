package sallet.water.home;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.household.Lamp;
import sallet.water.flood.FloodTimes;

/** The day that lamps make together; by hand on a dial of 24 hours. */
class LampDayTest {
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
        "'' | 6 | 12",
      })
  void theNightIsTheLongestDark(String lamps, double dawn, double hours) {
    List<Lamp> all =
        lamps.isEmpty()
            ? List.of()
            : Arrays.stream(lamps.split(", ")).map(LampDayTest::lamp).toList();
    FloodTimes.Light light = LampDay.of(all);
    assertThat(light.onMinute() / 60.0).isEqualTo(dawn);
    assertThat(light.hours()).isEqualTo(hours);
  }

  private static Lamp lamp(String text) {
    String[] parts = text.split("\\+", -1);
    return new Lamp(
        1, 1, 0.9, 0.3, 100, 2.2, 0.5, LocalTime.parse(parts[0]), Double.parseDouble(parts[1]), 1);
  }
}
