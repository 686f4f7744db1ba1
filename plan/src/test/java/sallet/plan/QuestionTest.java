package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.household.PotSites;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;

/** How pots of a bench fall into groups. */
class QuestionTest {
  private static final int DAYS = 20;
  private static final Household BENCH = Households.bench(240, List.of(), List.of());
  private static Surroundings lit;

  @BeforeAll
  static void lightOfTheBench() {
    lit = Question.surroundings(BENCH, Households.START, 0, DAYS);
  }

  @Test
  void everyPotIsInOneGroup() {
    List<String> named = new ArrayList<>();
    lit.groups().forEach(g -> named.addAll(g.pots()));
    assertThat(named)
        .containsExactlyInAnyOrderElementsOf(
            BENCH.bench().pots().stream().map(p -> p.name()).toList());
    assertThat(lit.groups()).hasSizeBetween(1, 3);
  }

  @Test
  void noPotOfferedMoreThanTheGroupBefore() {
    HourlyLight light = RoomLight.atPots(BENCH, Households.START, DAYS);
    List<Double> sites = PotSites.siteCm2(BENCH.bench());
    double weakestBefore = Double.POSITIVE_INFINITY;
    for (Surroundings.Group group : lit.groups()) {
      List<Double> offers = new ArrayList<>();
      double dliSum = 0;
      for (String pot : group.pots()) {
        int i = BENCH.bench().pots().stream().map(p -> p.name()).toList().indexOf(pot);
        double dli = 0;
        for (int d = 0; d < DAYS; d++) {
          dli += light.dliMol(i, d) / DAYS;
        }
        dliSum += dli;
        offers.add(dli * sites.get(i));
      }
      assertThat(group.meanDliMol()).isCloseTo(dliSum / group.pots().size(), within(1e-9));
      assertThat(offers).allMatch(offer -> offer > 0);
      assertThat(offers.stream().mapToDouble(o -> o).max().orElseThrow())
          .isLessThanOrEqualTo(weakestBefore);
      weakestBefore = offers.stream().mapToDouble(o -> o).min().orElseThrow();
    }
  }

  @Test
  void potsAlikeAreOneGroup() {
    Household dark =
        new Household(
            BENCH.eaters(),
            List.of(),
            BENCH.crops(),
            BENCH.place(),
            BENCH.room(),
            BENCH.bench(),
            Optional.empty(),
            BENCH.nursery(),
            BENCH.reservoir());
    // A window far off lights all pots alike within a tenth or not at all: fewer groups, never
    // more.
    assertThat(Question.surroundings(dark, Households.START, 0, 3).groups().size())
        .isLessThanOrEqualTo(3);
    assertThat(new TinyBench(0).instance().at().groups()).isNotEmpty();
  }

  @Test
  void cellsThatAreTakenAreNotFree() {
    Planner.Request empty =
        new Planner.Request(BENCH, Catalogue.builtIn(), Households.START, 3, 1, Effort.LEAST);
    Instance instance = Question.of(empty, lit);
    assertThat(instance.freeCells(0)).isEqualTo(40);
    assertThat(instance.kindShare()).isEqualTo(1 / 2.5);
  }
}
