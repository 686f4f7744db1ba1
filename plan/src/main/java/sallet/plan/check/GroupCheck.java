package sallet.plan.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sallet.household.Bench;
import sallet.household.PotSites;
import sallet.plan.SowingPlan.PotGroup;

/** The groups of pots. */
final class GroupCheck implements Check {
  @Override
  public void examine(Subject subject, List<Fault> faults) {
    Map<String, Double> sites = sitesCm2(subject.household().bench());
    Set<String> seen = new HashSet<>();
    for (PotGroup group : subject.plan().groups()) {
      String where = "group " + group.name();
      double sumCm2 = 0;
      for (String pot : group.pots()) {
        if (!sites.containsKey(pot)) {
          faults.add(new Fault(Rule.GROUPS, where, "pot", "a pot of the bench", pot));
        } else if (!seen.add(pot)) {
          faults.add(new Fault(Rule.GROUPS, where, "pot", "a pot named once", pot));
        }
        sumCm2 += sites.getOrDefault(pot, 0.0);
      }
      site(group, sumCm2 / group.pots().size(), where, faults);
    }
  }

  private static void site(PotGroup group, double meanCm2, String where, List<Fault> faults) {
    if (group.pots().isEmpty()) {
      faults.add(new Fault(Rule.GROUPS, where, "number of pots", "at least 1", "0"));
    } else if (!(group.siteCm2() > 0 && group.siteCm2() <= meanCm2 * (1 + Close.RELATIVE))) {
      faults.add(
          new Fault(
              Rule.GROUPS,
              where,
              "site, cm²",
              "above 0, at most " + meanCm2,
              "" + group.siteCm2()));
    }
  }

  /** The part of the tray that each pot has to itself. */
  private static Map<String, Double> sitesCm2(Bench bench) {
    List<Double> areas = PotSites.siteCm2(bench);
    Map<String, Double> sites = new HashMap<>();
    for (int i = 0; i < areas.size(); i++) {
      sites.put(bench.pots().get(i).name(), areas.get(i));
    }
    return sites;
  }
}
