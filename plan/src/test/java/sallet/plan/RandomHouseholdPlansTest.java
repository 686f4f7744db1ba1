package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import sallet.crop.Catalogue;
import sallet.household.Bench;
import sallet.household.Pot;
import sallet.household.PotSites;
import sallet.plan.RandomHouseholds.Wish;
import sallet.plan.SowingPlan.Objective;
import sallet.plan.SowingPlan.PotGroup;
import sallet.plan.SowingPlan.SolverReport;
import sallet.plan.check.Fault;
import sallet.plan.check.PlanChecker;
import sallet.plan.check.Rule;

/**
 * Every plan for a random household keeps every rule; no answer is given only where there is none.
 */
class RandomHouseholdPlansTest {
  private static final int HOUSEHOLDS = 500;

  /** Enough to plan something for a small household; not enough to plan it best. */
  private static final Effort SHORT = Effort.within(Duration.ofMillis(200));

  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  @Test
  @Timeout(180)
  void plansOfRandomHouseholdsAreValid() {
    List<String> wrong = new ArrayList<>();
    int sown = 0;
    for (long seed = 0; seed < HOUSEHOLDS; seed++) {
      Wish wish = RandomHouseholds.small(seed, CATALOGUE);
      List<Fault> faults;
      try {
        SowingPlan plan = Planner.plan(wish.request(CATALOGUE, SHORT), line -> {});
        sown += plan.sowings().isEmpty() ? 0 : 1;
        faults = PlanChecker.check(plan, wish.household(), CATALOGUE);
      } catch (NoPlan noPlan) {
        assertThat(noPlan).message().as("seed %d", seed).isNotBlank();
        faults = bowlsGivenUp(wish);
      }
      for (Fault fault : faults) {
        wrong.add("seed " + seed + ": " + fault);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(sown).as("households with something to sow").isGreaterThan(HOUSEHOLDS / 3);
  }

  /** Bowls that could be served for certain, with all pots taken as one group. */
  private static List<Fault> bowlsGivenUp(Wish wish) {
    LocalDate first =
        wish.from().with(TemporalAdjusters.nextOrSame(wish.household().eaters().bowlDay()));
    List<BowlWeek> outOfReach =
        IntStream.range(0, wish.bowls())
            .mapToObj(
                week -> new BowlWeek(first.plusWeeks(week), 0, false, 0, 0, List.of(), List.of()))
            .toList();
    SowingPlan nothing =
        new SowingPlan(
            wish.from(),
            List.of(),
            wish.margin(),
            outOfReach,
            List.of(),
            List.of(),
            List.of(),
            new Objective(0, 0, 0, 0, 0, 0, 0, 0),
            new SolverReport("empty", 0, List.of()),
            List.of(allPots(wish.household().bench())),
            List.of(),
            List.of());
    return PlanChecker.check(nothing, wish.household(), CATALOGUE).stream()
        .filter(fault -> fault.rule() == Rule.REACHABLE)
        .toList();
  }

  private static PotGroup allPots(Bench bench) {
    double siteCm2 =
        PotSites.siteCm2(bench).stream().mapToDouble(site -> site).average().orElseThrow();
    return new PotGroup("all", bench.pots().stream().map(Pot::name).toList(), 0, siteCm2);
  }
}
