package sallet.plan;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Whole plants. Only skeletons (sowing, moves, group, end) are whole numbers; the mix of pick
 * sequences inside a skeleton stays free, because a plant picked by their average gives at least
 * their average grams (growth is concave in leaf area).
 */
final class IntegerPlan {
  private static final int MOST_LIVES = 2500;

  /** Plants that live one skeleton, and the grams each is to give at each bowl of its course. */
  record Plants(Life.Skeleton skeleton, int count, List<Double> gramsEach) {}

  /**
   * @param plants whole plants
   * @param proven whether the solver proved that no better choice among the lives exists
   */
  record Result(List<Plants> plants, boolean proven) {}

  private final Instance instance;
  private final double[] cellsPerPlant;

  IntegerPlan(Instance instance, double[] cellsPerPlant) {
    this.instance = instance;
    this.cellsPerPlant = cellsPerPlant;
  }

  Result solve(List<LinearPlan.Priced> priced, Duration allowed) {
    List<Life> lives =
        priced.stream()
            .sorted(Comparator.comparingDouble(LinearPlan.Priced::reducedCost))
            .limit(MOST_LIVES)
            .map(LinearPlan.Priced::life)
            .toList();
    Map<Life.Skeleton, List<Life>> bySkeleton = new LinkedHashMap<>();
    lives.forEach(l -> bySkeleton.computeIfAbsent(l.skeleton(), s -> new ArrayList<>()).add(l));
    try (Programme programme = new Programme(instance, "SCIP")) {
      List<Choice> choices = new ArrayList<>();
      bySkeleton.forEach((s, mix) -> choices.add(choice(programme, s, mix)));
      programme.solver.setTimeLimit(Math.max(1, allowed.toMillis()));
      MPSolverParameters parameters = new MPSolverParameters();
      parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 1e-4);
      MPSolver.ResultStatus status = programme.solver.solve(parameters);
      boolean found =
          status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
      List<Plants> plants = new ArrayList<>();
      if (found) {
        for (Choice c : choices) {
          int count = (int) Math.round(c.count.solutionValue());
          if (count > 0) {
            plants.add(new Plants(c.skeleton, count, c.gramsEach(count)));
          }
        }
      }
      return new Result(plants, status == MPSolver.ResultStatus.OPTIMAL);
    }
  }

  private Choice choice(Programme programme, Life.Skeleton skeleton, List<Life> mix) {
    int pots = instance.at().groups().get(skeleton.course().group).pots().size();
    MPVariable count = programme.variable(pots, true);
    programme.setPlaces(
        count,
        skeleton,
        cellsPerPlant[skeleton.course().cropIndex],
        Weights.seeds(skeleton.course().rule));
    MPConstraint whole = programme.solver.makeConstraint(0, 0);
    whole.setCoefficient(count, -1);
    List<MPVariable> shares = new ArrayList<>();
    for (Life life : mix) {
      MPVariable share = programme.variable(Double.POSITIVE_INFINITY, false);
      whole.setCoefficient(share, 1);
      programme.setGrams(share, life);
      shares.add(share);
    }
    return new Choice(skeleton, count, mix, shares);
  }

  private record Choice(
      Life.Skeleton skeleton, MPVariable count, List<Life> mix, List<MPVariable> shares) {
    List<Double> gramsEach(int plants) {
      List<Double> grams = new ArrayList<>();
      for (int t = 0; t <= skeleton.end(); t++) {
        double sum = 0;
        for (int i = 0; i < mix.size(); i++) {
          sum += shares.get(i).solutionValue() * mix.get(i).grams(t);
        }
        grams.add(sum / plants);
      }
      return grams;
    }
  }
}
