package sallet.app.cli;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C while the planner thinks: the thinking ends and the best plan found so far is told. Made
 * before the work, closed when all is told.
 */
final class Interrupt implements AutoCloseable {
  /** Longest wait for the best plan to be told. */
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final CountDownLatch told = new CountDownLatch(1);
  private final Thread hook = new Thread(this::waitUntilTold, "interrupt");
  private volatile boolean asked;
  private volatile ExitStatus status = ExitStatus.OUR_FAULT;

  Interrupt() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** Whether the grower asked to stop. */
  boolean asked() {
    return asked;
  }

  /** Remembers how the command ended. */
  ExitStatus ended(ExitStatus how) {
    status = how;
    return how;
  }

  private void waitUntilTold() {
    asked = true;
    try {
      if (told.await(PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
        Runtime.getRuntime().halt(status.code());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    if (asked) {
      told.countDown();
    } else {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException e) {
        told.countDown(); // The process is ending already: let it.
      }
    }
  }
}
