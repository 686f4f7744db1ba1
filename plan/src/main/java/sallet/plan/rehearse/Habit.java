package sallet.plan.rehearse;

import java.util.Locale;

/** A way of deciding what to sow, pick and lift. */
public sealed interface Habit {
  /** Its name on the command line. */
  String word();

  /** What it does, a clause. */
  String does();

  /** The same habit sown for another number of plants; planning finds its own. */
  Habit withPlants(double plants);

  /**
   * Sows every so many weeks, each crop in turn; leaves are picked by rule.
   *
   * @param weeks weeks between sowings, 1 or more
   * @param plantsAWeek usable plants sown for, a week
   */
  record EveryWeeks(int weeks, double plantsAWeek) implements Habit {
    private static final int A_WEEK = 7;

    @Override
    public String word() {
      return "every-%d-days".formatted(A_WEEK * weeks);
    }

    @Override
    public String does() {
      return String.format(
          Locale.ROOT,
          "sow for %.1f plants a week, every %s, one crop after the other; pick by rule",
          plantsAWeek,
          weeks == 1 ? "week" : weeks + " weeks");
    }

    @Override
    public Habit withPlants(double plants) {
      return new EveryWeeks(weeks, plants);
    }
  }

  /**
   * Sows a whole bench when the last one is nearly eaten; leaves are picked by rule.
   *
   * @param plants usable plants sown for
   */
  record AllAtOnce(double plants) implements Habit {
    @Override
    public String word() {
      return "all-at-once";
    }

    @Override
    public String does() {
      return String.format(
          Locale.ROOT,
          "sow for %.0f plants whenever the last are nearly eaten; pick by rule",
          plants);
    }

    @Override
    public Habit withPlants(double others) {
      return new AllAtOnce(others);
    }
  }

  /** Plans anew each week, and does what the plan tells. */
  record PlanWeekly() implements Habit {
    @Override
    public String word() {
      return "plan";
    }

    @Override
    public String does() {
      return "plan again at every bowl from what was counted and weighed, and follow the plan";
    }

    @Override
    public Habit withPlants(double plants) {
      return this;
    }
  }
}
