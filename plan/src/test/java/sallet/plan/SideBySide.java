package sallet.plan;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import sallet.crop.Catalogue;
import sallet.plan.linear.LinearProgramme;
import sallet.plan.linear.LinearSolver;

/**
 * One plan of an ordinary bench with each linear solver, and the same bench by an outside solver
 * with the same time limit: the choice of whole plants among the lives of the linear plan, and the
 * choice among lives whose picks are fixed beforehand. All rows count the same points. Run by
 * {@code bench/solvers} with grams a bowl, bowls and seconds.
 */
final class SideBySide {
  private static final int CROPS = 8;
  private static final int TINY_BENCHES = 40;
  private static final double TINY_SECONDS = 60;
  private static final double SAME = 0.01;
  private static final Deadline ENDLESS = new Deadline(Duration.ofDays(1), () -> false);

  private final double seconds;
  private final Planner.Request request;
  private final List<Life> lives = new ArrayList<>();
  private double demandGrams;

  private SideBySide(double grams, int bowls, double seconds) {
    this.seconds = seconds;
    this.request =
        new Planner.Request(
            Households.benchmark(grams, CROPS),
            Catalogue.builtIn(),
            Households.START,
            bowls,
            1,
            Effort.USUAL);
  }

  public static void main(String[] arguments) throws IOException {
    SideBySide bench =
        new SideBySide(
            Double.parseDouble(arguments[0]),
            Integer.parseInt(arguments[1]),
            Double.parseDouble(arguments[2]));
    LinearSolver.NATIVE.usable();
    System.out.printf(
        "%-18s %8s %8s %8s %8s %7s %7s %7s%n",
        "", "linear", "bound", "value", "gap_g", "share", "cpu_s", "wall_s");
    StepShares shares = new StepShares();
    shares.watch(() -> bench.plan(LinearSolver.NATIVE));
    bench.plan(LinearSolver.JAVA);
    bench.outside();
    System.out.println();
    shares.print();
    System.out.println();
    compareTinyBenches();
  }

  private static Instance instance(Planner.Request request, List<Course> courses) {
    Instance asked = Question.of(request, Question.surroundings(request));
    courses.addAll(Courses.all(asked));
    return asked.reaching(courses);
  }

  /**
   * The planner's own steps up to whole plants, without the second stage that gives points away for
   * fewer sowing days; half of the time at most for fractions of plants.
   */
  private void plan(LinearSolver solver) {
    long cpu = cpu();
    Deadline linearTime = cpuTime(seconds / 2);
    Deadline allTime = cpuTime(seconds);
    List<Course> courses = new ArrayList<>();
    Instance instance = instance(by(solver), courses);
    demandGrams = instance.demandGrams();
    List<LifeGraph> graphs = courses.parallelStream().map(LifeGraph::new).toList();
    try (Master exact = new Master(instance, graphs, false)) {
      LinearPlan.Result linear =
          new LinearPlan(instance, graphs, step -> {}).solve(exact, linearTime, true);
      if (solver == LinearSolver.NATIVE) {
        lives.addAll(exact.lives());
      }
      WholePlan whole =
          new WholePlants(
                  instance,
                  new WholePlan.Judge(instance, graphs),
                  courses,
                  exact,
                  new SplittableRandom(1),
                  step -> {})
              .solve(
                  Map.of(),
                  linear.bound(),
                  Planner.WORTH_A_DIVE * instance.calendar().bowls(),
                  allTime,
                  Integer.MAX_VALUE)
              .plan();
      print(
          "Sallet, " + solver.name().toLowerCase(Locale.ROOT),
          new Cbc.Answer(linear.value(), linear.bound(), whole.value(), (cpu() - cpu) * 1e-9),
          allTime.seconds());
    }
  }

  private Planner.Request by(LinearSolver solver) {
    return new Planner.Request(
        request.household(),
        request.catalogue(),
        request.from(),
        request.weeks(),
        request.margin(),
        request.present(),
        request.effort(),
        solver);
  }

  /** The two choices by the outside solver. */
  private void outside() throws IOException {
    List<Course> courses = new ArrayList<>();
    Instance instance = instance(request, courses);
    outside("cbc, free picks", instance, WholeProgramme::ofSkeletons, lives);
    outside("cbc, fixed picks", instance, WholeProgramme::ofLives, FixedYields.of(courses));
  }

  /** Builds a programme in an empty one; returns the columns that must be whole. */
  private interface Form {
    List<Integer> build(Instance instance, List<Life> lives, LinearProgramme programme);
  }

  private void outside(String name, Instance instance, Form form, List<Life> lives)
      throws IOException {
    long start = System.nanoTime();
    Cbc.Answer answer = solve(instance, form, lives, seconds);
    print(name, answer, (System.nanoTime() - start) * 1e-9);
    try (LinearProgramme own = LinearSolver.NATIVE.programme()) {
      form.build(instance, lives, own);
      own.solve(LinearProgramme.Change.COLUMNS);
      check(name + " with fractions of plants", own.objective(), answer.linear());
    }
  }

  private static Cbc.Answer solve(Instance instance, Form form, List<Life> lives, double seconds)
      throws IOException {
    Path file = Files.createTempFile("plan", ".mps");
    try {
      MpsFile mps = new MpsFile();
      List<Integer> whole = form.build(instance, lives, mps);
      mps.write(file, whole, pots(instance));
      return Cbc.solve(file, seconds);
    } finally {
      Files.delete(file);
    }
  }

  /** No more plants than pots share a life. */
  private static int pots(Instance instance) {
    return instance.at().groups().stream().mapToInt(g -> g.pots().size()).sum();
  }

  /** Both choices of tiny benches where anything can grow, to the optimum by branch and bound. */
  private static void compareTinyBenches() throws IOException {
    int compared = 0;
    double most = 0;
    for (long seed = 0; seed < TINY_BENCHES; seed++) {
      Instance instance = new TinyBench(seed).instance();
      List<Course> courses = Courses.all(instance);
      List<Life> fixed = FixedYields.of(courses);
      if (!fixed.isEmpty()) {
        String name = "tiny bench " + seed;
        List<Life> free = livesOf(instance, courses);
        most = Math.max(most, compare(name, instance, WholeProgramme::ofSkeletons, free));
        most = Math.max(most, compare(name, instance, WholeProgramme::ofLives, fixed));
        compared++;
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%d tiny benches: optima by branch and bound differ from cbc's by %.4f points at most%n",
        compared,
        most);
  }

  /** The lives of the linear plan. */
  private static List<Life> livesOf(Instance instance, List<Course> courses) {
    List<LifeGraph> graphs = courses.stream().map(LifeGraph::new).toList();
    try (Master exact = new Master(instance, graphs, false)) {
      new LinearPlan(instance, graphs, step -> {}).solve(exact, ENDLESS, true);
      return List.copyOf(exact.lives());
    }
  }

  private static double compare(String name, Instance instance, Form form, List<Life> lives)
      throws IOException {
    try (LinearProgramme own = LinearSolver.NATIVE.programme()) {
      List<Integer> whole = form.build(instance, lives, own);
      List<Integer> most = Collections.nCopies(whole.size(), pots(instance));
      double optimum = new BranchAndBound(own, whole, most, SAME / 10).optimum();
      return check(name, optimum, solve(instance, form, lives, TINY_SECONDS).value());
    }
  }

  /** How far two values of the same are apart, points, which must be next to nothing. */
  private static double check(String name, double own, double outside) {
    double apart = Math.abs(own - outside);
    if (!(apart <= SAME * Math.max(1, Math.abs(own) / 100))) {
      throw new IllegalStateException(name + ": " + own + " here, " + outside + " outside");
    }
    return apart;
  }

  private void print(String name, Cbc.Answer answer, double wallSeconds) {
    double gapGrams = (answer.value() - answer.bound()) / Weights.SHORT;
    System.out.printf(
        Locale.ROOT,
        "%-18s %8.1f %8.1f %8.1f %8.1f %6.2f%% %7.1f %7.1f%n",
        name,
        answer.linear(),
        answer.bound(),
        answer.value(),
        gapGrams,
        100 * gapGrams / demandGrams,
        answer.cpuSeconds(),
        wallSeconds);
  }

  /** Over when the process has used so much more CPU time, s. */
  private static Deadline cpuTime(double seconds) {
    long end = cpu() + Math.round(seconds * 1e9);
    return new Deadline(Duration.ofDays(1), () -> cpu() > end);
  }

  /** CPU time of the whole process, ns. */
  private static long cpu() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
