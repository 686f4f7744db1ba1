package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.plan.linear.LinearSolver;

/** The solver in plain Java comes to the same bound and an equally good plan as the native one. */
class SolversPlanAlikeTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  /** Points within which a bound is taken as reached, for each bowl: what a round is worth. */
  private static final double ROUND = 0.5;

  @Test
  void boundsOfRandomHouseholdsAgree() {
    int compared = 0;
    for (long seed = 0; seed < 60; seed++) {
      RandomHouseholds.Wish wish = RandomHouseholds.small(seed, CATALOGUE);
      Map<LinearSolver, Double> bound = new EnumMap<>(LinearSolver.class);
      try {
        for (LinearSolver solver : LinearSolver.values()) {
          bound.put(solver, plan(wish, solver).objective().gridBound());
        }
        compared++;
      } catch (NoPlan e) {
        continue;
      }
      assertThat(bound.get(LinearSolver.JAVA))
          .as("seed %d", seed)
          .isCloseTo(bound.get(LinearSolver.NATIVE), within(ROUND * wish.bowls()));
    }
    assertThat(compared).isGreaterThan(20);
  }

  @Test
  void anOrdinaryBenchIsPlannedAsWell() {
    Map<LinearSolver, SowingPlan> plans = new EnumMap<>(LinearSolver.class);
    for (LinearSolver solver : LinearSolver.values()) {
      plans.put(
          solver,
          Planner.plan(
              new Planner.Request(
                  Households.bench(
                      240,
                      List.of("loose-leaf lettuce, green", "mizuna", "Swiss chard"),
                      List.of()),
                  CATALOGUE,
                  Households.START,
                  12,
                  1,
                  Present.NOTHING,
                  Effort.counted(10),
                  solver),
              step -> {}));
    }
    SowingPlan fast = Objects.requireNonNull(plans.get(LinearSolver.NATIVE));
    SowingPlan plain = Objects.requireNonNull(plans.get(LinearSolver.JAVA));
    assertThat(plain.objective().gridBound())
        .isCloseTo(fast.objective().gridBound(), within(ROUND * 12));
    // Dives draw by chance and may end a gram and a half a bowl apart.
    assertThat(plain.objective().value()).isCloseTo(fast.objective().value(), within(15.0 * 12));
  }

  private static SowingPlan plan(RandomHouseholds.Wish wish, LinearSolver solver) {
    return Planner.plan(
        wish.request(CATALOGUE, Present.NOTHING, Effort.counted(1), solver), step -> {});
  }
}
