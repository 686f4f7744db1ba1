package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Place;
import sallet.household.Wall;
import sallet.household.WeatherSource;

class RoomLightTest {
  private static final LocalDate WINTER_NORTH = LocalDate.of(2027, 12, 21);
  private static final LocalDate SUMMER_NORTH = LocalDate.of(2027, 6, 21);

  private static final Place TROMSO =
      Households.place(69.65, 18.96, "Europe/Oslo", new WeatherSource.Nearest());

  private static Household behind(Wall wall, Place place, Optional<Lamp> lamp) {
    return Households.household(
        place,
        Households.room(0, List.of(Households.window(wall, 0.6, 1.2, 1.2, 0.9))),
        Households.bench(0.4, 1.5, 3, 6),
        lamp);
  }

  private static Household cellar(Optional<Lamp> lamp) {
    return Households.household(
        Households.CHRISTCHURCH,
        Households.room(0, List.of()),
        Households.bench(0.4, 1.5, 3, 6),
        lamp);
  }

  @Test
  void polarNightLeavesTheLampAlone() {
    HourlyLight light =
        RoomLight.atPots(behind(Wall.SOUTH, TROMSO, Optional.of(Households.LAMP)), WINTER_NORTH, 1);
    assertThat(light.daylightDliMol(0, 0)).isZero();
    assertThat(light.lampDliMol(0, 0)).isPositive();
    assertThat(light.photoperiodHours(0)).isEqualTo(16, within(1e-9));
  }

  @Test
  void polarDayLastsTwentyFourHours() {
    HourlyLight light =
        RoomLight.atPots(behind(Wall.SOUTH, TROMSO, Optional.empty()), SUMMER_NORTH, 1);
    assertThat(light.photoperiodHours(0)).isEqualTo(24);
    for (int hour = 0; hour < 24; hour++) {
      assertThat(light.ppfdUmol(0, 0, hour)).isPositive();
    }
  }

  @Test
  void theWinterSunComesFromTheNorthInTheSouth() {
    LocalDate july = LocalDate.of(2027, 7, 1);
    HourlyLight north =
        RoomLight.atPots(behind(Wall.NORTH, Households.CHRISTCHURCH, Optional.empty()), july, 1);
    HourlyLight south =
        RoomLight.atPots(behind(Wall.SOUTH, Households.CHRISTCHURCH, Optional.empty()), july, 1);
    assertThat(north.dliMol(8, 0)).isGreaterThan(3 * south.dliMol(8, 0));
  }

  /**
   * In Christchurch (UTC+12, 172.64° E) the sun is highest at 12:30 standard time less or more a
   * quarter of an hour through the year; summer time, in force in January, must not move it.
   */
  @Test
  void hoursAreStandardTimeThroughSummerTime() {
    Household household = behind(Wall.NORTH, Households.CHRISTCHURCH, Optional.empty());
    for (LocalDate day : List.of(LocalDate.of(2027, 1, 20), LocalDate.of(2027, 6, 20))) {
      HourlyLight light = RoomLight.atPots(household, day, 1);
      double first = 0;
      double second = 0;
      for (int hour = 0; hour < 24; hour++) {
        first += light.ppfdUmol(4, 0, hour) * (hour + 0.5);
        second += light.ppfdUmol(4, 0, hour);
      }
      assertThat(first / second).as(day.toString()).isBetween(11.5, 13.5);
    }
  }

  @Test
  void daysFollowTheDateWhereverTheSpanBegins() {
    Household household = behind(Wall.NORTH, Households.CHRISTCHURCH, Optional.of(Households.LAMP));
    LocalDate from = LocalDate.of(2028, 2, 20);
    HourlyLight month = RoomLight.atPots(household, from, 30);
    HourlyLight alone = RoomLight.atPots(household, from.plusDays(17), 1);
    for (int pot = 0; pot < month.places(); pot++) {
      for (int hour = 0; hour < 24; hour++) {
        assertThat(month.ppfdUmol(pot, 17, hour)).isEqualTo(alone.ppfdUmol(pot, 0, hour));
      }
    }
    assertThat(month.photoperiodHours(17)).isEqualTo(alone.photoperiodHours(0));
  }

  /** The lamp hangs in the way of the daylight whether it is on or off. */
  @Test
  void lampAndDaylightAddUp() {
    LocalDate day = LocalDate.of(2027, 4, 3);
    HourlyLight both =
        RoomLight.atPots(
            behind(Wall.NORTH, Households.CHRISTCHURCH, Optional.of(Households.LAMP)), day, 2);
    HourlyLight sun =
        RoomLight.atPots(
            behind(Wall.NORTH, Households.CHRISTCHURCH, Optional.of(Households.LAMP.dimmedTo(0))),
            day,
            2);
    HourlyLight lamp =
        RoomLight.atPots(behind(Wall.SOUTH, TROMSO, Optional.of(Households.LAMP)), WINTER_NORTH, 2);
    for (int pot = 0; pot < both.places(); pot++) {
      for (int hour = 0; hour < 24; hour++) {
        assertThat(both.ppfdUmol(pot, 1, hour))
            .isEqualTo(sun.ppfdUmol(pot, 1, hour) + lamp.ppfdUmol(pot, 1, hour), within(1e-9));
      }
    }
  }

  /**
   * Lamp check file: a 0.3 m by 0.3 m panel of 100 µmol/s gives 266.063 µmol/m²/s 0.3 m below its
   * middle. On from 22:30 for 2.25 h that is 266.063 x 2.25 x 0.0036 = 2.1551 mol a day.
   */
  @Test
  void aLampPastMidnightLightsPartsOfHours() {
    Lamp lamp =
        new Lamp(1.0, 1.8, 0.3, 0.3, 50, 2, 0.3 + 0.12 + 0.05, LocalTime.of(22, 30), 2.25, 1);
    Household household =
        Households.household(
            Households.CHRISTCHURCH,
            Households.black(Households.room(0, List.of())),
            Households.bench(0.4, 1.5, 1, 1),
            Optional.of(lamp));
    HourlyLight light = RoomLight.atPots(household, WINTER_NORTH, 2);
    assertThat(light.ppfdUmol(0, 1, 22)).isEqualTo(266.063 / 2, within(0.01));
    assertThat(light.ppfdUmol(0, 1, 23)).isEqualTo(266.063, within(0.01));
    assertThat(light.ppfdUmol(0, 1, 0)).isEqualTo(266.063 * 0.75, within(0.01));
    assertThat(light.ppfdUmol(0, 1, 1)).isZero();
    assertThat(light.dliMol(0, 1)).isEqualTo(2.1551, within(0.0002));
    assertThat(light.photoperiodHours(1)).isEqualTo(2.25, within(1e-9));
  }

  @Test
  void withoutWindowAndLampThereIsNoDay() {
    HourlyLight light = RoomLight.atPots(cellar(Optional.empty()), WINTER_NORTH, 3);
    assertThat(light.dliMol(0, 2)).isZero();
    assertThat(light.photoperiodHours(2)).isZero();
  }

  @Test
  void aLampDimmedToNothingMakesNoDay() {
    Lamp off = new Lamp(1, 1.8, 0.9, 0.3, 120, 2.2, 0.5, LocalTime.of(6, 0), 16, 0);
    HourlyLight light = RoomLight.atPots(cellar(Optional.of(off)), WINTER_NORTH, 1);
    assertThat(light.dliMol(0, 0)).isZero();
    assertThat(light.photoperiodHours(0)).isZero();
  }

  @Test
  void aLampInTheLeavesIsRefused() {
    Lamp low = new Lamp(1, 1.8, 0.9, 0.3, 120, 2.2, 0.15, LocalTime.of(6, 0), 16, 1);
    assertThatThrownBy(() -> RoomLight.atPots(cellar(Optional.of(low)), WINTER_NORTH, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the lamp hangs 0.15 m above the tray, but the canopy reaches 0.17 m");
  }

  /** 150 µmol/m²/s for 16 h: 150 x 16 x 0.0036 = 8.64 mol. */
  @Test
  void theNurseryHasItsOwnSteadyLight() {
    HourlyLight light = RoomLight.inNursery(cellar(Optional.empty()), WINTER_NORTH, 2);
    assertThat(light.places()).isEqualTo(1);
    assertThat(light.dliMol(0, 1)).isEqualTo(8.64, within(1e-9));
    assertThat(light.ppfdUmol(0, 1, 5)).isZero();
    assertThat(light.ppfdUmol(0, 1, 6)).isEqualTo(150);
    assertThat(light.ppfdUmol(0, 1, 21)).isEqualTo(150);
    assertThat(light.ppfdUmol(0, 1, 22)).isZero();
    assertThat(light.photoperiodHours(1)).isEqualTo(16);
  }

  @Test
  void moreLightOutdoorsIsMoreLightIndoors() {
    double before = 0;
    for (double megaJoules : List.of(4.0, 8.0, 12.0)) {
      WeatherSource source =
          new WeatherSource.MonthlyIrradiation(Collections.nCopies(12, megaJoules));
      Place place = Households.place(30, 0, "UTC", source);
      HourlyLight light =
          RoomLight.atPots(
              behind(Wall.SOUTH, place, Optional.empty()), LocalDate.of(2027, 3, 1), 1);
      assertThat(light.dliMol(0, 0)).isGreaterThan(before);
      before = light.dliMol(0, 0);
    }
  }
}
