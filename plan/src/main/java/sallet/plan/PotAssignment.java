package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
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
  static List<List<String>> of(List<BlendedLife> lives, Instance instance) {
    Map<String, Integer> freeFrom = new HashMap<>();
    List<List<String>> pots = new ArrayList<>();
    lives.forEach(l -> pots.add(new ArrayList<>()));
    standing(lives, instance, freeFrom, pots);
    IntStream.range(0, lives.size())
        .boxed()
        .filter(i -> pots.get(i).isEmpty())
        .sorted(Comparator.comparingInt(i -> lives.get(i).skeleton().course().benchSlot))
        .forEach(i -> take(lives.get(i), instance, freeFrom, pots.get(i)));
    return pots;
  }

  /** Plants that stand in pots already stay there. */
  private static void standing(
      List<BlendedLife> lives,
      Instance instance,
      Map<String, Integer> freeFrom,
      List<List<String>> pots) {
    List<Iterator<String>> own =
        instance.standing().stream().map(s -> s.pots().iterator()).toList();
    for (int i = 0; i < lives.size(); i++) {
      Life.Skeleton s = lives.get(i).skeleton();
      int standing = s.course().standing;
      for (int n = 0; n < lives.get(i).count(); n++) {
        if (standing != Course.NEW && own.get(standing).hasNext()) {
          String pot = own.get(standing).next();
          freeFrom.put(pot, s.endSlot());
          pots.get(i).add(pot);
        }
      }
    }
  }

  private static void take(
      BlendedLife life, Instance instance, Map<String, Integer> freeFrom, List<String> taken) {
    Course c = life.skeleton().course();
    for (int n = 0; n < life.count(); n++) {
      String pot =
          instance.at().groups().get(c.group).pots().stream()
              .filter(p -> freeFrom.getOrDefault(p, 0) <= c.benchSlot)
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("no free pot"));
      freeFrom.put(pot, life.skeleton().endSlot());
      taken.add(pot);
    }
  }
}
