package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What comes of seed by temperature and age. */
class EmergenceTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  private static Crop crop(String name) {
    return CATALOGUE.find(name).orElseThrow();
  }

  /** Normal seedlings of spinach of Harrington and Minges (1954), relative to 96 % at 5 °C. */
  @ParameterizedTest
  @CsvSource({"0, 83", "5, 96", "10, 91", "15, 82", "20, 52", "25, 28", "30, 32", "35, 0"})
  void spinachComesAsTheTableSays(double temperatureC, double percent) {
    assertThat(crop("spinach").seed().shareAt(temperatureC)).isCloseTo(percent / 96, within(1e-12));
  }

  /** Half way between 82 and 52 of 96. */
  @Test
  void isStraightBetweenTheTemperaturesOfTheTable() {
    assertThat(crop("spinach").seed().shareAt(17.5)).isCloseTo(67.0 / 96, within(1e-12));
  }

  /**
   * Gray (1975), abstract: crisp types germinate at 30 °C, butterheads do not; 15 to 22 °C is best
   * for all.
   */
  @Test
  void heatKeepsLettuceDormant() {
    assertThat(crop("crisphead lettuce").seed().shareAt(30)).isGreaterThan(0.5);
    assertThat(crop("butterhead lettuce").seed().shareAt(30)).isLessThan(0.1);
    assertThat(crop("butterhead lettuce").seed().shareAt(27)).isCloseTo(0.5, within(1e-12));
    for (Crop crop : CATALOGUE.all()) {
      if (crop.species().equals("Lactuca sativa")) {
        assertThat(crop.seed().shareAt(15)).isGreaterThan(0.99);
        assertThat(crop.seed().shareAt(22)).isGreaterThan(0.99);
      }
    }
  }

  /** Base 10.5, best 21 to 29, ceiling 38 °C (common practice): a trapezium. */
  @Test
  void cropsOutsideTheTableFallInStraightLines() {
    Seed basil = crop("basil").seed();
    assertThat(basil.shareAt(25)).isEqualTo(1);
    assertThat(basil.shareAt(15.75)).isCloseTo(0.5, within(1e-12));
    assertThat(basil.shareAt(33.5)).isCloseTo(0.5, within(1e-12));
    assertThat(basil.shareAt(5)).isZero();
    assertThat(basil.shareAt(-3)).isZero();
  }

  /** Common practice: lettuce seed does well between 10 and 22 °C. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 12, 16, 19, 22, 22.9})
  void lettuceDoesWellFromTenToTwentyTwoDegrees(double temperatureC) {
    Emergence emergence = Emergence.of(crop("loose-leaf lettuce, green"), temperatureC);
    assertThat(emergence.concern()).isEqualTo(Concern.NONE);
    assertThat(emergence.usableShare()).isCloseTo(0.8, within(0.01));
  }

  /** Common practice: and poorly above about 24 °C; cold rooms are only slow. */
  @ParameterizedTest
  @CsvSource({"24.5, WATCH, Warm", "27, ACT, Warm", "36, ACT, Too warm", "7, WATCH, Cold"})
  void warnsOutsideThatRangeAndSaysWhatToAimAt(
      double temperatureC, Concern concern, String begins) {
    Emergence emergence = Emergence.of(crop("loose-leaf lettuce, green"), temperatureC);
    assertThat(emergence.concern()).isEqualTo(concern);
    assertThat(emergence.advice()).startsWith(begins).endsWith("Aim at 15 to 22 °C.");
  }

  /** The 90 % quantile of the standard normal distribution is 1.2816 in any table. */
  @Test
  void seedlingsComeOneAfterTheOther() {
    Emergence emergence = Emergence.of(crop("loose-leaf lettuce, green"), 20);
    assertThat(emergence.daysUntil(0.5).orElseThrow()).isCloseTo(3, within(1e-9));
    assertThat(emergence.daysUntil(0.9).orElseThrow())
        .isCloseTo(3 * Math.exp(0.2 * 1.2816), within(1e-3));
    assertThat(Emergence.of(crop("basil"), 5).daysUntil(0.5)).isEmpty();
  }

  /** By hand: 65 °C d above 10.5 °C are five days of 10 °C and three of 5 °C. */
  @Test
  void warmthAddsUpFromDayToDay() {
    Germination basil = new Germination(new TreeMap<>(), 10.5, 29, 38, 65, 1);
    double[] daysC = {20.5, 20.5, 20.5, 20.5, 20.5, 15.5, 15.5, 15.5, 15.5};
    assertThat(basil.daysAlong(daysC)).hasValue(8);
    assertThat(basil.daysAlong(new double[] {20.5, 10, 10})).isEmpty();
  }

  /** 7 CFR 201.31: lettuce at least 80 %, spinach 60 %; half way to 95 %. */
  @Test
  void aPlainPacketLiesBetweenTheLegalMinimumAndAVeryGoodLot() {
    assertThat(crop("butterhead lettuce").seed().plainPacket().mean())
        .isCloseTo(0.875, within(1e-12));
    assertThat(crop("spinach").seed().plainPacket().mean()).isCloseTo(0.775, within(1e-12));
    assertThat(crop("basil").seed().plainPacket().mean()).isCloseTo(0.85, within(1e-12));
  }

  /**
   * Tables of the normal distribution: 0.95 at 1.645, 0.75 at 0.674, and 0.877 at 1.160 half way.
   */
  @Test
  void seedAgesAlongANormalCurve() {
    Seed lettuce = crop("butterhead lettuce").seed();
    assertThat(lettuce.keepsYears()).contains(6.0);
    assertThat(lettuce.shareAfter(0.95, 0)).isCloseTo(0.95, within(1e-9));
    assertThat(lettuce.shareAfter(0.95, 3)).isCloseTo(0.877, within(5e-4));
    assertThat(lettuce.shareAfter(0.95, 6)).isCloseTo(0.75, within(1e-9));
    assertThat(crop("parsley").seed().shareAfter(0.95, 3)).isLessThan(lettuce.shareAfter(0.95, 3));
  }

  /**
   * Lettuce: a plain packet holds 87.5 % (7 CFR 201.31: 80 %), which falls to 57.1 % in the
   * handbook's six years; of 80 usable plants 52 are left. By Python's statistics.NormalDist.
   */
  @Test
  void oldSeedMakesFewerUsablePlants() {
    Crop lettuce = crop("loose-leaf lettuce, green");
    assertThat(lettuce.fromSeedOf(6).usableShare()).isCloseTo(0.5224, within(1e-4));
    assertThat(lettuce.fromSeedOf(0).usableShare()).isCloseTo(0.8, within(1e-12));
    assertThat(lettuce.fromSeedOf(20).usableShare()).isPositive();
  }

  @Test
  void refusesWhatCannotBe() {
    Seed seed = crop("spinach").seed();
    assertThatThrownBy(() -> seed.shareAfter(0.9, -1)).hasMessageContaining("was -1.0");
    assertThatThrownBy(
            () ->
                new Seed(
                    5,
                    new Span(20, 30),
                    28,
                    new TreeMap<>(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()))
        .hasMessageContaining("must rise from base over best range to ceiling");
    assertThatThrownBy(
            () ->
                new Seed(
                    5,
                    new Span(20, 25),
                    28,
                    new TreeMap<>(Map.of(10.0, 98.0)),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()))
        .hasMessage("a share of seed must be 0 to 1, was 98.0");
  }
}
