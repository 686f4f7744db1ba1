package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** What a gram and a place are worth at the present solution of the linear plan (its duals). */
final class Prices {
  private final double[][] gram;
  private final double[] cells;
  private final double[] nursery;
  private final double[][] pots;
  private final double[] standing;
  private final Map<Promises.Batch, Double> promises;

  /**
   * @param gram worth of an edible gram, by crop and bowl
   * @param cells cost of one cell for each slot
   * @param nursery cost of one nursery place for each slot
   * @param pots cost of one pot for each group and slot
   * @param standing what one more plant of each standing group would cost
   * @param promises what one more plant promised of a batch would cost
   */
  Prices(
      double[][] gram,
      double[] cells,
      double[] nursery,
      double[][] pots,
      double[] standing,
      Map<Promises.Batch, Double> promises) {
    this.gram = gram;
    this.cells = runningSum(cells);
    this.nursery = runningSum(nursery);
    this.pots = new double[pots.length][];
    for (int g = 0; g < pots.length; g++) {
      this.pots[g] = runningSum(pots[g]);
    }
    this.standing = standing.clone();
    this.promises = Map.copyOf(promises);
  }

  /** Prices before anything was solved. */
  static Prices none() {
    return new Prices(
        new double[0][], new double[0], new double[0], new double[0][], new double[0], Map.of());
  }

  /** Prices of grams alone, for plants whose places are settled. */
  static Prices ofGrams(double[][] gram, Instance instance) {
    int slots = instance.calendar().slots().size();
    return new Prices(
        gram,
        new double[slots],
        new double[slots],
        new double[instance.at().groups().size()][slots],
        new double[instance.standing().size()],
        Map.of());
  }

  private static double[] runningSum(double[] perSlot) {
    double[] sum = new double[perSlot.length + 1];
    for (int i = 0; i < perSlot.length; i++) {
      sum[i + 1] = sum[i] + perSlot[i];
    }
    return sum;
  }

  /** What one more cell, nursery place or pot of each group would bring, most first. */
  List<SowingPlan.Marginal> marginals(Instance instance) {
    int bowls = instance.calendar().bowls();
    List<SowingPlan.Marginal> all = new ArrayList<>();
    all.add(marginal("cell", cells, bowls));
    all.add(marginal("nursery place", nursery, bowls));
    List<String> names = instance.at().groupNames();
    for (int g = 0; g < pots.length; g++) {
      String pot = pots.length == 1 ? "pot" : "pot like the " + names.get(g);
      all.add(marginal(pot, pots[g], bowls));
    }
    all.sort(Comparator.comparingDouble(SowingPlan.Marginal::gramsPerWeek).reversed());
    return all;
  }

  /** A place that is there in every slot saves what it costs in all of them. */
  private static SowingPlan.Marginal marginal(String place, double[] runningSum, int bowls) {
    double points = runningSum[runningSum.length - 1];
    return new SowingPlan.Marginal(place, points / Weights.SHORT / bowls);
  }

  /** What the prices mean to the plants of a course. */
  Offer offer(Course course) {
    return offer(course, 0);
  }

  /** The same when each pick of leaves costs points for the trouble. */
  Offer offer(Course course, double pickCost) {
    return new Offer(course, gram[course.cropIndex], pots[course.group], pickCost);
  }

  /**
   * Cost of a course up to its first bowl: seeds, cells, nursery and pot; less what it would cost
   * to have one more such plant where their number is given.
   */
  double entryCost(Course c) {
    double[] pot = pots[c.group];
    return c.seedPoints()
        + c.cellsPerPlant * (cells[c.nurserySlot] - cells[c.sowSlot])
        + nursery[c.benchSlot]
        - nursery[c.nurserySlot]
        + pot[c.bowlSlot[0]]
        - pot[c.benchSlot]
        - (c.standing == Course.NEW
            ? promises.getOrDefault(Promises.Batch.of(c), 0.0)
            : standing[c.standing]);
  }

  /** Reduced cost of a life; below zero it would improve the linear plan. */
  double reducedCost(Life life) {
    Course c = life.course();
    double[] pot = pots[c.group];
    double cost =
        entryCost(c)
            + pot[life.endSlot()]
            - pot[c.bowlSlot[0]]
            + Weights.WASTE * life.clearedGrams();
    for (int t = 0; t <= life.end(); t++) {
      cost -= gram[c.cropIndex][c.bowls[t]] * life.grams(t);
    }
    return cost;
  }
}
