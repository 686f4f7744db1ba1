package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.plan.TaskCalendar;
import sallet.plan.rehearse.Plant.Fate;

/** Moments of the draws against the textbook moments of their distributions. */
class FatesTest {
  private static final int SEASONS = 4000;
  private static final int CELLS = 10;
  private static final Crop MIZUNA = Catalogue.builtIn().find("mizuna").orElseThrow();
  private static final Scene SCENE = scene();

  private static Scene scene() {
    Household household = SmallBench.of(240);
    return Scene.of(
        household,
        Catalogue.builtIn(),
        new TaskCalendar(household.eaters(), household.absences(), SmallBench.START, 2),
        Hidden.USUAL);
  }

  private static List<List<Fate>> sowings() {
    SplittableRandom dice = new SplittableRandom(8);
    List<List<Fate>> all = new ArrayList<>();
    for (int i = 0; i < SEASONS; i++) {
      all.add(new Fates(SCENE, dice.split()).sow("m", MIZUNA, CELLS, SmallBench.START, 18));
    }
    return all;
  }

  /** A Beta-binomial count has mean n p and variance n p (1-p) (1 + (n-1)/(s+1)). */
  @Test
  void plantsOfASowingAreBetaBinomial() {
    double p = MIZUNA.usableShare();
    double[] came = sowings().stream().mapToDouble(List::size).toArray();
    double mean = 0;
    double square = 0;
    for (double n : came) {
      mean += n / SEASONS;
      square += n * n / SEASONS;
    }
    double variance = CELLS * p * (1 - p) * (1 + (CELLS - 1) / 21.0);
    assertThat(mean).isCloseTo(CELLS * p, within(0.12));
    assertThat(square - mean * mean).isCloseTo(variance, within(0.08 * variance));
  }

  /** Logarithms of log-normal factors add: variance ln(1+cv²) of the crop and of the plant. */
  @Test
  void growthIsLogNormalAboutItsMedian() {
    double[] logs =
        sowings().stream()
            .filter(s -> !s.isEmpty())
            .mapToDouble(s -> Math.log(s.get(0).vigour()))
            .toArray();
    double mean = 0;
    double square = 0;
    for (double x : logs) {
      mean += x / logs.length;
      square += x * x / logs.length;
    }
    double variance = Math.log1p(0.2 * 0.2) + Math.log1p(0.15 * 0.15);
    assertThat(Math.exp(mean)).isCloseTo(0.85, within(0.012));
    assertThat(square - mean * mean).isCloseTo(variance, within(0.07 * variance));
  }

  @Test
  void oneInTwentyDies() {
    long plants = 0;
    long die = 0;
    for (List<Fate> sowing : sowings()) {
      plants += sowing.size();
      die += sowing.stream().filter(f -> f.death().isBefore(LocalDate.MAX)).count();
      sowing.stream()
          .filter(f -> f.death().isBefore(LocalDate.MAX))
          .forEach(
              f ->
                  assertThat(f.death())
                      .isBetween(f.emergence().plusDays(5), f.emergence().plusDays(65)));
    }
    assertThat(die / (double) plants).isCloseTo(0.05, within(0.005));
  }

  @Test
  void nothingComesUpWhereItIsTooCold() {
    Fates fates = new Fates(SCENE, new SplittableRandom(1));
    assertThat(fates.sow("m", MIZUNA, CELLS, SmallBench.START, -5)).isEmpty();
  }
}
