package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.plan.RandomHouseholds.Wish;
import sallet.plan.check.Fault;
import sallet.plan.check.PlanChecker;
import sallet.plan.linear.LinearSolver;

/** Every plan that goes on from plants on a random bench keeps every rule. */
class RandomReplansTest {
  private static final int HOUSEHOLDS = 200;
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  @Test
  void plansFromStandingPlantsAreValid() {
    List<String> wrong = new ArrayList<>();
    int goOn = 0;
    int cleared = 0;
    int planned = 0;
    for (long seed = 0; seed < HOUSEHOLDS; seed++) {
      Wish wish = RandomHouseholds.small(seed, CATALOGUE);
      Present present = RandomPresent.of(seed, wish, CATALOGUE);
      try {
        SowingPlan plan = plan(wish, present);
        planned++;
        for (Fault fault : PlanChecker.check(plan, wish.household(), CATALOGUE, present)) {
          wrong.add("seed " + seed + ": " + fault);
        }
        for (Sowing batch : plan.standing()) {
          for (Sowing.Course c : batch.courses()) {
            goOn += c.picks().isEmpty() ? 0 : c.plants();
            cleared += c.clearedGrams() > 0 ? c.plants() : 0;
          }
        }
      } catch (NoPlan noPlan) {
        assertThat(noPlan).message().as("seed %d", seed).isNotBlank();
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(planned).as("plans").isGreaterThanOrEqualTo(HOUSEHOLDS * 2 / 3);
    assertThat(goOn).as("standing plants that are picked").isGreaterThan(HOUSEHOLDS / 3);
    assertThat(cleared).as("standing plants that are cleared").isGreaterThan(HOUSEHOLDS / 12);
  }

  private static SowingPlan plan(Wish wish, Present present) {
    return Planner.plan(
        wish.request(CATALOGUE, present, Effort.counted(1), LinearSolver.NATIVE), line -> {});
  }
}
