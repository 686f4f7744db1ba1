package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.household.Bench;
import sallet.household.CropWishes;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.plan.linear.LinearSolver;

/** What must hold whatever the household. */
class PlanLawsTest {
  private static final int HOUSEHOLDS = 60;

  @Test
  void oneMorePotNeverWorsensTheBound() {
    neverWorse(bench -> bench.pots++);
  }

  @Test
  void oneMoreCellNeverWorsensTheBound() {
    neverWorse(bench -> bench.cells++);
  }

  @Test
  void oneMoreNurseryPlaceNeverWorsensTheBound() {
    neverWorse(bench -> bench.places++);
  }

  /** Bounds lie within half a point a bowl of the least cost with fractions of plants. */
  private static void neverWorse(Consumer<TinyBench> more) {
    int better = 0;
    for (long seed = 0; seed < HOUSEHOLDS; seed++) {
      TinyBench larger = new TinyBench(seed);
      more.accept(larger);
      double before = bound(new TinyBench(seed));
      double after = bound(larger);
      assertThat(after).as("seed %d", seed).isLessThanOrEqualTo(before + 0.5 * 8);
      better += after < before - 1 ? 1 : 0;
    }
    assertThat(better).as("households it helps").isPositive();
  }

  private static double bound(TinyBench bench) {
    Instance instance = bench.instance();
    return GridBoundTest.bound(instance, Courses.all(instance));
  }

  @Test
  void namesAndOrderOfPotsChangeNothing() {
    Household household = household(List.of());
    Bench bench = household.bench();
    List<Pot> pots = new ArrayList<>();
    for (int i = 0; i < bench.pots().size(); i++) {
      Pot place = bench.pots().get(i);
      pots.add(
          new Pot(bench.pots().get(bench.pots().size() - 1 - i).name(), place.xM(), place.yM()));
    }
    Collections.reverse(pots);
    SowingPlan plan = plan(household);
    SowingPlan permuted = plan(household(pots));
    assertThat(permuted.objective().gridBound())
        .isCloseTo(plan.objective().gridBound(), within(1e-6 * plan.objective().gridBound()));
    assertThat(permuted.objective().value())
        .isCloseTo(plan.objective().value(), within(1e-6 * plan.objective().value()));
  }

  private static Household household(List<Pot> pots) {
    Household h = Households.bench(160, List.of(), List.of());
    Household home =
        h.withCrops(new CropWishes(List.of("loose-leaf lettuce, green", "mizuna"), List.of()));
    return pots.isEmpty() ? home : home.withBench(h.bench().withPots(pots));
  }

  private static SowingPlan plan(Household household) {
    return Planner.plan(
        new Planner.Request(
            household,
            Catalogue.builtIn(),
            Households.START,
            8,
            1,
            Present.NOTHING,
            Effort.counted(2),
            LinearSolver.JAVA),
        step -> {});
  }
}
