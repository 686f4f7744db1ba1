package sallet.plan.rehearse;

/** A way of deciding what to sow, pick and lift. */
public sealed interface Habit {
  /** Its name on the command line. */
  String word();

  /**
   * Sows every so many weeks, each crop in turn; leaves are picked by rule.
   *
   * @param weeks weeks between sowings, 1 or more
   * @param plantsAWeek usable plants sown for, a week
   */
  record EveryWeeks(int weeks, double plantsAWeek) implements Habit {
    @Override
    public String word() {
      return "every-%d-days".formatted(7 * weeks);
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
  }

  /** Plans anew each week, and does what the plan tells. */
  record PlanWeekly() implements Habit {
    @Override
    public String word() {
      return "plan";
    }
  }

  /** The same habit sown for another number of plants; planning finds its own. */
  default Habit withPlants(double plants) {
    if (this instanceof EveryWeeks rhythm) {
      return new EveryWeeks(rhythm.weeks(), plants);
    }
    return this instanceof AllAtOnce ? new AllAtOnce(plants) : this;
  }
}
