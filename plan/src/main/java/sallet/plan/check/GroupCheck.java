package sallet.plan.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import sallet.household.Pot;
import sallet.plan.SowingPlan.PotGroup;

/** The groups of pots. */
final class GroupCheck implements Check {
  @Override
  public void examine(Subject subject, List<Fault> faults) {
    Set<String> bench =
        subject.household().bench().pots().stream().map(Pot::name).collect(Collectors.toSet());
    Set<String> seen = new HashSet<>();
    for (PotGroup group : subject.plan().groups()) {
      String where = "group " + group.name();
      if (group.pots().isEmpty()) {
        faults.add(new Fault(Rule.GROUPS, where, "number of pots", "at least 1", "0"));
      }
      if (!(group.siteCm2() > 0 && Double.isFinite(group.siteCm2()))) {
        faults.add(new Fault(Rule.GROUPS, where, "site, cm²", "above 0", "" + group.siteCm2()));
      }
      for (String pot : group.pots()) {
        if (!bench.contains(pot)) {
          faults.add(new Fault(Rule.GROUPS, where, "pot", "a pot of the bench", pot));
        } else if (!seen.add(pot)) {
          faults.add(new Fault(Rule.GROUPS, where, "pot", "a pot named once", pot));
        }
      }
    }
  }
}
