package sallet.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sallet.plan.linear.LinearProgramme;

/**
 * The rows for what is scarce: cells, nursery places and the pots of each group, slot by slot, and
 * the plants that stand already.
 *
 * <pre>
 * cells, nursery, pots of a group, per slot   sum of use &lt;= number free
 * standing group   sum of its plants' lives + discarded = plants that stand
 * </pre>
 *
 * and of what the last plan promised, see {@link Promises}.
 */
final class Places {
  private static final double FREE = LinearProgramme.FREE;

  private static final int UNCOUNTED = -1;

  private final LinearProgramme programme;
  private final int[] cells;
  private final int[] nursery;
  private final int[][] pots;
  private final int[] standing;
  private final Map<Promises.Batch, Integer> promises;

  Places(Instance instance, LinearProgramme programme) {
    this.programme = programme;
    int slots = instance.calendar().slots().size();
    cells = new int[slots];
    for (int i = 0; i < slots; i++) {
      cells[i] = programme.row(-FREE, instance.freeCells(i));
    }
    nursery = rows(slots, instance.at().places());
    pots = new int[instance.at().groups().size()][];
    for (int g = 0; g < pots.length; g++) {
      pots[g] = rows(slots, instance.at().groups().get(g).pots().size());
    }
    List<StandingPlants> plants = instance.standing();
    standing = new int[plants.size()];
    for (int s = 0; s < standing.length; s++) {
      standing[s] = programme.row(plants.get(s).count(), plants.get(s).count());
      programme.set(standing[s], programme.column(plants.get(s).discardPoints()), 1);
    }
    promises = new Promises(instance, List.of()).rows(programme);
  }

  private int[] rows(int slots, double capacity) {
    int[] rows = new int[slots];
    Arrays.setAll(rows, i -> programme.row(-FREE, capacity));
    return rows;
  }

  /** Adds the places of a skeleton to a column. */
  void set(int column, Life.Skeleton s) {
    Course c = s.course();
    for (int i = c.sowSlot; i < c.nurserySlot && c.cellsPerPlant > 0; i++) {
      programme.set(cells[i], column, c.cellsPerPlant);
    }
    for (int i = c.nurserySlot; i < c.benchSlot; i++) {
      programme.set(nursery[i], column, 1);
    }
    for (int i = c.benchSlot; i < s.endSlot(); i++) {
      programme.set(pots[c.group][i], column, 1);
    }
    int counted =
        c.standing == Course.NEW
            ? promises.getOrDefault(Promises.Batch.of(c), UNCOUNTED)
            : standing[c.standing];
    if (counted != UNCOUNTED) {
      programme.set(counted, column, 1);
    }
  }

  /** What grams and places are worth at the last solution. */
  Prices prices(double[][] gramPrices) {
    double[][] pot = new double[pots.length][];
    Arrays.setAll(pot, g -> costs(pots[g]));
    return new Prices(
        gramPrices,
        costs(cells),
        costs(nursery),
        pot,
        Arrays.stream(standing).mapToDouble(programme::dual).toArray(),
        promises.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> programme.dual(e.getValue()))));
  }

  private double[] costs(int[] rows) {
    return Arrays.stream(rows).mapToDouble(row -> Math.max(0, -programme.dual(row))).toArray();
  }
}
