package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;

/** A counted effort gives the same plan again; a cancelled one gives what it has. */
class RepeatablePlanTest {
  private static final List<String> CROPS =
      List.of("loose-leaf lettuce, green", "mizuna", "Swiss chard");

  private static Planner.Request request(Effort effort) {
    return new Planner.Request(
        Households.bench(240, CROPS, List.of()),
        Catalogue.builtIn(),
        Households.START,
        14,
        1.15,
        effort);
  }

  @Test
  void theSameEffortGivesTheSamePlan() {
    SowingPlan one = Planner.plan(request(Effort.counted(6)), step -> {});
    SowingPlan two = Planner.plan(request(Effort.counted(6)), step -> {});
    assertThat(two.sowings()).isEqualTo(one.sowings());
    assertThat(two.objective()).isEqualTo(one.objective());
  }

  @Test
  void moreEffortIsNeverWorse() {
    double few = Planner.plan(request(Effort.counted(1)), step -> {}).objective().value();
    SowingPlan many = Planner.plan(request(Effort.counted(12)), step -> {});
    // The picks of the final plan are lived anew, which may cost a little: 0.1 g a bowl.
    assertThat(many.objective().value()).isLessThanOrEqualTo(few + 14);
    assertThat(many.objective().gridBound()).isLessThanOrEqualTo(many.objective().value());
  }

  @Test
  void aCancelledPlanIsStillAPlan() {
    AtomicInteger asked = new AtomicInteger();
    SowingPlan plan =
        Planner.plan(request(Effort.counted(1000)), step -> {}, () -> asked.incrementAndGet() > 40);
    assertThat(plan.sowings()).isNotEmpty();
    assertThat(plan.weeks().get(13).plannedGrams()).isGreaterThan(200);
  }
}
