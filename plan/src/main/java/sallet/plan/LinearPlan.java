package sallet.plan;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * The plan with fractions of plants: first with grams as the graphs credit them, which bounds every
 * plan of the grid from below; then with the grams of the growth model.
 */
final class LinearPlan {
  /** Points for each bowl that are not worth another round: 0.05 g. */
  private static final double WORTH_A_ROUND = 0.5;

  /**
   * @param bound points no plan of the grid can beat
   * @param value points of the best plan with fractions of plants found
   * @param rounds rounds of the first and the second phase
   * @param converged whether the second phase came to its end, so that its prices can be told
   */
  record Result(double bound, double value, String rounds, boolean converged) {}

  private final Instance instance;
  private final List<LifeGraph> graphs;
  private final Consumer<String> progress;
  private final double tolerance;

  LinearPlan(Instance instance, List<LifeGraph> graphs, Consumer<String> progress) {
    this.instance = instance;
    this.graphs = graphs;
    this.progress = progress;
    this.tolerance = WORTH_A_ROUND * instance.calendar().bowls();
  }

  /** What the first phase found. */
  private record Bounding(double bound, int rounds, List<Life> lives) {}

  /**
   * Solves both phases.
   *
   * @param exact a master with grams of the growth model, ready to go on from afterwards
   */
  Result solve(Master exact, Deadline deadline, boolean proving) {
    Bounding bounding = proving ? bound(deadline) : new Bounding(Double.NaN, 0, List.of());
    bounding.lives.parallelStream()
        .map(l -> Life.lived(l.course(), l.picks()))
        .toList()
        .forEach(exact::add);
    int rounds = 0;
    boolean more = true;
    boolean converged = false;
    while (more && exact.solve()) {
      rounds++;
      converged =
          exact.addBetter() == 0
              || exact.value() - bounding.bound <= tolerance
              || (!proving && exact.slack() <= tolerance);
      more = !converged && !deadline.over();
      tell("Exact", rounds, exact);
    }
    return new Result(bounding.bound, exact.value(), bounding.rounds + " + " + rounds, converged);
  }

  private Bounding bound(Deadline deadline) {
    double bound = 0;
    int rounds = 0;
    try (Master master = new Master(instance, graphs, true)) {
      boolean more = true;
      while (more && master.solve()) {
        rounds++;
        more = master.addBetter() > 0 && !deadline.over();
        bound = Math.max(bound, master.value() - master.slack());
        more &= master.value() - bound > tolerance;
        tell("Bounding", rounds, master);
      }
      return new Bounding(bound, rounds, master.lives());
    }
  }

  private void tell(String phase, int round, Master master) {
    progress.accept(
        String.format(
            Locale.ROOT,
            "%s plan with fractions of plants, round %d: %.0f points, %d lives",
            phase,
            round,
            master.value(),
            master.lives().size()));
  }
}
