package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Gives every plant one pot for its whole time on the bench. In order of arrival the first free pot
 * of the group is taken; stays are intervals, so as many pots suffice as stand full at once.
 */
final class PotAssignment {
  private PotAssignment() {}

  /** Names of the pots of each life's plants, in the order of the lives. */
  static List<List<String>> of(List<BlendedLife> lives, Surroundings at) {
    Map<String, Integer> freeFrom = new HashMap<>();
    List<List<String>> pots = new ArrayList<>();
    lives.forEach(l -> pots.add(new ArrayList<>()));
    IntStream.range(0, lives.size())
        .boxed()
        .sorted(Comparator.comparingInt(i -> lives.get(i).skeleton().course().benchSlot))
        .forEach(
            i -> {
              BlendedLife life = lives.get(i);
              Course c = life.skeleton().course();
              List<String> group = at.groups().get(c.group).pots();
              for (int n = 0; n < life.count(); n++) {
                String pot =
                    group.stream()
                        .filter(p -> freeFrom.getOrDefault(p, 0) <= c.benchSlot)
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("no free pot"));
                freeFrom.put(pot, life.skeleton().endSlot());
                pots.get(i).add(pot);
              }
            });
    return pots;
  }
}
