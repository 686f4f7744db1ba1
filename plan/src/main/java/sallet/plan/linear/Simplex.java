package sallet.plan.linear;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * The revised simplex method in plain Java. From wherever the last solution left it, the dual
 * simplex (Lemke 1954) first brings all values within their bounds, with costs shifted for as long
 * as they are in its way; then the primal simplex (Dantzig 1951) goes down with the true costs.
 * Both take the ratio test of Harris (1973).
 */
final class Simplex implements LinearProgramme {
  private static final int NONE = Integer.MIN_VALUE;

  /** A reduced cost nearer to nothing is nothing. */
  private static final double CHEAPER = 1e-7;

  /** How far a ratio test may overshoot for the sake of a larger pivot. */
  private static final double GIVE = 1e-9;

  /** A smaller coefficient is not divided by. */
  private static final double PIVOT = 1e-8;

  /** How far two ways to work out a pivot may differ before the basis is factored anew. */
  private static final double DRIFT = 1e-6;

  /** After so many steps without a gain they are drawn by chance, so that none comes back. */
  private static final int STALLED = 50;

  private static final int MOST_ROUNDS = 20;

  private final Tableau tableau = new Tableau();
  private final SplittableRandom random = new SplittableRandom(1);
  private double[] values = new double[0];
  private double objective;
  private int stalled;
  private long steps;
  private long mostSteps;

  @Override
  public int row(double lowest, double highest) {
    return tableau.addRow(lowest, highest);
  }

  @Override
  public int column(double cost) {
    return tableau.addColumn(cost);
  }

  @Override
  public void set(int row, int column, double coefficient) {
    tableau.set(row, column, coefficient);
  }

  @Override
  public void lowest(int row, double lowest) {
    tableau.lowest(row, lowest);
  }

  @Override
  public boolean solve(Change change) {
    steps = 0;
    mostSteps = 10_000 + 50L * (tableau.rows() + tableau.columns.count());
    for (int round = 0; round < MOST_ROUNDS; round++) {
      tableau.refresh();
      if (mostOutside() >= 0 && !dual()) {
        return false;
      }
      if (!primal()) {
        return false;
      }
      tableau.refresh();
      if (mostOutside() < 0 && cheapest() == NONE) {
        values = tableau.columnValues();
        objective = tableau.objective(values);
        return true;
      }
    }
    return false;
  }

  /** Brings all values within their bounds; false when they cannot all be. */
  private boolean dual() {
    boolean possible = true;
    stalled = 0;
    shiftCosts();
    for (int row = mostOutside(); possible && row >= 0; row = mostOutside()) {
      possible = dualStep(row);
      if (tableau.worn()) {
        tableau.refresh();
      }
      shiftCosts();
    }
    tableau.unshift();
    tableau.refresh();
    return possible;
  }

  private boolean dualStep(int row) {
    boolean up = tableau.outside(row) < 0;
    tableau.pivotRow(row);
    int entering = dualRatio(up ? 1 : -1);
    if (entering == NONE || steps++ > mostSteps) {
      return false;
    }
    double[] alpha = tableau.column(entering);
    if (drifted(alpha[row], tableau.inRow(entering))) {
      tableau.factor();
      tableau.refresh();
      return true;
    }
    stalled = Math.abs(tableau.reducedCost(entering)) < GIVE ? stalled + 1 : 0;
    int leaving = tableau.variable(row);
    double bound = up ? tableau.low(leaving) : tableau.high(leaving);
    tableau.exchange(row, entering, alpha, (tableau.value(row) - bound) / alpha[row], !up);
    return true;
  }

  private static boolean drifted(double oneWay, double other) {
    return Math.abs(oneWay - other) > DRIFT * (1 + Math.abs(oneWay));
  }

  /** The row whose value lies farthest outside its bounds, or -1. */
  private int mostOutside() {
    int worst = -1;
    double most = 0;
    for (int i = 0; i < tableau.rows(); i++) {
      double outside = chance() * Math.abs(tableau.outside(i));
      if (outside > most) {
        most = outside;
        worst = i;
      }
    }
    return worst;
  }

  private double chance() {
    return stalled > STALLED ? random.nextDouble(0.1, 1) : 1;
  }

  /** Makes every variable cost nothing to leave where it is, for a while. */
  private void shiftCosts() {
    for (int v = -tableau.rows(); v < tableau.columns.count(); v++) {
      if (tableau.mayEnter(v)
          && (tableau.free(v)
              ? tableau.reducedCost(v) != 0
              : tableau.direction(v) * tableau.reducedCost(v) < 0)) {
        tableau.shiftTo(v, 0);
      }
    }
  }

  /**
   * The variable whose reduced cost is used up first.
   *
   * @param sign 1 when the value of the row must rise, else -1
   */
  private int dualRatio(int sign) {
    double limit = Double.POSITIVE_INFINITY;
    for (int v = -tableau.rows(); v < tableau.columns.count(); v++) {
      double rate = dualRate(v, sign);
      if (rate > PIVOT) {
        limit = Math.min(limit, (Math.abs(tableau.reducedCost(v)) + GIVE) / rate);
      }
    }
    int best = NONE;
    double largest = PIVOT;
    for (int v = -tableau.rows(); v < tableau.columns.count(); v++) {
      double rate = dualRate(v, sign);
      if (rate > largest && Math.abs(tableau.reducedCost(v)) <= limit * rate) {
        largest = rate;
        best = v;
      }
    }
    return best;
  }

  /** How much a variable moves the row the right way for each unit it moves itself. */
  private double dualRate(int v, int sign) {
    if (!tableau.mayEnter(v)) {
      return 0;
    }
    double rate = -sign * tableau.inRow(v);
    return tableau.free(v) ? Math.abs(rate) : tableau.direction(v) * rate;
  }

  /** Goes down to the minimum; false when there is none. */
  private boolean primal() {
    stalled = 0;
    for (int v = cheapest(); v != NONE; v = cheapest()) {
      if (steps++ > mostSteps || !primalStep(v)) {
        return false;
      }
      if (tableau.worn()) {
        tableau.refresh();
      }
    }
    return true;
  }

  private boolean primalStep(int entering) {
    int direction = tableau.reducedCost(entering) < 0 ? 1 : -1;
    double[] alpha = tableau.column(entering);
    int row = primalRatio(alpha, direction);
    double range = tableau.high(entering) - tableau.low(entering);
    double step = row < 0 ? LinearProgramme.FREE : room(row, -direction * alpha[row]);
    if (range <= step) {
      if (Double.isInfinite(range)) {
        return false;
      }
      tableau.move(alpha, direction * range);
      tableau.flip(entering);
      return true;
    }
    tableau.pivotRow(row);
    if (drifted(alpha[row], tableau.inRow(entering))) {
      tableau.factor();
      tableau.refresh();
      return true;
    }
    stalled = step < GIVE ? stalled + 1 : 0;
    boolean toHighest = direction * alpha[row] < 0;
    tableau.exchange(row, entering, alpha, direction * step, toHighest);
    return true;
  }

  /** The variable whose entering promises most, measured along its column. */
  private int cheapest() {
    int best = NONE;
    double most = 0;
    for (int v = -tableau.rows(); v < tableau.columns.count(); v++) {
      double cost = tableau.reducedCost(v);
      double gain = tableau.free(v) ? Math.abs(cost) : -tableau.direction(v) * cost;
      if (gain > CHEAPER && tableau.mayEnter(v)) {
        double score = chance() * gain * gain / tableau.squaredLength(v);
        if (score > most) {
          most = score;
          best = v;
        }
      }
    }
    return best;
  }

  /** The row that stops a variable on its way, or -1. */
  private int primalRatio(double[] alpha, int direction) {
    double limit = Double.POSITIVE_INFINITY;
    for (int i = 0; i < alpha.length; i++) {
      double rate = -direction * alpha[i];
      if (Math.abs(rate) > PIVOT) {
        limit = Math.min(limit, room(i, rate) + GIVE / Math.abs(rate));
      }
    }
    int best = -1;
    double largest = PIVOT;
    for (int i = 0; i < alpha.length; i++) {
      double rate = -direction * alpha[i];
      if (Math.abs(rate) > largest && room(i, rate) <= limit) {
        largest = Math.abs(rate);
        best = i;
      }
    }
    return Double.isInfinite(limit) ? -1 : best;
  }

  /** How far a variable may move until the basic one of a row, at this rate, is at its bound. */
  private double room(int row, double rate) {
    int v = tableau.variable(row);
    double bound = rate < 0 ? tableau.low(v) : tableau.high(v);
    return Math.max(0, (bound - tableau.value(row)) / rate);
  }

  @Override
  public double objective() {
    return objective;
  }

  @Override
  public double value(int column) {
    return column < values.length ? values[column] : 0;
  }

  @Override
  public double dual(int row) {
    return tableau.multiplier(row);
  }

  @Override
  public void close() {
    values = Arrays.copyOf(values, 0);
  }
}
