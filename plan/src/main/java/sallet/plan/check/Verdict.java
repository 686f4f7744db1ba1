package sallet.plan.check;

import java.util.List;

/**
 * What the checker says of a plan.
 *
 * @param faults broken rules; the plan is valid when there are none
 * @param notes places where the plan is valid but more careful than it need be
 */
public record Verdict(List<Fault> faults, List<Fault> notes) {
  public Verdict {
    faults = List.copyOf(faults);
    notes = List.copyOf(notes);
  }

  /** Whether no rule is broken. */
  public boolean valid() {
    return faults.isEmpty();
  }
}
