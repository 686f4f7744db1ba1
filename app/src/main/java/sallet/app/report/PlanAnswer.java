package sallet.app.report;

import java.util.List;
import java.util.Optional;
import sallet.learn.Standing;
import sallet.plan.SowingPlan;
import sallet.plan.WhatIf;

/**
 * A plan with what goes with it.
 *
 * @param plan the plan
 * @param standing what stands on its first day and what was learned; empty without a journal
 * @param basis fingerprint of the household and the journal it was made from
 * @param changes sentences on what differs from the last plan, and why
 * @param bottlenecks what changes to the household would bring, most first; empty unless asked
 */
public record PlanAnswer(
    SowingPlan plan,
    Optional<Standing> standing,
    String basis,
    List<String> changes,
    List<WhatIf.Bottleneck> bottlenecks) {
  public PlanAnswer {
    changes = List.copyOf(changes);
    bottlenecks = List.copyOf(bottlenecks);
  }

  /** A plan from an empty bench, with nothing beside it. */
  public static PlanAnswer of(SowingPlan plan) {
    return new PlanAnswer(plan, Optional.empty(), "", List.of(), List.of());
  }
}
