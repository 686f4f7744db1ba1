package sallet.plan;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import org.jspecify.annotations.Nullable;

/** What becomes of the grams picked: eaten the same week, a week later, or wasted. */
final class Eating {
  private static final double INF = Double.POSITIVE_INFINITY;

  private final @Nullable MPVariable[][] now;
  private final @Nullable MPVariable[][] nextWeek;
  private final @Nullable MPVariable[][] wasted;
  private final @Nullable MPVariable[][] excess;
  private final @Nullable MPVariable[] missing;

  Eating(Instance instance, MPSolver solver, @Nullable MPConstraint[][] supply) {
    int crops = supply.length;
    int bowls = instance.calendar().bowls();
    now = new MPVariable[crops][bowls];
    nextWeek = new MPVariable[crops][bowls];
    wasted = new MPVariable[crops][bowls];
    excess = new MPVariable[crops][bowls];
    missing = new MPVariable[bowls];
    MPConstraint[] bowl = new MPConstraint[bowls];
    for (int w = 0; w < bowls; w++) {
      if (instance.aimGrams(w) > 0) {
        bowl[w] = solver.makeConstraint(instance.aimGrams(w), instance.aimGrams(w));
        missing[w] = solver.makeNumVar(0, INF, "");
        bowl[w].setCoefficient(missing[w], 1);
        solver.objective().setCoefficient(missing[w], Weights.SHORT);
      }
    }
    for (int k = 0; k < crops; k++) {
      addCrop(instance, solver, supply[k], bowl, k);
    }
  }

  private void addCrop(
      Instance instance,
      MPSolver solver,
      @Nullable MPConstraint[] supply,
      @Nullable MPConstraint[] bowl,
      int k) {
    for (int w = 0; w < bowl.length; w++) {
      MPConstraint kind = kindRow(instance, solver, bowl[w], k, w);
      MPConstraint from = supply[w];
      if (from != null) {
        wasted[k][w] = flow(solver, from, null, null, Weights.WASTE);
        if (bowl[w] != null) {
          now[k][w] = flow(solver, from, bowl[w], kind, 0);
        }
      }
      if (w > 0 && supply[w - 1] != null && bowl[w] != null && instance.keeps(k)) {
        nextWeek[k][w - 1] = flow(solver, supply[w - 1], bowl[w], kind, Weights.CARRIED);
      }
    }
  }

  private @Nullable MPConstraint kindRow(
      Instance instance, MPSolver solver, @Nullable MPConstraint bowl, int k, int w) {
    if (bowl == null || instance.kindShare() >= 1) {
      return null;
    }
    MPConstraint kind = solver.makeConstraint(-INF, instance.kindShare() * instance.aimGrams(w));
    MPVariable over = solver.makeNumVar(0, INF, "");
    kind.setCoefficient(over, -1);
    solver.objective().setCoefficient(over, Weights.ONE_KIND);
    excess[k][w] = over;
    return kind;
  }

  private static MPVariable flow(
      MPSolver solver,
      MPConstraint from,
      @Nullable MPConstraint bowl,
      @Nullable MPConstraint kind,
      double cost) {
    MPVariable x = solver.makeNumVar(0, INF, "");
    from.setCoefficient(x, -1);
    if (bowl != null) {
      bowl.setCoefficient(x, 1);
    }
    if (kind != null) {
      kind.setCoefficient(x, 1);
    }
    solver.objective().setCoefficient(x, cost);
    return x;
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

  private static double sum(@Nullable MPVariable[][] rows) {
    double sum = 0;
    for (MPVariable[] row : rows) {
      sum += sum(row);
    }
    return sum;
  }

  private static double sum(@Nullable MPVariable[] row) {
    double sum = 0;
    for (MPVariable x : row) {
      sum += value(x);
    }
    return sum;
  }

  private static double value(@Nullable MPVariable x) {
    return x == null ? 0 : x.solutionValue();
  }
}
