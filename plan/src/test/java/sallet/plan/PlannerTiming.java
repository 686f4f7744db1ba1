package sallet.plan;

import java.time.Duration;
import java.util.List;
import sallet.crop.Catalogue;

/** Times the planner on the ordinary bench; run by hand. */
final class PlannerTiming {
  private PlannerTiming() {}

  public static void main(String[] args) {
    double grams = Double.parseDouble(args[0]);
    List<String> crops = args[1].equals("all") ? List.of() : List.of(args[1].split(";"));
    int linear = Integer.parseInt(args[2]);
    int integer = Integer.parseInt(args[3]);
    int weeks = args.length > 4 ? Integer.parseInt(args[4]) : 26;
    SowingPlan plan =
        Planner.plan(
            new Planner.Request(
                Households.bench(grams, crops, List.of()),
                Catalogue.builtIn(),
                Households.START,
                weeks,
                1.15,
                new Effort(Duration.ofSeconds(linear), Duration.ofSeconds(integer))),
            System.err::println);
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
