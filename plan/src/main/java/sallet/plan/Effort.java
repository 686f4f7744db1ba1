package sallet.plan;

import java.time.Duration;

/**
 * How long the planner may think.
 *
 * @param linear time for the plan with fractions of plants
 * @param integer time for whole plants
 * @param tidying time for fewer sowing days and fewer plants touched
 * @param dives most searches for whole plants, 1 or more
 * @param proving whether the plan is to be bounded, so that it can tell how good it is
 */
public record Effort(
    Duration linear, Duration integer, Duration tidying, int dives, boolean proving) {
  private static final int TIDYING_PART = 8;
  private static final Duration NO_LIMIT = Duration.ofDays(1);

  /** The usual effort: a first plan within seconds. */
  public static final Effort USUAL = within(Duration.ofSeconds(8));

  public Effort {
    if (dives < 1) {
      throw new IllegalArgumentException("dives must be 1 or more, was " + dives);
    }
  }

  /** The least effort, for plans that are made again every week: one dive, not tidied, no bound. */
  public static final Effort LEAST = new Effort(NO_LIMIT, NO_LIMIT, Duration.ZERO, 1, false);

  /** As good a plan as this time allows, by the clock. */
  public static Effort within(Duration time) {
    Duration tidying = time.dividedBy(TIDYING_PART);
    Duration linear = time.dividedBy(2);
    return new Effort(linear, time.minus(linear).minus(tidying), tidying, Integer.MAX_VALUE, true);
  }

  /** A counted effort without a clock: the same question gets the same plan. */
  public static Effort counted(int dives) {
    return new Effort(NO_LIMIT, NO_LIMIT, NO_LIMIT, dives, true);
  }
}
