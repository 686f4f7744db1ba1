package sallet.plan;

import java.util.List;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.check.PlanChecker;
import sallet.plan.linear.LinearSolver;

/** Plans with both solvers and prints what came of it; run where there is no native library. */
final class PlansWithoutNativeLibrary {
  private PlansWithoutNativeLibrary() {}

  public static void main(String[] arguments) {
    for (LinearSolver solver : LinearSolver.values()) {
      Household household =
          Households.bench(120, List.of("loose-leaf lettuce, green", "mizuna"), List.of());
      SowingPlan plan =
          Planner.plan(
              new Planner.Request(
                  household,
                  Catalogue.builtIn(),
                  Households.START,
                  9,
                  1.15,
                  Present.NOTHING,
                  Effort.counted(2),
                  solver),
              step -> {});
      System.out.println(
          solver
              + ": "
              + plan.sowings().size()
              + " sowings, faults "
              + PlanChecker.check(plan, household, Catalogue.builtIn())
              + ", "
              + plan.notes());
    }
  }
}
