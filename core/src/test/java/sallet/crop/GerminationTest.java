package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Days from sowing to emergence. */
class GerminationTest {
  /** Basil: base 10.5 °C, best up to 29 °C, ceiling 38 °C, 65 °C d (common practice). */
  private static final Germination BASIL = new Germination(new TreeMap<>(), 10.5, 29, 38, 65, 1);

  /** Two points of the table of Harrington and Minges (1954) for lettuce. */
  private static final Germination TWO_POINTS =
      new Germination(new TreeMap<>(Map.of(10.0, 7.0, 15.0, 4.0)), 4.2, 22, 28, 43, 1);

  /** ln 7 and ln 4 meet half way at ln sqrt(28). */
  @Test
  void isLinearInTheLogarithmBetweenPoints() {
    assertThat(TWO_POINTS.daysAt(12.5).orElseThrow()).isCloseTo(Math.sqrt(28), within(1e-12));
  }

  @Test
  void goesOnByThermalTimeBelowTheColdestPoint() {
    assertThat(TWO_POINTS.daysAt(5).orElseThrow()).isCloseTo(43 / 0.8, within(1e-9));
    assertThat(TWO_POINTS.daysAt(9.99).orElseThrow()).isGreaterThanOrEqualTo(7);
    assertThat(TWO_POINTS.daysAt(4)).isEmpty();
  }

  @Test
  void doesNotReachBeyondTheWarmestPoint() {
    assertThat(TWO_POINTS.daysAt(15)).isPresent();
    assertThat(TWO_POINTS.daysAt(15.1)).isEmpty();
  }

  @Test
  void fallsInAStraightLineFromTheOptimumToTheCeiling() {
    assertThat(BASIL.daysAt(29).orElseThrow()).isCloseTo(65 / 18.5, within(1e-12));
    assertThat(BASIL.daysAt(33.5).orElseThrow()).isCloseTo(2 * 65 / 18.5, within(1e-12));
    assertThat(BASIL.daysAt(38)).isEmpty();
    assertThat(BASIL.daysAt(10.5)).isEmpty();
    assertThat(BASIL.daysAt(-1)).isEmpty();
  }

  @Test
  void timeFactorStretchesTableAndThermalTimeAlike() {
    Germination slow = new Germination(TWO_POINTS.tableDays(), 4.2, 22, 28, 43, 1.5);
    assertThat(slow.daysAt(10).orElseThrow()).isCloseTo(10.5, within(1e-12));
    assertThat(slow.daysAt(6).orElseThrow()).isCloseTo(1.5 * 43 / 1.8, within(1e-9));
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** For every crop of the catalogue: warmer is never later, up to 20 °C or the optimum. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void warmerIsNeverLaterBelowTheOptimum(long seed) {
    Random random = new Random(seed);
    for (Crop crop : Catalogue.builtIn().all()) {
      Germination germination = crop.germination();
      double topC = Math.min(20, germination.optimumC());
      double warmC = topC * random.nextDouble();
      double coldC = warmC * random.nextDouble();
      assertThat(germination.daysAt(coldC).orElse(Double.POSITIVE_INFINITY))
          .as("%s, %s and %s °C", crop.name(), coldC, warmC)
          .isGreaterThanOrEqualTo(germination.daysAt(warmC).orElse(Double.POSITIVE_INFINITY));
    }
  }

  @Test
  void refusesCrossedTemperatures() {
    assertThatThrownBy(() -> new Germination(new TreeMap<>(), 10, 40, 38, 65, 1))
        .hasMessage(
            "germination temperatures must rise from base over optimum to ceiling, were 10.0, 40.0,"
                + " 38.0 °C");
    assertThatThrownBy(() -> new Germination(new TreeMap<>(), 30, 29, 38, 65, 1))
        .hasMessageContaining("must rise");
    assertThatThrownBy(() -> new Germination(new TreeMap<>(), 10, 29, 38, 0, 1))
        .hasMessageContaining("above 0 °C d, was 0.0");
    assertThatThrownBy(() -> new Germination(new TreeMap<>(Map.of(10.0, 0.0)), 4, 22, 28, 43, 1))
        .hasMessageContaining("at 10.0 °C");
    assertThatThrownBy(() -> new Germination(new TreeMap<>(), 10, 29, 38, 65, 0))
        .hasMessageContaining("factor on the time");
  }
}
