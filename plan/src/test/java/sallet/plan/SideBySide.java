package sallet.plan;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import sallet.crop.Catalogue;
import sallet.plan.linear.LinearSolver;

/**
 * One plan of an ordinary bench, step by step with each linear solver, and its choice of whole
 * plants written down for an outside solver. Run by {@code bench/solvers} with grams a bowl, bowls,
 * dives and the file to write.
 */
final class SideBySide {
  private static final List<String> CROPS =
      List.of(
          "loose-leaf lettuce, green",
          "butterhead lettuce",
          "mizuna",
          "Swiss chard",
          "pak choi",
          "salad rocket",
          "loose-leaf lettuce, red",
          "kale (leaf)");

  private SideBySide() {}

  public static void main(String[] arguments) throws IOException {
    double grams = Double.parseDouble(arguments[0]);
    int bowls = Integer.parseInt(arguments[1]);
    int dives = Integer.parseInt(arguments[2]);
    System.out.printf(
        "%-8s %9s %9s %9s %9s %9s %9s%n",
        "solver", "lives", "bound", "linear", "linear_s", "whole", "whole_s");
    for (LinearSolver solver : LinearSolver.values()) {
      run(grams, bowls, dives, solver, arguments[3]);
    }
  }

  private static void run(double grams, int bowls, int dives, LinearSolver solver, String file)
      throws IOException {
    Planner.Request request =
        new Planner.Request(
            Households.bench(grams, CROPS, List.of(), 0.15, 60),
            Catalogue.builtIn(),
            Households.START,
            bowls,
            1,
            Present.NOTHING,
            Effort.counted(dives),
            solver);
    Instance asked = Question.of(request, Question.surroundings(request));
    List<Course> courses = Courses.all(asked);
    Instance instance = asked.reaching(courses);
    List<LifeGraph> graphs = courses.stream().map(LifeGraph::new).toList();
    Deadline endless = new Deadline(Duration.ofDays(1), () -> false);
    long start = cpu();
    try (Master exact = new Master(instance, graphs, false)) {
      LinearPlan.Result linear =
          new LinearPlan(instance, graphs, step -> {}).solve(exact, endless, true);
      double linearSeconds = (cpu() - start) * 1e-9;
      List<Life> lives = new ArrayList<>(exact.lives());
      start = cpu();
      WholePlants.Result whole =
          new WholePlants(
                  instance,
                  new WholePlan.Judge(instance, graphs),
                  courses,
                  exact,
                  new SplittableRandom(1),
                  step -> {})
              .solve(Map.of(), linear.bound(), bowls, endless, dives);
      System.out.printf(
          Locale.ROOT,
          "%-8s %9d %9.0f %9.0f %9.1f %9.0f %9.1f%n",
          solver.name().toLowerCase(Locale.ROOT),
          lives.size(),
          linear.bound(),
          linear.value(),
          linearSeconds,
          whole.plan().value(),
          (cpu() - start) * 1e-9);
      if (solver == LinearSolver.NATIVE) {
        SkeletonProgramme programme = new SkeletonProgramme(instance, lives);
        try (PrintStream out = new PrintStream(file, StandardCharsets.US_ASCII)) {
          programme.write(out);
        }
        System.out.printf(
            "programme of %d rows, %d columns, %d of them whole%n",
            programme.rows(), programme.columns(), programme.wholeColumns());
      }
    }
  }

  /** CPU time of the whole process, ns. */
  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
