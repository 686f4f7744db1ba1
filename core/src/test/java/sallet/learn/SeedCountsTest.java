package sallet.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import sallet.crop.SeedLot;

/** Counts of which only the least is known. */
class SeedCountsTest {
  private static final SeedLot PRIOR = new SeedLot(16, 4);

  /** Against the posterior summed over a fine grid, with a general library's distributions. */
  @Test
  void meanAndVarianceAreThoseOfTheWholePosterior() {
    for (int came : new int[] {1, 4, 6, 8}) {
      SeedLot after = SeedCounts.atLeast(PRIOR, came, 8);
      double sum = 0;
      double first = 0;
      double second = 0;
      for (int i = 1; i < 20_000; i++) {
        double p = i / 20_000.0;
        double weight =
            new BetaDistribution(16, 4).density(p)
                * (1 - new BinomialDistribution(8, p).cumulativeProbability(came - 1));
        sum += weight;
        first += weight * p;
        second += weight * p * p;
      }
      double mean = first / sum;
      double n = after.a() + after.b();
      assertThat(after.mean()).isCloseTo(mean, within(1e-6));
      assertThat(after.mean() * (1 - after.mean()) / (n + 1))
          .isCloseTo(second / sum - mean * mean, within(1e-7));
    }
  }

  @Test
  void allIsAnExactCountAndNoneIsNoNews() {
    SeedLot all = SeedCounts.atLeast(PRIOR, 8, 8);
    assertThat(all.a()).isCloseTo(24, within(1e-9));
    assertThat(all.b()).isCloseTo(4, within(1e-9));
    assertThat(SeedCounts.atLeast(PRIOR, 0, 8)).isEqualTo(PRIOR);
  }
}
