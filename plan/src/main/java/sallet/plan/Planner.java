package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.plan.linear.LinearSolver;

/** Makes a sowing plan. */
public final class Planner {
  /** Points for each bowl not worth another dive: 0.1 g. */
  static final double WORTH_A_DIVE = 1;

  private static final long SEED = 1;
  private static final int MOST_WEEKS = 52;
  private static final double LEAST_MARGIN = 0.5;
  private static final double MOST_MARGIN = 2;

  private Planner() {}

  /**
   * What to plan.
   *
   * @param household the household
   * @param catalogue crops to choose from
   * @param from first day of the plan
   * @param weeks number of bowls, 1 to 52
   * @param margin factor on demand, 0.5 to 2
   * @param present what there is on the first day
   * @param effort how long to think
   * @param solver who solves the linear programmes
   */
  public record Request(
      Household household,
      Catalogue catalogue,
      LocalDate from,
      int weeks,
      double margin,
      Present present,
      Effort effort,
      LinearSolver solver) {
    public Request {
      if (weeks < 1 || weeks > MOST_WEEKS) {
        throw new IllegalArgumentException(
            "a plan has 1 to " + MOST_WEEKS + " weeks, not " + weeks);
      }
      if (!(margin >= LEAST_MARGIN && margin <= MOST_MARGIN)) {
        throw new IllegalArgumentException(
            "the margin is " + LEAST_MARGIN + " to " + MOST_MARGIN + ", not " + margin);
      }
    }

    /** A plan from an empty bench. */
    public Request(
        Household household,
        Catalogue catalogue,
        LocalDate from,
        int weeks,
        double margin,
        Effort effort) {
      this(household, catalogue, from, weeks, margin, Present.NOTHING, effort, LinearSolver.NATIVE);
    }
  }

  /**
   * The plan.
   *
   * @param progress told one short line for each step
   * @throws NoPlan when the question has no answer, with what would have to change
   */
  public static SowingPlan plan(Request request, Consumer<String> progress) {
    return plan(request, progress, () -> false);
  }

  /**
   * The plan, or the best found so far when it is cancelled.
   *
   * @param progress told one short line for each step
   * @param cancelled asked often; once true the search ends
   * @throws NoPlan when the question has no answer, with what would have to change
   */
  public static SowingPlan plan(
      Request request, Consumer<String> progress, BooleanSupplier cancelled) {
    Deadline clock = new Deadline(request.effort().linear(), cancelled);
    progress.accept("Light and air of every pot");
    NoAnswer.checkPlaces(request.household());
    return plan(request, Question.surroundings(request), clock, progress, cancelled);
  }

  /**
   * The plan in light and air known already, for a household that is planned again and again.
   *
   * @param season the household's places over all days of the plan and of what stands already
   * @param progress told one short line for each step
   * @param cancelled asked often; once true the search ends
   * @throws NoPlan when the question has no answer, with what would have to change
   */
  public static SowingPlan plan(
      Request request, Season season, Consumer<String> progress, BooleanSupplier cancelled) {
    Deadline clock = new Deadline(request.effort().linear(), cancelled);
    NoAnswer.checkPlaces(request.household());
    return plan(request, season.places(), clock, progress, cancelled);
  }

  /**
   * The crops a household may sow: those wanted, or all that can be planned, less those avoided.
   */
  public static List<Crop> crops(Household household, Catalogue catalogue) {
    return Question.crops(household.crops(), catalogue);
  }

  /** Points of grams missing, grams wasted and seeds sown; ten points are one gram missing. */
  public static double points(double missingGrams, double wastedGrams, double seeds) {
    return Weights.SHORT * missingGrams + Weights.WASTE * wastedGrams + Weights.SEED * seeds;
  }

  private static SowingPlan plan(
      Request request,
      Surroundings at,
      Deadline clock,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    Instance asked = Question.of(request, at);
    NoAnswer.checkQuestion(asked);
    List<Course> courses = Courses.all(asked);
    Instance instance = asked.reaching(courses);
    NoAnswer.checkReach(courses, instance);
    progress.accept(String.format(Locale.ROOT, "%d ways to sow and move on", courses.size()));
    List<LifeGraph> graphs = courses.parallelStream().map(LifeGraph::new).toList();
    SowingPlan plan = solve(instance, graphs, request.effort(), clock, cancelled, progress);
    NoAnswer.checkBowls(plan, instance, cancelled.getAsBoolean());
    return plan;
  }

  private static SowingPlan solve(
      Instance instance,
      List<LifeGraph> graphs,
      Effort effort,
      Deadline clock,
      BooleanSupplier cancelled,
      Consumer<String> progress) {
    List<String> steps = new ArrayList<>();
    steps.add(
        String.format(
            Locale.ROOT,
            "%d life graphs with %d nodes, %.1f s",
            graphs.size(),
            graphs.stream().mapToLong(LifeGraph::nodes).sum(),
            clock.seconds()));
    try (Master exact = new Master(instance, graphs, false)) {
      LinearPlan.Result linear =
          new LinearPlan(instance, graphs, progress).solve(exact, clock, effort.proving());
      steps.add(
          String.format(
              Locale.ROOT,
              "fractions of plants: %s rounds, %d lives, bound %.0f, value %.0f%s, %.1f s",
              linear.rounds(),
              exact.lives().size(),
              linear.bound(),
              linear.value(),
              linear.converged() ? "" : " (out of time)",
              clock.seconds()));
      Optional<Prices> prices = linear.converged() ? Optional.of(exact.prices()) : Optional.empty();
      WholePlan.Judge judge = new WholePlan.Judge(instance, graphs);
      double worth = WORTH_A_DIVE * instance.calendar().bowls();
      Deadline integer = new Deadline(effort.integer(), cancelled);
      WholePlants.Result whole =
          new WholePlants(
                  instance,
                  judge,
                  graphs.stream().map(g -> g.course).toList(),
                  exact,
                  new SplittableRandom(SEED),
                  progress)
              .solve(judge.promises().kept(), linear.bound(), worth, integer, effort.dives());
      steps.add(
          String.format(
              Locale.ROOT,
              "whole plants: %d, %.0f points after %d dives, %.1f s",
              whole.plan().plants(),
              whole.plan().value(),
              whole.dives(),
              clock.seconds()));
      WholePlan tidy =
          new Tidying(instance, judge, graphs, progress)
              .of(whole.plan(), new Deadline(effort.tidying(), cancelled));
      steps.add(
          String.format(
              Locale.ROOT,
              "tidied: %d sowing days instead of %d, %d picks of leaves instead of %d, %.0f points,"
                  + " %.1f s",
              tidy.sowingDays(),
              whole.plan().sowingDays(),
              tidy.leafPicks(),
              whole.plan().leafPicks(),
              tidy.value(),
              clock.seconds()));
      return new PlanDraft(
              instance,
              tidy.mix().plants().stream()
                  .map(p -> BlendedLife.of(p, judge.promises().nextPick(p.skeleton())))
                  .toList(),
              graphs.stream().map(g -> g.course).toList())
          .write(
              linear.bound(),
              whole.plan().value() - linear.bound() <= worth,
              clock.seconds(),
              steps,
              prices);
    }
  }
}
