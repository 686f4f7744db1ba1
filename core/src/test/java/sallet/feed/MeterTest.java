package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.feed.meter.CellCheck;
import sallet.feed.meter.MeterReading;
import sallet.feed.meter.SaltScale;

final class MeterTest {
  /** Printed conversion table of a laboratory meter manual, the rows without rounded factors. */
  @ParameterizedTest
  @CsvSource({
    "KCL, 23, 11.6", "KCL, 447, 225.6", "KCL, 1413, 744.7", "KCL, 12880, 7447",
    "NACL, 23, 10.7", "NACL, 447, 215.5", "NACL, 1413, 702.1", "NACL, 12880, 7230",
    "MIX_442, 447, 300", "MIX_442, 1413, 1000", "MIX_442, 12880, 11367"
  })
  void theTrueMassOfTheSaltFollowsThePrintedCurve(SaltScale scale, double uSCm, double ppm) {
    assertThat(scale.trueMgL(uSCm / 1000)).isCloseTo(ppm, Percentage.withPercentage(7));
  }

  @Test
  void aBareReadingHasThreeMeanings() {
    assertThat(MeterReading.parse("840 ppm").meanings())
        .extracting(MeterReading.Meaning::msCm)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
        .containsExactly(1.68, 1.3125, 1.2);
  }

  @ParameterizedTest
  @CsvSource({
    "1.6 mS/cm, 1.6",
    "1600 µS/cm, 1.6",
    "1600 us/cm, 1.6",
    "1.6 dS/m, 1.6",
    "16 CF, 1.6"
  })
  void otherUnitsLeaveNoDoubt(String text, double msCm) {
    assertThat(MeterReading.parse(text).meanings())
        .singleElement()
        .satisfies(m -> assertThat(m.msCm()).isCloseTo(msCm, within(1e-12)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "ppm", "840", "-3 ppm", "1,6 mS/cm", "840 ppb", "99 mS/cm"})
  void anUnreadableReadingIsAFault(String text) {
    assertThatThrownBy(() -> MeterReading.parse(text)).isInstanceOf(FeedFault.class);
  }

  /** Standard 0.01 mol/kg at 20 °C: 1273.0 µS/cm (Pratt et al. 2001; value from memory). */
  @Test
  void betweenTheTemperaturesOfTheStandardTheLineIsGoodEnough() {
    assertThat(1000 * CellCheck.standardMsCm(0.01, 20)).isCloseTo(1273.0, within(3.0));
  }

  @Test
  void aMeterThatReadsTenPercentLowIsFoundOut() {
    CellCheck check = CellCheck.of(0.01, 25, 1.27);
    assertThat(check.factor()).isCloseTo(1.40933 / 1.27, within(1e-4));
    assertThat(check.advice()).contains("Calibrate");
  }
}
