package sallet.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water vapour in the air. */
class VapourTest {
  /** FAO Irrigation and Drainage Paper 56 (1998), annex 2, table 2.3, three decimals. */
  @ParameterizedTest
  @CsvSource({"1, 0.657", "10, 1.228", "15, 1.705", "20, 2.338", "25, 3.168", "30, 4.243"})
  void saturationIsThatOfTheTable(double temperatureC, double kpa) {
    assertThat(Vapour.saturationKpa(temperatureC)).isCloseTo(kpa, within(5e-4));
  }

  @Test
  void coolerAirIsDamperUntilDewSettles() {
    assertThat(Vapour.humidityAfter(50, 20, 15)).isCloseTo(50 * 2.338 / 1.705, within(0.05));
    assertThat(Vapour.humidityAfter(60, 20, 10)).isEqualTo(100);
    assertThat(Vapour.humidityAfter(60, 20, 20)).isEqualTo(60);
  }
}
