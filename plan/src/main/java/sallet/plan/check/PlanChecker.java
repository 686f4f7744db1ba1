package sallet.plan.check;

import java.util.ArrayList;
import java.util.List;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.Present;
import sallet.plan.SowingPlan;

/**
 * Checks a sowing plan against the household and the growth model, without knowing how it was made.
 *
 * <p>A plan may treat the pots of a group as having less than their part of the tray, never more;
 * everything else is worked out anew.
 */
public final class PlanChecker {
  private static final List<Check> CHECKS =
      List.of(
          new CalendarCheck(),
          new BatchCheck(),
          new MoveCheck(),
          new StandingCheck(),
          new PlaceCheck(),
          new PickCheck(),
          new LifeCheck(),
          new BowlCheck(),
          new ObjectiveCheck());

  private PlanChecker() {}

  /** Broken rules of a plan from an empty bench; none when the plan is valid. */
  public static List<Fault> check(SowingPlan plan, Household household, Catalogue catalogue) {
    return check(plan, household, catalogue, Present.NOTHING);
  }

  /**
   * Broken rules; none when the plan is valid.
   *
   * @param present what stood when the plan was made
   */
  public static List<Fault> check(
      SowingPlan plan, Household household, Catalogue catalogue, Present present) {
    return examine(plan, household, catalogue, present).faults();
  }

  /** Broken rules and notes. */
  public static Verdict examine(
      SowingPlan plan, Household household, Catalogue catalogue, Present present) {
    List<Fault> faults = new ArrayList<>();
    if (plan.weeks().isEmpty()) {
      faults.add(new Fault(Rule.BOWL_DAYS, "plan", "number of bowls", "at least 1", "0"));
      return new Verdict(faults, List.of());
    }
    HomeCalendar calendar = new HomeCalendar(household, plan.from(), plan.weeks().size());
    return examine(
        new Subject(
            plan,
            household,
            catalogue,
            present,
            calendar,
            RoomSurroundings.of(household, calendar, present)));
  }

  /** Broken rules and notes in given surroundings. */
  static Verdict examine(Subject subject) {
    List<Fault> faults = new ArrayList<>();
    new GroupCheck().examine(subject, faults);
    if (!faults.isEmpty()) {
      return new Verdict(faults, List.of());
    }
    CHECKS.forEach(check -> check.examine(subject, faults));
    ReachCheck reach = new ReachCheck(subject);
    faults.addAll(reach.faults());
    return new Verdict(faults, reach.notes());
  }
}
