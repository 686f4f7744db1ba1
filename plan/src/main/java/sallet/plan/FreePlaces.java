package sallet.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Places not yet taken by whole plants, slot by slot, and standing plants not yet decided on. */
final class FreePlaces {
  private final int allCells;
  private final int[] cells;
  private final int[] nursery;
  private final int[][] pots;
  private final int[] standing;
  private final Map<List<Integer>, Integer> batches = new HashMap<>();

  FreePlaces(Instance instance) {
    int slots = instance.calendar().slots().size();
    allCells = instance.at().cells();
    cells = new int[slots];
    Arrays.setAll(cells, instance::freeCells);
    nursery = new int[slots];
    Arrays.fill(nursery, instance.at().places());
    pots = new int[instance.at().groups().size()][slots];
    for (int g = 0; g < pots.length; g++) {
      Arrays.fill(pots[g], instance.at().groups().get(g).pots().size());
    }
    standing = instance.standing().stream().mapToInt(StandingPlants::count).toArray();
  }

  /** Whether one more plant of the skeleton has a place all its life. */
  boolean fits(Life.Skeleton s) {
    Course c = s.course();
    if (c.standing >= 0 ? standing[c.standing] < 1 : !cellsFit(c)) {
      return false;
    }
    for (int i = c.nurserySlot; i < c.benchSlot; i++) {
      if (nursery[i] < 1) {
        return false;
      }
    }
    for (int i = c.benchSlot; i < s.endSlot(); i++) {
      if (pots[c.group][i] < 1) {
        return false;
      }
    }
    return true;
  }

  private boolean cellsFit(Course c) {
    int more = moreCells(c, 1);
    for (int i = c.sowSlot; i < c.nurserySlot; i++) {
      if (cells[i] < more) {
        return false;
      }
    }
    return true;
  }

  /** Cells that so many more plants add to their batch. */
  private int moreCells(Course c, int plants) {
    int now = batches.getOrDefault(batch(c), 0);
    return Weights.batchCells(now + plants, c.rule, allCells)
        - Weights.batchCells(now, c.rule, allCells);
  }

  private static List<Integer> batch(Course c) {
    return List.of(c.cropIndex, c.sowSlot);
  }

  /** Takes the places of plants. */
  void take(Life.Skeleton s, int plants) {
    Course c = s.course();
    if (c.standing >= 0) {
      standing[c.standing] -= plants;
    } else {
      int more = moreCells(c, plants);
      for (int i = c.sowSlot; i < c.nurserySlot; i++) {
        cells[i] -= more;
      }
      batches.merge(batch(c), plants, Integer::sum);
    }
    for (int i = c.nurserySlot; i < c.benchSlot; i++) {
      nursery[i] -= plants;
    }
    for (int i = c.benchSlot; i < s.endSlot(); i++) {
      pots[c.group][i] -= plants;
    }
  }

  /** Standing plants of a group not yet decided on. */
  int standing(int group) {
    return standing[group];
  }
}
