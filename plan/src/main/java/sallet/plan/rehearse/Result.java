package sallet.plan.rehearse;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a habit came to over all seasons played.
 *
 * @param habit the habit, with the number of plants it was found best with
 * @param scores one for each season
 */
public record Result(Habit habit, List<Score> scores) {
  private static final long SEED = 1;

  public Result {
    scores = List.copyOf(scores);
  }

  /** Mean and interval of one part of the score. */
  public Estimate estimate(ToDoubleFunction<Score> part) {
    return Estimate.of(scores.stream().mapToDouble(part).toArray(), SEED);
  }
}
