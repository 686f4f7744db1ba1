package sallet.learn;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How much faster than expected seed comes up here: logarithm of expected over true days, normal
 * beforehand. A look at the cells tells only that the day lies between two looks, or after the last
 * one; leaving such cells out would make the seed look faster than it is. The posterior is summed
 * on a grid from -1 to 1.
 */
final class EmergencePace {
  /** Standard deviation of the logarithm before any look. Judgement. */
  static final double PRIOR_SPREAD = 0.15;

  /** The same of one sowing around it. Judgement. */
  static final double SOWING_SPREAD = 0.15;

  private static final NormalDistribution STANDARD = new NormalDistribution();

  private static final int STEPS = 500;

  private EmergencePace() {}

  /**
   * When a sowing came up.
   *
   * @param expectedDays days it should have taken
   * @param afterDays it had not come up after so many days
   * @param byDays it had by then; infinite when it has not yet
   */
  record Look(double expectedDays, double afterDays, double byDays) {}

  /**
   * Mean and standard deviation of the logarithm of the pace.
   *
   * @param mean above 0 when seed comes up faster than expected
   */
  record Pace(double mean, double sd) {}

  static Pace of(List<Look> looks, double priorSd, double sowingSd) {
    double sum = 0;
    double first = 0;
    double second = 0;
    for (int i = 0; i <= STEPS; i++) {
      double x = -1 + 2.0 * i / STEPS;
      double weight = Math.exp(-0.5 * (x / priorSd) * (x / priorSd));
      for (Look look : looks) {
        weight *=
            below(look.byDays(), look, x, sowingSd) - below(look.afterDays(), look, x, sowingSd);
      }
      sum += weight;
      first += weight * x;
      second += weight * x * x;
    }
    double mean = first / sum;
    return new Pace(mean, Math.sqrt(Math.max(0, second / sum - mean * mean)));
  }

  /** Probability that a sowing is up after so many days when the pace is x. */
  private static double below(double days, Look look, double x, double sd) {
    if (days <= 0 || Double.isInfinite(days)) {
      return days <= 0 ? 0 : 1;
    }
    return STANDARD.cumulativeProbability((Math.log(days / look.expectedDays()) + x) / sd);
  }
}
