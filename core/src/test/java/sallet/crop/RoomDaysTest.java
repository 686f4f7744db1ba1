package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sallet.household.AirClimate;
import sallet.household.Nursery;
import sallet.light.HourlyLight;

/** Hours of a place reduced to days. */
class RoomDaysTest {
  private static final LocalDate LAST_OF_JANUARY = LocalDate.of(2027, 1, 31);

  /** January 25 °C by day and 15 °C by night, February 20 and 10 °C. */
  private static final AirClimate AIR =
      new AirClimate(
          IntStream.range(0, 12).mapToObj(month -> month == 0 ? 25.0 : 20.0).toList(),
          IntStream.range(0, 12).mapToObj(month -> month == 0 ? 15.0 : 10.0).toList(),
          60,
          450);

  /** Two places: one under daylight from 8 to 16 h, one under a lamp as well, from 6 to 22 h. */
  private static HourlyLight twoPlaces() {
    double[][] daylight = new double[2][48];
    double[][] lamp = new double[2][48];
    for (int h = 0; h < 48; h++) {
      int clock = h % 24;
      daylight[0][h] = clock >= 8 && clock < 16 ? 100 : 0;
      daylight[1][h] = daylight[0][h];
      lamp[1][h] = clock >= 6 && clock < 22 ? 200 : 0;
    }
    return new HourlyLight(LAST_OF_JANUARY, daylight, lamp, new double[] {16, 16});
  }

  /** 8 h at 100 µmol/m²/s are 2.88 mol/m²; 16 h at 200 are 11.52 (definition of the units). */
  @Test
  void sumsTheLight() {
    PlaceDays first = RoomDays.atPlace(twoPlaces(), 0, AIR);
    PlaceDays second = RoomDays.atPlace(twoPlaces(), 1, AIR);
    assertThat(first.dliMol(0)).isCloseTo(2.88, within(1e-12));
    assertThat(second.dliMol(0)).isCloseTo(14.4, within(1e-12));
    assertThat(first.photoperiodHours(0)).isEqualTo(16);
  }

  /** 16 h with light on the bench: (16 x 25 + 8 x 15)/24 in January, 5 °C less in February. */
  @Test
  void theMonthGivesTheTemperatureOfLitAndDarkHours() {
    PlaceDays first = RoomDays.atPlace(twoPlaces(), 0, AIR);
    assertThat(first.meanC(0)).isCloseTo(520 / 24.0, within(1e-12));
    assertThat(first.meanC(1)).isCloseTo(520 / 24.0 - 5, within(1e-12));
  }

  /** Hours count from 5 °C up to 30 °C. */
  @Test
  void capsTheHeatThatLeadsToSeed() {
    double[] hoursC = new double[24];
    for (int h = 0; h < 24; h++) {
      hoursC[h] = h < 12 ? 35 : 3;
    }
    assertThat(RoomDays.boltingHeatCd(hoursC)).isCloseTo(12.5, within(1e-12));
    assertThat(RoomDays.atPlace(twoPlaces(), 0, AIR).boltingHeatCd(0))
        .isCloseTo(520 / 24.0 - 5, within(1e-12));
  }

  @Test
  void aMeanAveragesWhatThePlacesGive() {
    HourlyLight light = twoPlaces();
    PlaceDays mean = RoomDays.mean(light, List.of(0, 1), AIR);
    PlaceDays first = RoomDays.atPlace(light, 0, AIR);
    PlaceDays second = RoomDays.atPlace(light, 1, AIR);
    for (int day = 0; day < 2; day++) {
      assertThat(mean.dliMol(day))
          .isCloseTo((first.dliMol(day) + second.dliMol(day)) / 2, within(1e-12));
      assertThat(mean.assimilateG(day))
          .isCloseTo((first.assimilateG(day) + second.assimilateG(day)) / 2, within(1e-12));
      assertThat(mean.meanC(day)).isEqualTo(first.meanC(day));
    }
    assertThatThrownBy(() -> RoomDays.mean(light, List.of(), AIR))
        .hasMessageContaining("at least one place");
  }

  @Test
  void theNurseryHasTemperaturesOfItsOwn() {
    Nursery nursery = new Nursery(40, 24, 16, 49, 150, LocalTime.MIDNIGHT, 16, 22, 20);
    HourlyLight light = new SteadyPlace(150, 16, 0, 0, 0).light(3);
    AirClimate room =
        new AirClimate(Collections.nCopies(12, 9.0), Collections.nCopies(12, 5.0), 60, 420);
    PlaceDays days = RoomDays.inNursery(light, nursery, room);
    // First day of scenario P01 of plant_model_trajectories.csv, an independent computation.
    assertThat(days.meanC(2)).isCloseTo(21.3333333, within(1e-7));
    assertThat(days.assimilateG(2) * 1.08).isCloseTo(15.4791321, within(1e-6));
  }

  @Test
  void aPlaceKnowsItsDays() {
    PlaceDays days = RoomDays.atPlace(twoPlaces(), 0, AIR);
    assertThat(days.holds(LAST_OF_JANUARY.plusDays(1))).isTrue();
    assertThat(days.holds(LAST_OF_JANUARY.plusDays(2))).isFalse();
    assertThat(days.holds(LAST_OF_JANUARY.minusDays(1))).isFalse();
    assertThat(days.index(LAST_OF_JANUARY.plusDays(1))).isEqualTo(1);
  }
}
