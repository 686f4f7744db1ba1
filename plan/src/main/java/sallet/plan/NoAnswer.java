package sallet.plan;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.household.Household;

/** Questions without an answer, and what would have to change. */
final class NoAnswer {
  /** Days from sowing to the first leaf in good light and warmth. Common practice. */
  private static final int FIRST_LEAF_DAYS = 28;

  /** Mean temperatures between which leaf crops grow, °C. Judgement. */
  private static final double COLDEST_C = 8;

  private static final double WARMEST_C = 28;

  /** Daily light that is not what keeps plants small, mol/m²/d. Judgement. */
  private static final double ENOUGH_LIGHT_MOL = 8;

  /** Days longer than this make many leaf crops run to seed, h. Judgement. */
  private static final double LONG_DAY_HOURS = 13;

  /** Daily light below which seedlings hardly grow, mol/m²/d. Judgement. */
  private static final double DARK_MOL = 2;

  /** A bowl of less is none, g. */
  private static final double LEAST_BOWL_G = 1;

  private NoAnswer() {}

  static void checkPlaces(Household household) {
    if (household.nursery().cells() == 0) {
      throw new NoPlan("Nothing can be sown without cells: set nursery.cells to 1 or more.");
    }
    if (household.nursery().places() == 0) {
      throw new NoPlan("Seedlings have nowhere to grow on: set nursery.places to 1 or more.");
    }
    if (household.bench().pots().isEmpty()) {
      throw new NoPlan("There is no pot to grow in: add pots under bench.pots.");
    }
  }

  static void checkQuestion(Instance instance) {
    if (instance.sowable() == 0) {
      throw new NoPlan(
          "No crop is left to plan with: shorten crops.avoid or add a plannable crop to"
              + " crops.want.");
    }
    if (instance.calendar().slots().isEmpty()) {
      throw new NoPlan(
          "Everybody is away on every task day of the plan: shorten the absence or plan more"
              + " weeks with --weeks.");
    }
  }

  static void checkReach(List<Course> courses, Instance instance) {
    TaskCalendar calendar = instance.calendar();
    Surroundings at = instance.at();
    List<Crop> crops = instance.crops();
    if (courses.isEmpty()
        && crops.stream().allMatch(c -> c.germination().daysAt(at.cellMeanC()).isEmpty())) {
      throw new NoPlan(
          String.format(
              Locale.ROOT,
              "No wanted crop comes up at %.0f °C in the cells: bring nursery.day and"
                  + " nursery.night nearer to 20 °C.",
              at.cellMeanC()));
    }
    if (instance.firstBowl() >= calendar.bowls()) {
      throw new NoPlan(
          String.format(
              Locale.ROOT,
              "Nothing sown from %s on can fill a bowl by %s: %s.",
              calendar.from(),
              calendar.bowl(calendar.bowls() - 1),
              cause(calendar, at)));
    }
  }

  /**
   * A plan without a bowl is no answer.
   *
   * @param cancelled whether the search was cut short
   */
  static void checkBowls(SowingPlan plan, Instance instance, boolean cancelled) {
    if (plan.weeks().stream().anyMatch(w -> w.plannedGrams() >= LEAST_BOWL_G)) {
      return;
    }
    throw new NoPlan(
        cancelled
            ? "The search was stopped before it had a plan: give it more time."
            : String.format(
                Locale.ROOT,
                "No plan is worth its seeds: %s.",
                cause(instance.calendar(), instance.at())));
  }

  /** The likeliest cause, and what to change. */
  private static String cause(TaskCalendar calendar, Surroundings at) {
    Surroundings.Group best = at.groups().get(0);
    double meanC = mean(best.days(), PlaceDays::meanC);
    double nurseryMol = mean(at.nursery(), PlaceDays::dliMol);
    long slotsLate =
        calendar.slots().stream()
            .filter(day -> !day.isBefore(calendar.from().plusDays(FIRST_LEAF_DAYS)))
            .count();
    if (slotsLate == 0) {
      return "the first leaf takes about "
          + FIRST_LEAF_DAYS
          + " days and nobody is at home after that within the plan; plan more weeks with --weeks";
    }
    if (meanC > WARMEST_C || meanC < COLDEST_C) {
      return String.format(
          Locale.ROOT,
          "the room's air is %.0f °C on the mean and leaves grow between %.0f and %.0f °C; change"
              + " room.air or the place of the bench",
          meanC,
          COLDEST_C,
          WARMEST_C);
    }
    if (nurseryMol < DARK_MOL) {
      return String.format(
          Locale.ROOT,
          "seedlings get %.1f mol/m² of light a day in the nursery and want 8 to 12; raise"
              + " nursery.light or nursery.hours",
          nurseryMol);
    }
    double photoperiod = mean(best.days(), PlaceDays::photoperiodHours);
    if (best.meanDliMol() >= ENOUGH_LIGHT_MOL && photoperiod > LONG_DAY_HOURS) {
      return String.format(
          Locale.ROOT,
          "in days of %.0f h the wanted crops run to seed before they are large enough; set"
              + " lamp.hours to 12 h or want other crops",
          photoperiod);
    }
    return String.format(
        Locale.ROOT,
        "the best pots get %.1f mol/m² of light a day and leaves want 10 to 17; give more light, or"
            + " plan more weeks with --weeks",
        best.meanDliMol());
  }

  private static double mean(PlaceDays days, ToDoubleBiFunction<PlaceDays, Integer> value) {
    return IntStream.range(0, days.days())
        .mapToDouble(d -> value.applyAsDouble(days, d))
        .average()
        .orElse(0);
  }
}
