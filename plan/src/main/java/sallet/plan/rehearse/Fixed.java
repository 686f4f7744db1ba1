package sallet.plan.rehearse;

import sallet.plan.BowlWeek;
import sallet.plan.SowingPlan;

/** Follows one plan to its end, with the bowls it meant, and never plans again. */
record Fixed(SowingPlan plan) implements Grower {
  @Override
  public void work(World world) {
    double bowl =
        plan.weeks().stream()
            .filter(week -> week.bowlDay().equals(world.today()))
            .mapToDouble(BowlWeek::plannedGrams)
            .sum();
    PlanHand.work(world, plan, bowl);
  }
}
