package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.learn.GrowingPlaces;
import sallet.plan.Effort;
import sallet.plan.Season;
import sallet.plan.TaskCalendar;
import sallet.plan.linear.LinearSolver;

/**
 * A household's bench played through many seasons. All habits meet the same seasons: the weather,
 * the crops' growth and the lots of seed of season <i>i</i> are drawn from seed and <i>i</i> alone.
 */
public final class Rehearsal {
  /** Weeks of a season. */
  public static final int WEEKS = 36;

  /** Weeks from the empty bench that are played and not counted. */
  public static final int START_UP = 10;

  /** Bowls that a weekly plan looks ahead. */
  private static final int AHEAD = 12;

  private static final int DAYS_AHEAD = 7 * (AHEAD + 1);

  /** Numbers of plants a week that are tried for a bowl of 100 g. Judgement. */
  private static final double[] PLANTS_FOR_100_G = {0.5, 0.65, 0.8, 0.95, 1.1, 1.3, 1.5, 1.8, 2.1};

  /** Tuning seasons are numbered from here, so that none is reported on. */
  private static final long TUNING = 1_000_000;

  private static final int TUNING_SEASONS = 20;

  private final Scene scene;
  private final Weekly weekly;
  private final long seed;

  private Rehearsal(Scene scene, Weekly weekly, long seed) {
    this.scene = scene;
    this.weekly = weekly;
    this.seed = seed;
  }

  /**
   * How to rehearse.
   *
   * @param household the household
   * @param catalogue all crops
   * @param from first day of the season
   * @param hidden what the planner does not know
   * @param margin factor on demand of the weekly plans; empty for the one that is learned
   * @param solver who solves the linear programmes
   * @param seed seasons of one seed are always the same
   */
  public record Request(
      Household household,
      Catalogue catalogue,
      LocalDate from,
      Hidden hidden,
      OptionalDouble margin,
      LinearSolver solver,
      long seed) {}

  /** Works out the light once for all seasons. */
  public static Rehearsal of(Request request) {
    Household household = request.household();
    TaskCalendar calendar =
        new TaskCalendar(household.eaters(), household.absences(), request.from(), WEEKS);
    Scene scene = Scene.of(household, request.catalogue(), calendar, request.hidden());
    Weekly weekly =
        new Weekly(
            Season.of(household, request.from(), calendar.days() + DAYS_AHEAD),
            GrowingPlaces.of(household, request.from(), calendar.days()),
            AHEAD,
            request.margin(),
            Effort.LEAST,
            request.solver());
    return new Rehearsal(scene, weekly, request.seed());
  }

  /**
   * Plays seasons, some at once.
   *
   * @param seasons how many
   * @param told told how many are done after each
   * @param cancelled asked often; once true only seasons played to their end count
   */
  public Result play(Habit habit, int seasons, IntConsumer told, BooleanSupplier cancelled) {
    AtomicInteger done = new AtomicInteger();
    List<Score> scores =
        IntStream.range(0, seasons)
            .parallel()
            .mapToObj(
                i -> {
                  Optional<PlayedSeason> played = season(habit, i, cancelled);
                  played.ifPresent(p -> told.accept(done.incrementAndGet()));
                  return played.map(this::score);
                })
            .flatMap(Optional::stream)
            .toList();
    return new Result(habit, scores);
  }

  /** Plays one season; empty when it was cancelled before its end. */
  Optional<PlayedSeason> season(Habit habit, long number, BooleanSupplier cancelled) {
    return new World(scene, seed * 0x9E3779B97F4A7C15L + number).play(grower(habit), cancelled);
  }

  Score score(PlayedSeason season) {
    return Score.of(season, START_UP, scene.household().eaters().kinds());
  }

  private Grower grower(Habit habit) {
    if (habit instanceof Habit.EveryWeeks rhythm) {
      return Rhythm.every(rhythm.weeks(), rhythm.plantsAWeek());
    }
    return habit instanceof Habit.AllAtOnce once
        ? Rhythm.allAtOnce(once.plants())
        : new PlanAgain(weekly);
  }

  /**
   * The habit with the number of plants that loses the fewest points in other seasons than those
   * that are reported on.
   */
  public Habit tuned(Habit habit, BooleanSupplier cancelled) {
    if (habit instanceof Habit.PlanWeekly) {
      return habit;
    }
    return choices(habit)
        .min(Comparator.comparingDouble(choice -> lostInTuning(choice, cancelled)))
        .orElseThrow();
  }

  /** The habit with each number of plants worth trying in this household. */
  java.util.stream.Stream<Habit> choices(Habit habit) {
    if (habit instanceof Habit.AllAtOnce) {
      int pots = scene.pots().size();
      return IntStream.of(pots / 2, 2 * pots / 3, pots).distinct().mapToObj(habit::withPlants);
    }
    double hundreds = scene.household().eaters().bowlGrams() / 100;
    return DoubleStream.of(PLANTS_FOR_100_G).mapToObj(k -> habit.withPlants(k * hundreds));
  }

  private double lostInTuning(Habit habit, BooleanSupplier cancelled) {
    return LongStream.range(TUNING, TUNING + TUNING_SEASONS)
        .parallel()
        .mapToObj(i -> season(habit, i, cancelled))
        .flatMap(Optional::stream)
        .mapToDouble(season -> score(season).points())
        .average()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
