package sallet.plan;

import java.time.Duration;

/**
 * How long the planner may think.
 *
 * @param linear time for the linear plan
 * @param integer time for the integer step
 */
public record Effort(Duration linear, Duration integer) {
  /** The usual effort: a first plan within seconds. */
  public static final Effort USUAL = new Effort(Duration.ofSeconds(4), Duration.ofSeconds(4));
}
