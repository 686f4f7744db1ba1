package sallet.plan;

import java.time.Duration;
import java.util.function.BooleanSupplier;

/** The one clock of the planner: whether a step may go on. */
final class Deadline {
  private final long start = System.nanoTime();
  private final long end;
  private final BooleanSupplier cancelled;

  Deadline(Duration allowed, BooleanSupplier cancelled) {
    this.end = start + allowed.toNanos();
    this.cancelled = cancelled;
  }

  boolean over() {
    return cancelled.getAsBoolean() || System.nanoTime() - end > 0;
  }

  double seconds() {
    return (System.nanoTime() - start) * 1e-9;
  }
}
