package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

class EstimateTest {
  /**
   * For normal values the bootstrap and Student's t give the same interval but for a few per cent.
   */
  @Test
  void forNormalValuesTheIntervalIsNearlyStudents() {
    SplittableRandom dice = new SplittableRandom(3);
    double[] values = dice.doubles(100).map(u -> 0).toArray();
    Arrays.setAll(values, i -> 5 + 2 * dice.nextGaussian());
    Estimate ours = Estimate.of(values, 1);
    double mean = Arrays.stream(values).average().orElseThrow();
    double sd = Math.sqrt(Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / 99);
    double half = new TDistribution(99).inverseCumulativeProbability(0.95) * sd / 10;
    assertThat(ours.mean()).isCloseTo(mean, within(1e-12));
    assertThat(ours.low()).isCloseTo(mean - half, within(0.1 * half));
    assertThat(ours.high()).isCloseTo(mean + half, within(0.1 * half));
  }

  @Test
  void theTrueMeanLiesWithinInNineOfTenRehearsals() {
    SplittableRandom dice = new SplittableRandom(5);
    int within = 0;
    for (int i = 0; i < 300; i++) {
      double[] values = new double[40];
      Arrays.setAll(values, j -> dice.nextGaussian());
      Estimate ours = Estimate.of(values, i);
      within += ours.low() <= 0 && 0 <= ours.high() ? 1 : 0;
    }
    assertThat(within / 300.0).isBetween(0.84, 0.94);
  }

  @Test
  void equalValuesHaveNoSpread() {
    assertThat(Estimate.of(new double[] {0.4, 0.4}, 1)).isEqualTo(new Estimate(0.4, 0.4, 0.4));
  }
}
