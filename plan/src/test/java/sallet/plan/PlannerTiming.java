package sallet.plan;

import java.time.Duration;
import java.util.Locale;
import sallet.crop.Catalogue;
import sallet.plan.linear.LinearSolver;

/**
 * Times the planner; run by hand with grams a bowl, number of crops, number of bowls, seconds and
 * solver.
 */
final class PlannerTiming {
  private PlannerTiming() {}

  public static void main(String[] args) {
    double grams = Double.parseDouble(args[0]);
    int crops = Integer.parseInt(args[1]);
    int weeks = Integer.parseInt(args[2]);
    double seconds = Double.parseDouble(args[3]);
    SowingPlan plan =
        Planner.plan(
            new Planner.Request(
                Households.benchmark(grams, crops),
                Catalogue.builtIn(),
                Households.START,
                weeks,
                1,
                Present.NOTHING,
                Effort.within(Duration.ofMillis(Math.round(1000 * seconds))),
                args.length > 4 ? LinearSolver.valueOf(args[4]) : LinearSolver.NATIVE),
            System.err::println);
    double demand = plan.weeks().stream().mapToDouble(BowlWeek::demandGrams).sum();
    System.out.printf(
        Locale.ROOT,
        "gap %.0f g, %.2f %% of %.0f g%n",
        plan.objective().gapGrams(),
        100 * plan.objective().gapGrams() / demand,
        demand);
    plan.solver().steps().forEach(System.out::println);
    System.out.println(plan.objective() + " gap g " + plan.objective().gapGrams());
    System.out.println(plan.groups());
    plan.weeks()
        .forEach(
            w ->
                System.out.printf(
                    "%s %s %.0f of %.0f, picked %.0f %s %s%n",
                    w.bowlDay(),
                    w.reachable(),
                    w.plannedGrams(),
                    w.demandGrams(),
                    w.harvestGrams(),
                    w.kinds(),
                    w.fullPlaces()));
    if (args.length > 5) {
      plan.sowings().forEach(System.out::println);
    }
  }
}
