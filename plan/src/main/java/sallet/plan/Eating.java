package sallet.plan;

import java.util.Arrays;
import sallet.plan.linear.LinearProgramme;

/**
 * What becomes of the grams picked: eaten the same week, a week later, or wasted.
 *
 * <pre>
 * supply k,w   grams picked - eaten now - eaten next week - wasted = 0
 * bowl   w     eaten of all kinds + missing = aim
 * kind   k,w   eaten of the kind - excess &lt;= share of the aim
 * </pre>
 */
final class Eating {
  private static final int NONE = -1;
  private static final double FREE = LinearProgramme.FREE;

  private final Instance instance;
  private final LinearProgramme programme;
  private final int[][] supply;
  private final int[] bowl;
  private final int[][] now;
  private final int[][] nextWeek;
  private final int[][] wasted;
  private final int[][] excess;
  private final int[] missing;

  /** The rows of a plan whose harvest is still open. */
  Eating(Instance instance, LinearProgramme programme) {
    this(instance, programme, inHand(instance));
  }

  /** Grams in hand before the first pick, by crop and bowl. */
  static double[][] inHand(Instance instance) {
    double[][] grams = new double[instance.crops().size()][instance.calendar().bowls()];
    for (int k = 0; k < grams.length; k++) {
      grams[k][0] = instance.inHandGrams().get(k);
    }
    return grams;
  }

  /**
   * @param harvestGrams what is picked beside the lives to come, by crop and bowl
   */
  Eating(Instance instance, LinearProgramme programme, double[][] harvestGrams) {
    this.instance = instance;
    this.programme = programme;
    int crops = instance.crops().size();
    int bowls = instance.calendar().bowls();
    supply = none(crops, bowls);
    now = none(crops, bowls);
    nextWeek = none(crops, bowls);
    wasted = none(crops, bowls);
    excess = none(crops, bowls);
    bowl = none(1, bowls)[0];
    missing = none(1, bowls)[0];
    for (int w = 0; w < bowls; w++) {
      addBowl(w);
    }
    for (int k = 0; k < crops; k++) {
      for (int w = 0; w < bowls; w++) {
        addCrop(k, w, harvestGrams[k][w]);
      }
    }
  }

  private static int[][] none(int crops, int bowls) {
    int[][] table = new int[crops][bowls];
    for (int[] row : table) {
      Arrays.fill(row, NONE);
    }
    return table;
  }

  private void addBowl(int w) {
    double aim = instance.aimGrams(w);
    if (aim > 0) {
      bowl[w] = programme.row(aim, aim);
      missing[w] = programme.column(Weights.SHORT);
      programme.set(bowl[w], missing[w], 1);
    }
  }

  private void addCrop(int k, int w, double harvestGrams) {
    int kind = kindRow(k, w);
    if (instance.calendar().slotOfBowl(w) >= 0) {
      supply[k][w] = programme.row(-harvestGrams, -harvestGrams);
      wasted[k][w] = flow(supply[k][w], NONE, NONE, Weights.WASTE);
      if (bowl[w] != NONE) {
        now[k][w] = flow(supply[k][w], bowl[w], kind, 0);
      }
    }
    if (w > 0 && supply[k][w - 1] != NONE && bowl[w] != NONE && instance.keeps(k)) {
      nextWeek[k][w - 1] = flow(supply[k][w - 1], bowl[w], kind, Weights.CARRIED);
    }
  }

  private int kindRow(int k, int w) {
    if (bowl[w] == NONE || instance.kindShare() >= 1) {
      return NONE;
    }
    int kind = programme.row(-FREE, instance.kindShare() * instance.aimGrams(w));
    excess[k][w] = programme.column(Weights.ONE_KIND);
    programme.set(kind, excess[k][w], -1);
    return kind;
  }

  private int flow(int from, int into, int kind, double cost) {
    int column = programme.column(cost);
    programme.set(from, column, -1);
    if (into != NONE) {
      programme.set(into, column, 1);
    }
    if (kind != NONE) {
      programme.set(kind, column, 1);
    }
    return column;
  }

  /** Adds the grams of a life to a column. */
  void setGrams(int column, Life life) {
    Course c = life.course();
    for (int t = 0; t <= life.end(); t++) {
      int row = supply[c.cropIndex][c.bowls[t]];
      if (life.grams(t) > 0 && row != NONE) {
        programme.set(row, column, life.grams(t));
      }
    }
  }

  /** Worth of an edible gram at the last solution, by crop and bowl, points. */
  double[][] gramPrices() {
    double[][] price = new double[supply.length][];
    for (int k = 0; k < supply.length; k++) {
      price[k] =
          Arrays.stream(supply[k]).mapToDouble(r -> r == NONE ? 0 : programme.dual(r)).toArray();
    }
    return price;
  }

  /** Grams of a crop eaten at a bowl, fresh and from the fridge. */
  double eatenGrams(int k, int w) {
    return value(now[k][w]) + (w == 0 ? 0 : value(nextWeek[k][w - 1]));
  }

  /** Points a bowl loses: grams missing, wasted or of one kind too much. */
  double lossPoints(int w) {
    double points = Weights.SHORT * value(missing[w]);
    for (int k = 0; k < wasted.length; k++) {
      points += Weights.WASTE * value(wasted[k][w]) + Weights.ONE_KIND * value(excess[k][w]);
    }
    return points;
  }

  double missingGrams() {
    return sum(missing);
  }

  double wastedGrams() {
    return sum(wasted);
  }

  double excessGrams() {
    return sum(excess);
  }

  double carriedGrams() {
    return sum(nextWeek);
  }

  private double sum(int[][] columns) {
    return Arrays.stream(columns).mapToDouble(this::sum).sum();
  }

  private double sum(int[] columns) {
    return Arrays.stream(columns).mapToDouble(this::value).sum();
  }

  private double value(int column) {
    return column == NONE ? 0 : programme.value(column);
  }
}
