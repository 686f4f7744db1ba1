package sallet.plan;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * The best way to eat what the plants really give: the same rows as the plan's, with the harvest
 * fixed.
 *
 * @param kinds for each bowl the grams of each kind in it, most first
 * @param harvestGrams for each bowl what is picked and lifted
 * @param missingGrams grams missing against the aim, all bowls
 * @param wastedGrams grams picked and not eaten
 * @param excessGrams grams of one kind above its share
 * @param carriedGrams grams eaten a week after the pick
 */
record Served(
    List<List<BowlWeek.Kind>> kinds,
    List<Double> harvestGrams,
    double missingGrams,
    double wastedGrams,
    double excessGrams,
    double carriedGrams) {

  /** Grams of a kind below this are not worth telling. */
  private static final double TRACE_G = 0.05;

  static Served of(Instance instance, List<BlendedLife> lives) {
    int crops = instance.crops().size();
    int bowls = instance.calendar().bowls();
    double[][] harvest = new double[crops][bowls];
    for (BlendedLife life : lives) {
      Course c = life.skeleton().course();
      for (int t = 0; t < life.gramsEach().size(); t++) {
        harvest[c.cropIndex][c.bowls[t]] += life.count() * life.gramsEach().get(t);
      }
    }
    MPSolver solver = Objects.requireNonNull(MPSolver.createSolver("GLOP"));
    try {
      MPConstraint[][] supply = new MPConstraint[crops][bowls];
      for (int k = 0; k < crops; k++) {
        for (int w = 0; w < bowls; w++) {
          if (harvest[k][w] > 0) {
            supply[k][w] = solver.makeConstraint(-harvest[k][w], -harvest[k][w]);
          }
        }
      }
      Eating eating = new Eating(instance, solver, supply);
      solver.objective().setMinimization();
      MPSolver.ResultStatus status = solver.solve();
      if (status != MPSolver.ResultStatus.OPTIMAL) {
        throw new IllegalStateException("the harvest could not be shared out: " + status);
      }
      return read(instance, eating, harvest);
    } finally {
      solver.delete();
    }
  }

  private static Served read(Instance instance, Eating eating, double[][] harvest) {
    List<List<BowlWeek.Kind>> kinds = new ArrayList<>();
    List<Double> picked = new ArrayList<>();
    for (int w = 0; w < instance.calendar().bowls(); w++) {
      List<BowlWeek.Kind> bowl = new ArrayList<>();
      double sum = 0;
      for (int k = 0; k < harvest.length; k++) {
        sum += harvest[k][w];
        double grams = eating.eatenGrams(k, w);
        if (grams >= TRACE_G) {
          bowl.add(new BowlWeek.Kind(instance.crops().get(k).name(), grams));
        }
      }
      bowl.sort(Comparator.comparingDouble(BowlWeek.Kind::grams).reversed());
      kinds.add(bowl);
      picked.add(sum);
    }
    return new Served(
        kinds,
        picked,
        eating.missingGrams(),
        eating.wastedGrams(),
        eating.excessGrams(),
        eating.carriedGrams());
  }
}
