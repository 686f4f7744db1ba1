package sallet.plan;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * What the planner spends its time on: looks at the stack of the planning thread again and again
 * and counts the step it is in and the kind of work it does there. The thread takes part in all
 * work shared among cores, so these are shares of the time that passes.
 */
final class StepShares {
  private static final long PAUSE_MS = 4;
  private static final String HERE = "sallet.plan.";

  /** The outermost of these calls names the step, the rest of the planner is the first. */
  private static final Map<String, String> STEPS =
      Map.of(
          "Question", "light and air",
          "Courses", "ways and graphs",
          "LinearPlan", "fractions of plants",
          "WholePlants.dive", "dives",
          "WholePlants.shifted", "shifts of plants",
          "Tidying", "tidying",
          "PlanDraft", "writing the plan");

  private static final String FIRST_STEP = "ways and graphs";

  /** The innermost of these calls names the work. */
  private static final Map<String, String> WORK =
      Map.of(
          "linear", "linear",
          "Life.lived", "growth",
          "LifeGraph", "graphs",
          "Offer", "graphs",
          "Master.addBetter", "graphs");

  private static final String[] KINDS = {"linear", "graphs", "growth", "other"};

  private final Map<String, Map<String, Integer>> counts = new LinkedHashMap<>();
  private int all;

  /** Runs the work and looks on. */
  void watch(Runnable work) {
    Thread watched = Thread.currentThread();
    AtomicBoolean over = new AtomicBoolean();
    Thread watcher =
        new Thread(
            () -> {
              while (!over.get()) {
                count(watched.getStackTrace());
                pause();
              }
            });
    watcher.start();
    try {
      work.run();
    } finally {
      over.set(true);
      join(watcher);
    }
  }

  private void count(StackTraceElement[] stack) {
    String step = FIRST_STEP;
    String kind = "other";
    for (StackTraceElement call : stack) {
      step = named(STEPS, call, step);
    }
    for (int i = stack.length - 1; i >= 0; i--) {
      kind = named(WORK, stack[i], kind);
    }
    counts.computeIfAbsent(step, s -> new TreeMap<>()).merge(kind, 1, Integer::sum);
    all++;
  }

  private static String named(Map<String, String> names, StackTraceElement call, String otherwise) {
    if (!call.getClassName().startsWith(HERE)) {
      return otherwise;
    }
    String type = call.getClassName().substring(HERE.length()).split("[.$]", 2)[0];
    String method = type + "." + call.getMethodName().replaceAll("^lambda\\$|\\$\\d+$", "");
    return names.getOrDefault(method, names.getOrDefault(type, otherwise));
  }

  private static void pause() {
    try {
      Thread.sleep(PAUSE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void join(Thread thread) {
    try {
      thread.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Prints shares of the whole time, percent. */
  void print() {
    System.out.printf("%-20s", "share of time, %");
    for (String kind : KINDS) {
      System.out.printf(" %8s", kind);
    }
    System.out.printf(" %8s%n", "all");
    counts.forEach(
        (step, kinds) -> {
          System.out.printf("%-20s", step);
          for (String kind : KINDS) {
            printShare(kinds.getOrDefault(kind, 0));
          }
          printShare(kinds.values().stream().mapToInt(Integer::intValue).sum());
          System.out.println();
        });
  }

  private void printShare(int count) {
    System.out.printf(Locale.ROOT, " %8.1f", 100.0 * count / Math.max(1, all));
  }
}
