package sallet.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.household.AirClimate;

/** Indoor temperature hour by hour. */
class RoomAirTest {
  private static final AirClimate AIR =
      new AirClimate(
          List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0),
          List.of(-1.0, -2.0, -3.0, -4.0, -5.0, -6.0, -7.0, -8.0, -9.0, -10.0, -11.0, -12.0),
          50,
          450);

  @Test
  void litHoursHaveTheDayValueOfTheMonthAndDarkHoursItsNightValue() {
    boolean[] lit = new boolean[24];
    lit[7] = true;
    lit[23] = true;
    double[] january = RoomAir.hoursC(AIR, LocalDate.of(2027, 1, 31), lit);
    double[] december = RoomAir.hoursC(AIR, LocalDate.of(2027, 12, 1), lit);
    for (int h = 0; h < 24; h++) {
      boolean bright = h == 7 || h == 23;
      assertThat(january[h]).isEqualTo(bright ? 1 : -1);
      assertThat(december[h]).isEqualTo(bright ? 12 : -12);
    }
  }

  @Test
  void refusesADayThatHasNot24Hours() {
    assertThatThrownBy(() -> RoomAir.hoursC(AIR, LocalDate.of(2027, 1, 1), new boolean[23]))
        .hasMessage("a day needs 24 hours, had 23");
  }
}
