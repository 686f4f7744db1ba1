package sallet.plan.check;

import java.util.List;

/** Looks at a plan for breaches of one or a few rules. */
@FunctionalInterface
interface Check {
  /** Adds what it finds. */
  void examine(Subject subject, List<Fault> faults);
}
