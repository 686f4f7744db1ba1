package sallet.plan;

import java.time.LocalDate;
import java.util.function.Consumer;
import sallet.crop.Catalogue;
import sallet.household.Household;

/** Makes a sowing plan. */
public final class Planner {
  private Planner() {}

  /**
   * What to plan.
   *
   * @param household the household
   * @param catalogue crops to choose from
   * @param from first day of the plan
   * @param weeks number of bowls, 1 to 52
   * @param margin factor on demand, 0.5 to 2
   * @param effort how long to think
   */
  public record Request(
      Household household,
      Catalogue catalogue,
      LocalDate from,
      int weeks,
      double margin,
      Effort effort) {}

  /**
   * The plan.
   *
   * @param progress told one short line for each step
   * @throws NoPlan when the question has no answer, with what would have to change
   */
  public static SowingPlan plan(Request request, Consumer<String> progress) {
    throw new UnsupportedOperationException("not built yet");
  }
}
