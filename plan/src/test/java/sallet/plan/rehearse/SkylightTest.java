package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.Household;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;

class SkylightTest {
  private static final int DAYS = 30;

  /** The hour-by-hour sum of the same sky is the outside check of what lies between two skies. */
  @Test
  void betweenTwoSkiesLightIsExactAndAssimilationNearlySo() {
    Household household = SmallBench.of(240);
    double[] sky = Skylight.weather(Hidden.USUAL, DAYS, new SplittableRandom(7));
    List<PlaceDays> ours = Skylight.of(household, SmallBench.START, DAYS).pots(sky);
    HourlyLight light = RoomLight.atPots(household, SmallBench.START, DAYS);
    for (int pot : new int[] {0, 7, 17}) {
      PlaceDays exact = RoomDays.underSky(light, List.of(pot), household.room().air(), d -> sky[d]);
      for (int d = 0; d < DAYS; d++) {
        assertThat(ours.get(pot).dliMol(d)).isCloseTo(exact.dliMol(d), within(1e-9));
        assertThat(ours.get(pot).assimilateG(d))
            .isCloseTo(exact.assimilateG(d), Percentage.withPercentage(1));
        assertThat(ours.get(pot).photoperiodHours(d)).isEqualTo(exact.photoperiodHours(d));
      }
    }
  }

  /** Mean, spread and correlation of a stationary first-order autoregression. */
  @Test
  void weatherHasTheSpreadAndPersistenceAskedFor() {
    Hidden hidden = new Hidden(0.85, 0.2, 0.15, 20, 0.2, 0.7, 0.05, 1, 0.1);
    double[] sky = Skylight.weather(hidden, 200_000, new SplittableRandom(1));
    double mean = Arrays.stream(sky).average().orElseThrow();
    double variance = Arrays.stream(sky).map(x -> (x - mean) * (x - mean)).average().orElseThrow();
    double lag =
        IntStream.range(1, sky.length)
                .mapToDouble(d -> (sky[d] - mean) * (sky[d - 1] - mean))
                .average()
                .orElseThrow()
            / variance;
    assertThat(mean).isCloseTo(1, within(0.01));
    assertThat(Math.sqrt(variance)).isCloseTo(0.2, within(0.005));
    assertThat(lag).isCloseTo(0.7, within(0.01));
  }

  @Test
  void skiesAreHeldWithinWhatWasWorkedOut() {
    Hidden wild = new Hidden(0.85, 0.2, 0.15, 20, 3, 0, 0.05, 1, 0.1);
    double[] sky = Skylight.weather(wild, 1000, new SplittableRandom(1));
    assertThat(Arrays.stream(sky).min().orElseThrow()).isEqualTo(0.1);
    assertThat(Arrays.stream(sky).max().orElseThrow()).isCloseTo(1.9, within(1e-12));
  }
}
