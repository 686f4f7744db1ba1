package sallet.plan.rehearse;

import sallet.plan.SowingPlan;

/** Follows one plan to its end and never plans again. */
record Fixed(SowingPlan plan) implements Grower {
  @Override
  public void work(World world) {
    PlanHand.work(world, plan);
  }
}
