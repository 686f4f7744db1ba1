package sallet.app.use;

import java.time.Duration;
import java.time.LocalDate;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.Effort;
import sallet.plan.Planner;
import sallet.plan.Present;
import sallet.plan.SowingPlan;
import sallet.plan.linear.LinearSolver;

/** What do I sow so that the bowl is full every week from now on? */
public final class MakePlan {
  private MakePlan() {}

  /**
   * How to plan.
   *
   * @param from first day
   * @param weeks number of bowls, 1 to 52
   * @param margin factor on demand, 0.5 to 2
   * @param seconds time to think, at least 1
   * @param dives searches for whole plants to make without a clock, so that the same question gets
   *     the same plan; 0 to go by the clock
   * @param solver who solves the linear programmes
   */
  public record Wish(
      LocalDate from, int weeks, double margin, double seconds, int dives, LinearSolver solver) {
    private Effort effort() {
      return dives > 0
          ? Effort.counted(dives)
          : Effort.within(Duration.ofMillis(Math.round(seconds * 1000)));
    }
  }

  /**
   * The plan of a household.
   *
   * @param progress told one short line for each step
   * @param cancelled asked often; once true the best plan found so far is given
   * @throws sallet.plan.NoPlan when the question has no answer
   */
  public static SowingPlan of(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    return Planner.plan(
        new Planner.Request(
            household,
            catalogue,
            wish.from(),
            wish.weeks(),
            wish.margin(),
            Present.NOTHING,
            wish.effort(),
            wish.solver()),
        progress,
        cancelled);
  }
}
