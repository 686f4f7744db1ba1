package sallet.plan.rehearse;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sallet.learn.Standing;
import sallet.learn.StandingBatch;
import sallet.learn.StandingGroup;
import sallet.plan.Present;

/** What stands and what was learned, as the planner takes it. */
final class Believed {
  private Believed() {}

  static Present present(Standing standing, Map<String, Double> inHandGrams) {
    double regrowth = standing.learned().regrowth().median();
    List<Present.Plants> plants = new ArrayList<>();
    for (StandingBatch batch : standing.batches()) {
      for (StandingGroup group : batch.groups()) {
        int count = (int) Math.round(group.plants());
        if (count >= 1) {
          plants.add(plants(batch, group, count, regrowth));
        }
      }
    }
    Map<String, Double> growth = new HashMap<>();
    standing.learned().growth().forEach((crop, f) -> growth.put(crop, f.median()));
    Map<String, Double> shares = new HashMap<>();
    standing.learned().seed().forEach((crop, s) -> shares.put(crop, s.now().mean()));
    return new Present(plants, inHandGrams, growth, shares);
  }

  private static Present.Plants plants(
      StandingBatch batch, StandingGroup group, int count, double regrowth) {
    return new Present.Plants(
        batch.batch(),
        batch.crop().name(),
        count,
        batch.sown(),
        batch.emergence(),
        group.toNursery(),
        group.toBench(),
        group.pots(),
        group.stage().takesCell() ? group.count() : 0,
        group.vigour() * Math.pow(regrowth, group.picks().size()),
        group.plant(),
        group.lastPick());
  }
}
