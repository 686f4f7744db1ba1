package sallet.plan;

import java.time.Duration;

/** The one clock of the planner: how long a step may still take. */
final class Deadline {
  private final long start = System.nanoTime();
  private final long end;

  Deadline(Duration allowed) {
    end = start + allowed.toNanos();
  }

  boolean over() {
    return System.nanoTime() - end > 0;
  }

  double seconds() {
    return (System.nanoTime() - start) * 1e-9;
  }
}
