package sallet.plan;

import java.util.Arrays;

/** Places not yet taken by whole plants, slot by slot. */
final class FreePlaces {
  private final double[] cellsPerPlant;
  private final double[] cells;
  private final int[] nursery;
  private final int[][] pots;

  FreePlaces(Instance instance, double[] cellsPerPlant) {
    this.cellsPerPlant = cellsPerPlant;
    int slots = instance.calendar().slots().size();
    cells = new double[slots];
    Arrays.fill(cells, instance.at().cells());
    nursery = new int[slots];
    Arrays.fill(nursery, instance.at().places());
    pots = new int[instance.at().groups().size()][slots];
    for (int g = 0; g < pots.length; g++) {
      Arrays.fill(pots[g], instance.at().groups().get(g).pots().size());
    }
  }

  /** Whether one more plant of the skeleton has a place all its life. */
  boolean fits(Life.Skeleton s) {
    Course c = s.course();
    for (int i = c.sowSlot; i < c.nurserySlot; i++) {
      if (cells[i] < cellsPerPlant[c.cropIndex] - 1e-9) {
        return false;
      }
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

  /** Takes (or with a negative number gives back) the places of plants. */
  void take(Life.Skeleton s, int plants) {
    Course c = s.course();
    for (int i = c.sowSlot; i < c.nurserySlot; i++) {
      cells[i] -= plants * cellsPerPlant[c.cropIndex];
    }
    for (int i = c.nurserySlot; i < c.benchSlot; i++) {
      nursery[i] -= plants;
    }
    for (int i = c.benchSlot; i < s.endSlot(); i++) {
      pots[c.group][i] -= plants;
    }
  }
}
