package sallet.plan;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import sallet.crop.Catalogue;
import sallet.plan.RandomHouseholds.Wish;
import sallet.plan.check.Fault;
import sallet.plan.check.PlanChecker;
import sallet.plan.linear.LinearSolver;

/**
 * Plans for random households of full size, every other one with random plants on the bench, each
 * checked. Run by {@code bench/households} with the number of households and seconds for each.
 */
final class FullSizePlans {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  private FullSizePlans() {}

  public static void main(String[] arguments) {
    int households = Integer.parseInt(arguments[0]);
    double seconds = Double.parseDouble(arguments[1]);
    System.out.printf(
        "%4s %5s %6s %5s %9s %7s %9s %9s %7s %7s%n",
        "seed", "pots", "crops", "bowls", "standing", "cpu_s", "value", "bound", "gap", "faults");
    int wrong = 0;
    for (long seed = 0; seed < households; seed++) {
      wrong += row(seed, seconds) ? 0 : 1;
    }
    System.out.println(wrong + " of " + households + " plans with faults");
  }

  /** Plans one household and prints its row; whether the plan is valid. */
  private static boolean row(long seed, double seconds) {
    Wish wish = RandomHouseholds.fullSize(seed, CATALOGUE);
    Present present = seed % 2 == 0 ? Present.NOTHING : RandomPresent.of(seed, wish, CATALOGUE);
    String about =
        String.format(
            "%4d %5d %6d %5d %9d",
            seed,
            wish.household().bench().pots().size(),
            wish.household().crops().want().size(),
            wish.bowls(),
            present.plants().stream().mapToInt(Present.Plants::count).sum());
    long start = cpu();
    try {
      SowingPlan plan =
          Planner.plan(
              wish.request(
                  CATALOGUE,
                  present,
                  Effort.within(Duration.ofMillis(Math.round(1000 * seconds))),
                  LinearSolver.NATIVE),
              step -> {});
      double used = (cpu() - start) * 1e-9;
      List<Fault> faults = PlanChecker.check(plan, wish.household(), CATALOGUE, present);
      double demand =
          plan.weeks().stream()
              .filter(BowlWeek::reachable)
              .mapToDouble(BowlWeek::demandGrams)
              .sum();
      System.out.printf(
          Locale.ROOT,
          "%s %7.1f %9.0f %9.0f %6.2f%% %7d%n",
          about,
          used,
          plan.objective().value(),
          plan.objective().gridBound(),
          100 * plan.objective().gapGrams() / Math.max(1, demand),
          faults.size());
      faults.forEach(System.out::println);
      return faults.isEmpty();
    } catch (NoPlan e) {
      System.out.println(about + " no answer: " + e.getMessage());
      return true;
    }
  }

  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
