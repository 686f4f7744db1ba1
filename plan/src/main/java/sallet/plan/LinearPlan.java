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
   */
  record Result(double bound, double value, String rounds) {}

  private final Consumer<String> progress;
  private final double tolerance;

  LinearPlan(int bowls, Consumer<String> progress) {
    this.progress = progress;
    this.tolerance = WORTH_A_ROUND * bowls;
  }

  /**
   * Solves both phases.
   *
   * @param bounding a master with credited grams
   * @param exact a master with grams of the growth model, ready to go on from afterwards
   */
  Result solve(Master bounding, Master exact, Deadline deadline) {
    double bound = 0;
    int boundRounds = 0;
    boolean more = true;
    while (more && bounding.solve()) {
      boundRounds++;
      more = bounding.addBetter() > 0 && !deadline.over();
      bound = Math.max(bound, bounding.value() - bounding.slack());
      more &= bounding.value() - bound > tolerance;
      tell("Bounding", boundRounds, bounding);
    }
    List<Life> lived =
        bounding.lives().parallelStream().map(l -> Life.lived(l.course(), l.picks())).toList();
    lived.forEach(exact::add);
    int exactRounds = 0;
    more = true;
    while (more && exact.solve()) {
      exactRounds++;
      more = exact.addBetter() > 0 && !deadline.over() && exact.value() - bound > tolerance;
      tell("Exact", exactRounds, exact);
    }
    return new Result(bound, exact.value(), boundRounds + " + " + exactRounds);
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
