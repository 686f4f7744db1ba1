package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.LampColour;
import sallet.household.LightReading;
import sallet.household.Wall;

class CalibrationTest {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 20);

  private static final Household HOME =
      Households.household(
          Households.CHRISTCHURCH,
          Households.room(0, List.of(Households.window(Wall.NORTH, 0.6, 1.8, 1.2, 0.9))),
          Households.bench(0.4, 1.5, 3, 6),
          Optional.of(Households.LAMP));

  private static LightReading reading(
      String pot, LightReading.Sky sky, LightReading.Meter meter, double value, double outdoors) {
    return new LightReading(
        pot,
        DAY.atTime(12, 30),
        sky,
        meter,
        value,
        outdoors > 0 ? OptionalDouble.of(outdoors) : OptionalDouble.empty());
  }

  private static LightReading lamp(String pot, double umol) {
    return reading(pot, LightReading.Sky.LAMP, LightReading.Meter.PPFD, umol, 0);
  }

  /** The same reading as Sallet reckons leaves everything as it is. */
  private static double reckoned(LightReading reading) {
    return Calibration.of(HOME.withReadings(List.of(reading))).samples().get(0).reckonedUmol();
  }

  @Test
  void withoutReadingsNothingChanges() {
    LightFactors factors = Calibration.of(HOME).factors();
    assertThat(factors.window().value()).isEqualTo(1);
    assertThat(factors.lamp().value()).isEqualTo(1);
    assertThat(factors.window().spread()).isEqualTo(1.3, within(1e-9));
    assertThat(factors.lamp().readings()).isZero();
  }

  /**
   * By hand: readings 0.7 of the reckoned light with a spread of 10 % against a prior of ln 1.2 =
   * 0.1823: one reading weighs 100 against 30.08, ten weigh 1000.
   */
  @Test
  void theFactorIsThePreciseMeanOfPriorAndReadings() {
    double full = reckoned(lamp("P8", 100));
    LightFactors one = Calibration.of(HOME.withReadings(List.of(lamp("P8", 0.7 * full)))).factors();
    double prior = 1 / Math.pow(Math.log(1.2), 2);
    assertThat(one.lamp().value())
        .isEqualTo(Math.exp(100 * Math.log(0.7) / (100 + prior)), within(1e-9));
    assertThat(one.lamp().spread()).isEqualTo(Math.exp(Math.sqrt(1 / (100 + prior))), within(1e-9));
    assertThat(one.window().value()).as("the window keeps its own").isEqualTo(1);
    List<LightReading> ten = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      ten.add(lamp("P8", 0.7 * full));
    }
    assertThat(Calibration.of(HOME.withReadings(ten)).factors().lamp().value())
        .isEqualTo(0.7, within(0.01));
  }

  /** White LED: 70 lux for each µmol/m²/s; daylight 54 (Thimijan and Heins 1983). */
  @Test
  void luxIsTurnedIntoPhotonsByTheLight() {
    LightReading lux = reading("P8", LightReading.Sky.LAMP, LightReading.Meter.LUX, 7000, 0);
    assertThat(Calibration.of(HOME.withReadings(List.of(lux))).samples().get(0).measuredUmol())
        .isEqualTo(100, within(1e-9));
    LightReading sun = reading("P8", LightReading.Sky.SUN, LightReading.Meter.LUX, 5400, 0);
    assertThat(Calibration.of(HOME.withReadings(List.of(sun))).samples().get(0).measuredUmol())
        .isEqualTo(100, within(1e-9));
  }

  /** A share of the outdoor light does not depend on how bright the day is. */
  @Test
  void underCloudTheOutdoorReadingTakesTheBrightnessOut() {
    double dull =
        Calibration.of(
                HOME.withReadings(
                    List.of(
                        reading(
                            "P8", LightReading.Sky.OVERCAST, LightReading.Meter.PPFD, 20, 200))))
            .samples()
            .get(0)
            .factor();
    double bright =
        Calibration.of(
                HOME.withReadings(
                    List.of(
                        reading(
                            "P8", LightReading.Sky.OVERCAST, LightReading.Meter.PPFD, 60, 600))))
            .samples()
            .get(0)
            .factor();
    assertThat(dull).isEqualTo(bright, within(1e-9));
  }

  @Test
  void readingsThatSayNothingAreRefusedWithTheReason() {
    Lamp redBlue =
        new Lamp(
            1.0,
            1.8,
            0.9,
            0.3,
            120,
            2.2,
            0.5,
            LocalTime.of(6, 0),
            16,
            1,
            0,
            0,
            LampColour.RED_AND_BLUE,
            Optional.empty());
    LightReading lux = reading("P8", LightReading.Sky.LAMP, LightReading.Meter.LUX, 900, 0);
    assertThat(Calibration.refusal(HOME.withLamps(List.of(redBlue)), lux))
        .hasValueSatisfying(why -> assertThat(why).contains("quantum meter"));
    assertThat(Calibration.refusal(HOME.withLamps(List.of(redBlue)), lamp("P8", 100))).isEmpty();
    assertThat(
            Calibration.refusal(
                HOME, reading("P8", LightReading.Sky.OVERCAST, LightReading.Meter.LUX, 900, 0)))
        .hasValueSatisfying(why -> assertThat(why).contains("outdoors"));
    assertThat(Calibration.refusal(HOME, lamp("Z9", 100)))
        .hasValueSatisfying(why -> assertThat(why).contains("Z9"));
    assertThat(Calibration.refusal(HOME.withLamps(List.of()), lamp("P8", 100))).isNotEmpty();
  }

  /**
   * The light of every pot and hour is scaled, daylight by one factor and lamp light by the other.
   */
  @Test
  void theRoomsLightFollowsTheReadings() {
    double full = reckoned(lamp("P8", 100));
    Household measured = HOME.withReadings(List.of(lamp("P8", 0.8 * full)));
    double factor = Calibration.of(measured).factors().lamp().value();
    HourlyLight before = RoomLight.atPots(HOME, DAY, 1);
    HourlyLight after = RoomLight.atPots(measured, DAY, 1);
    for (int pot = 0; pot < before.places(); pot++) {
      assertThat(after.lampDliMol(pot, 0))
          .isEqualTo(factor * before.lampDliMol(pot, 0), within(1e-9));
      assertThat(after.daylightDliMol(pot, 0)).isEqualTo(before.daylightDliMol(pot, 0));
    }
  }

  /** The steps of an explanation end in the very number of the year's table. */
  @Test
  void anExplanationEndsInTheNumberExplained() {
    Household measured = HOME.withReadings(List.of(lamp("P8", 100)));
    HourlyLight light = RoomLight.atPots(measured, DAY, 1);
    for (int hour : new int[] {3, 6, 9, 12, 17, 22}) {
      for (int pot : new int[] {0, 8, 17}) {
        LightExplanation told = LightExplanation.of(measured, pot, DAY, hour);
        assertThat(told.ppfdUmol()).isEqualTo(light.ppfdUmol(pot, 0, hour), within(1e-9));
        assertThat(told.steps()).isNotEmpty();
      }
    }
  }

  @Test
  void aYearHoldsTogether() {
    LightYear year = LightYear.of(HOME, DAY, LightTarget.LEAFY);
    assertThat(year.months()).hasSize(12);
    double sum = 0;
    double days = 0;
    for (LightYear.Month month : year.months()) {
      sum += month.dliMol(4) * month.month().lengthOfMonth();
      days += month.month().lengthOfMonth();
      assertThat(month.dullWeekMol()).isLessThanOrEqualTo(month.brightWeekMol());
    }
    double direct = 0;
    for (int d = 0; d < year.light().days(); d++) {
      direct += year.light().dliMol(4, d);
    }
    assertThat(sum / days).isEqualTo(direct / year.light().days(), within(1e-9));
    assertThat(year.better()).isPresent();
    assertThat(year.weeks()).hasSize(52);
  }
}
