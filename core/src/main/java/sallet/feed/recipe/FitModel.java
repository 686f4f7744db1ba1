package sallet.feed.recipe;

import java.util.ArrayList;
import java.util.List;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Nutrient;

/**
 * The recipe as a quadratic programme: minimise Σ (w (c − t) / s)² + a small price, c = water + Σ
 * content × grams per litre, below the limits on ammonium, sodium and chloride.
 */
final class FitModel {
  /** Keeps the programme definite and breaks ties towards less salt. */
  private static final double RIDGE = 1e-9;

  /** A whole bag's price per litre of solution counts this much (judgement: only breaks ties). */
  private static final double PRICE_WEIGHT = 1e-6;

  private final List<Goal> goals;
  private final Composition water;
  private final List<Bag> bags;
  private final double[][] content;
  private final double[] start;
  final QuadraticProgram program;

  FitModel(List<Goal> goals, Composition water, List<Bag> bags, SolutionLimits limits) {
    this.goals = goals;
    this.water = water;
    this.bags = bags;
    this.content = new double[goals.size()][bags.size()];
    this.start = new double[goals.size()];
    for (int i = 0; i < goals.size(); i++) {
      Goal goal = goals.get(i);
      double factor = goal.weight() / goal.scaleMgL();
      start[i] = factor * (water.mg(goal.nutrient()) - goal.mgL());
      for (int j = 0; j < bags.size(); j++) {
        content[i][j] = factor * bags.get(j).product().perUnit().mg(goal.nutrient());
      }
    }
    this.program = program(limits);
  }

  private QuadraticProgram program(SolutionLimits limits) {
    int n = bags.size();
    double[][] matrix = new double[n][n];
    double[] linear = new double[n];
    double trace = 0;
    for (int j = 0; j < n; j++) {
      for (int i = 0; i < goals.size(); i++) {
        linear[j] -= 2 * content[i][j] * start[i];
        for (int k = 0; k < n; k++) {
          matrix[j][k] += 2 * content[i][j] * content[i][k];
        }
      }
      linear[j] -= PRICE_WEIGHT * bags.get(j).pricePerKg();
      trace += matrix[j][j];
    }
    for (int j = 0; j < n; j++) {
      matrix[j][j] += RIDGE * (trace / n + 1e-6);
    }
    List<double[]> rows = new ArrayList<>();
    List<Double> bounds = new ArrayList<>();
    addCap(Nutrient.SODIUM, limits.sodiumMgL(), rows, bounds);
    addCap(Nutrient.CHLORIDE, limits.chlorideMgL(), rows, bounds);
    addAmmoniumCap(limits.ammoniumShare(), rows, bounds);
    return new QuadraticProgram(matrix, linear, rows, bounds);
  }

  /** A cap the water already breaks becomes "add none". */
  private void addCap(Nutrient nutrient, double capMgL, List<double[]> rows, List<Double> bounds) {
    double[] row = new double[bags.size()];
    boolean any = false;
    for (int j = 0; j < row.length; j++) {
      row[j] = -bags.get(j).product().perUnit().mg(nutrient);
      any |= row[j] != 0;
    }
    if (any) {
      rows.add(row);
      bounds.add(-Math.max(0, capMgL - water.mg(nutrient)));
    }
  }

  private void addAmmoniumCap(double share, List<double[]> rows, List<Double> bounds) {
    double[] row = new double[bags.size()];
    boolean any = false;
    for (int j = 0; j < row.length; j++) {
      Composition perGram = bags.get(j).product().perUnit();
      row[j] = share * perGram.mg(Nutrient.NITROGEN) - perGram.mg(Nutrient.AMMONIUM_NITROGEN);
      any |= row[j] < 0;
    }
    if (any) {
      rows.add(row);
      double inWater = water.mg(Nutrient.AMMONIUM_NITROGEN) - share * water.mg(Nutrient.NITROGEN);
      bounds.add(Math.min(0, inWater));
    }
  }

  /** The fit of grams per litre, without the price. */
  double objective(double[] gramsPerL) {
    double sum = 0;
    for (double miss : misses(gramsPerL)) {
      sum += miss * miss;
    }
    return sum;
  }

  /** Weighted miss of each goal. */
  double[] misses(double[] gramsPerL) {
    double[] misses = start.clone();
    for (int i = 0; i < misses.length; i++) {
      for (int j = 0; j < gramsPerL.length; j++) {
        misses[i] += content[i][j] * gramsPerL[j];
      }
    }
    return misses;
  }

  /** The fit after so much more of one bag. */
  double objectiveWith(double[] misses, int bag, double moreGramsPerL) {
    double sum = 0;
    for (int i = 0; i < misses.length; i++) {
      double miss = misses[i] + content[i][bag] * moreGramsPerL;
      sum += miss * miss;
    }
    return sum;
  }

  /** Whether amounts keep all limits. */
  boolean holds(double[] gramsPerL) {
    return program.holds(gramsPerL);
  }

  /** How much a gram per litre of a bag matters to the fit. */
  double importance(int bag) {
    double sum = 0;
    for (double[] row : content) {
      sum += row[bag] * row[bag];
    }
    return Math.sqrt(sum);
  }

  int bags() {
    return bags.size();
  }
}
