package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many seeds to sow. */
class SeedCountTest {

  /** Survival function of the Beta-binomial distribution in SciPy 1.17.1, scipy.stats.betabinom. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.5, 4", "1, 0.8, 2", "2, 0.8, 4", "3, 0.75, 6", "4, 0.8, 7", "6, 0.8, 10",
    "6, 0.55, 17", "12, 0.8, 19", "12, 0.7, 23", "10, 0.5, 30", "20, 0.65, 41", "30, 0.8, 45"
  })
  void sowsEnoughCellsForAnUncertainLot(int plants, double usableShare, int cells) {
    assertThat(SeedCount.cellsFor(plants, usableShare)).isEqualTo(cells);
  }

  /** The same library's probabilities. */
  @ParameterizedTest
  @CsvSource({
    "5, 9, 16, 4, 0.9558731123948515",
    "1, 3, 10, 10, 0.8571428571428572",
    "30, 45, 13, 7, 0.5021353391103291",
    "0, 5, 2, 3, 1.0"
  })
  void knowsHowLikelyEnoughCome(int k, int n, double a, double b, double expected) {
    assertThat(new SeedLot(a, b).atLeast(k, n)).isCloseTo(expected, within(1e-12));
  }

  /** A Beta-binomial is a binomial averaged over a Beta; both from Hipparchus. */
  @ParameterizedTest
  @CsvSource({"8, 12, 16, 4", "3, 20, 5, 15", "40, 60, 14, 6"})
  void averagesTheBinomialOverTheBeta(int k, int n, double a, double b) {
    BetaDistribution share = new BetaDistribution(a, b);
    double expected =
        new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-10)
            .integrate(
                100_000,
                p ->
                    share.density(p)
                        * (1 - new BinomialDistribution(n, p).cumulativeProbability(k - 1)),
                1e-9,
                1 - 1e-9);
    assertThat(new SeedLot(a, b).atLeast(k, n)).isCloseTo(expected, within(1e-7));
  }

  @Test
  void anUncertainLotNeedsAtLeastAsManyCellsAsAKnownOne() {
    for (int plants = 1; plants <= 30; plants++) {
      for (double share = 0.5; share < 0.96; share += 0.05) {
        assertThat(SeedCount.cellsFor(plants, share))
            .as("%d plants at %.2f", plants, share)
            .isGreaterThanOrEqualTo(
                SeedCount.cellsForKnownShare(plants, share, SeedCount.CERTAINTY));
      }
    }
  }

  @Test
  void sowsNoneForNoneAndOneEachForSureSeed() {
    assertThat(SeedCount.cellsFor(0, 0.8)).isZero();
    assertThat(SeedCount.cellsFor(7, 1)).isEqualTo(7);
  }

  @Test
  void aGoodCountSavesCells() {
    SeedLot lot = SeedLot.expecting(0.7);
    assertThat(SeedCount.cellsFor(12, lot.seen(30, 30))).isLessThan(SeedCount.cellsFor(12, lot));
  }

  /** By hand, with a = 4 and b = 1: a seed fails with 1/5, two with 1/5 x 2/6, three x 3/7. */
  @ParameterizedTest
  @CsvSource({"1, 0.8", "2, 0.933333333333", "3, 0.971428571429"})
  void oneCellIsFilledByAtLeastOneSeed(int seeds, double probability) {
    assertThat(SeedCount.everyCell(1, seeds, new SeedLot(4, 1)))
        .isCloseTo(probability, within(1e-12));
  }

  /**
   * A lot of any share alike (a = b = 1): the integral of p² is 1/3, that of (1 - q²)² is 8/15, of
   * (1 - q²)³ is 16/35.
   */
  @Test
  void cellsOfOneLotFailTogether() {
    SeedLot any = new SeedLot(1, 1);
    assertThat(SeedCount.everyCell(2, 1, any)).isCloseTo(1 / 3.0, within(1e-12));
    assertThat(SeedCount.everyCell(2, 2, any)).isCloseTo(8 / 15.0, within(1e-12));
    assertThat(SeedCount.everyCell(3, 2, any)).isCloseTo(16 / 35.0, within(1e-12));
  }

  /** A share known well makes cells independent: (1 - 0.2³)⁶ is 0.953, (1 - 0.2²)⁶ only 0.783. */
  @Test
  void aLotKnownWellNeedsSeedsAsIfItsShareWereKnown() {
    SeedLot known = new SeedLot(8e6, 2e6);
    assertThat(SeedCount.everyCell(6, 3, known)).isCloseTo(Math.pow(0.992, 6), within(1e-5));
    assertThat(SeedCount.seedsPerCell(6, known)).isEqualTo(3);
    assertThat(SeedCount.seedsPerCell(6, SeedLot.expecting(1))).isEqualTo(1);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> SeedCount.cellsFor(3, 0))
        .hasMessage("usable share must be above 0 and at most 1, was 0.0");
    assertThatThrownBy(() -> SeedCount.cellsFor(-1, 0.8)).hasMessageContaining("were -1");
    assertThatThrownBy(() -> SeedCount.seedsPerCell(0.8, 1)).hasMessageContaining("certainty");
    assertThatThrownBy(() -> SeedLot.expecting(0.8).seen(9, 8))
        .hasMessage("of 8 seeds 9 cannot have come");
    assertThatThrownBy(() -> new SeedLot(0, 3)).hasMessageContaining("was 0.0 and 3.0");
  }
}
