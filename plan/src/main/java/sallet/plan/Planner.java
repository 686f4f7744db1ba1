package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;

/** Makes a sowing plan. */
public final class Planner {
  /** Points for each bowl not worth another dive: 0.1 g. */
  static final double WORTH_A_DIVE = 1;

  private static final long SEED = 1;

  private Planner() {}

  /**
   * What to plan.
   *
   * @param household the household
   * @param catalogue crops to choose from
   * @param from first day of the plan
   * @param weeks number of bowls, 1 to 52
   * @param margin factor on demand, 0.5 to 2
   * @param effort how long to think
   */
  public record Request(
      Household household,
      Catalogue catalogue,
      LocalDate from,
      int weeks,
      double margin,
      Effort effort) {}

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
    Household household = request.household();
    TaskCalendar calendar =
        new TaskCalendar(household.eaters(), household.absences(), request.from(), request.weeks());
    progress.accept("Light and air of every pot");
    Surroundings at = Question.surroundings(household, request.from(), calendar.days());
    List<Crop> crops = Question.crops(household.crops(), request.catalogue());
    NoAnswer.checkPlaces(household, crops, calendar);
    List<Course> courses = Courses.all(crops, at, calendar);
    int first = Courses.firstBowl(courses, calendar.bowls());
    NoAnswer.checkReach(courses, first, calendar, at, crops);
    Instance instance =
        new Instance(
            household,
            crops,
            calendar,
            at,
            request.margin(),
            IntStream.range(0, calendar.bowls()).mapToObj(w -> w >= first).toList());
    progress.accept(String.format(Locale.ROOT, "%d ways to sow and move on", courses.size()));
    List<LifeGraph> graphs = courses.parallelStream().map(LifeGraph::new).toList();
    return solve(instance, graphs, request.effort(), clock, cancelled, progress);
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
    double[] cellsPerPlant =
        instance.crops().stream()
            .mapToDouble(
                c -> Weights.cellsPerPlant(c.harvest().orElseThrow(), instance.at().cells()))
            .toArray();
    try (Master bounding = new Master(instance, graphs, cellsPerPlant, true);
        Master exact = new Master(instance, graphs, cellsPerPlant, false)) {
      LinearPlan.Result linear =
          new LinearPlan(instance.calendar().bowls(), progress).solve(bounding, exact, clock);
      steps.add(
          String.format(
              Locale.ROOT,
              "fractions of plants: %s rounds, %d lives, bound %.0f, value %.0f, %.1f s",
              linear.rounds(),
              exact.lives().size(),
              linear.bound(),
              linear.value(),
              clock.seconds()));
      Prices prices = exact.prices();
      WholePlants.Result whole =
          new WholePlants(
                  instance, graphs, cellsPerPlant, exact, new SplittableRandom(SEED), progress)
              .solve(
                  linear.bound(),
                  WORTH_A_DIVE * instance.calendar().bowls(),
                  new Deadline(effort.integer(), cancelled),
                  effort.dives());
      steps.add(
          String.format(
              Locale.ROOT,
              "whole plants: %d, %.0f points after %d dives, %.1f s",
              whole.plants().stream().mapToInt(Plants::count).sum(),
              whole.value(),
              whole.dives(),
              clock.seconds()));
      List<BlendedLife> lives = whole.plants().stream().map(BlendedLife::of).toList();
      return new PlanDraft(instance, lives)
          .write(
              linear.bound(),
              clock.seconds(),
              steps,
              prices,
              graphs.stream().map(g -> g.course).toList());
    }
  }
}
