package sallet.plan.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sallet.plan.BowlWeek;

/**
 * Which bowls are called out of reach.
 *
 * <p>A bowl is possible when some plant that keeps the rules could serve it, and certain a week
 * after the first that plants with the earliest moves can serve. A plan may call a bowl that is
 * possible and not yet certain either way.
 */
final class ReachCheck {
  private final List<Fault> faults = new ArrayList<>();
  private final List<Fault> notes = new ArrayList<>();

  ReachCheck(Subject subject) {
    Reach reach = new Reach(subject);
    LocalDate never = subject.calendar().last().plusWeeks(1);
    LocalDate possible = reach.withAnyMoves().orElse(never);
    LocalDate certain = reach.withEarliestMoves().orElse(never).plusWeeks(1);
    for (BowlWeek week : subject.plan().weeks()) {
      flag(subject, week, possible, certain);
      grams(week);
    }
  }

  /** Weeks wrongly called within or out of reach, and weeks out of reach with grams in them. */
  List<Fault> faults() {
    return faults;
  }

  /** Weeks called out of reach though they are possible, before they are certain. */
  List<Fault> notes() {
    return notes;
  }

  private void flag(Subject subject, BowlWeek week, LocalDate possible, LocalDate certain) {
    boolean served = subject.inHandGrams() > 0 && week.equals(subject.plan().weeks().get(0));
    boolean inReach = served || !week.bowlDay().isBefore(possible);
    if (inReach == week.reachable()) {
      return;
    }
    Fault fault =
        new Fault(
            Rule.REACHABLE,
            BowlCheck.where(week),
            "within reach",
            inReach + ", possible from " + possible + ", certain from " + certain,
            "" + week.reachable());
    (inReach && week.bowlDay().isBefore(certain) ? notes : faults).add(fault);
  }

  private void grams(BowlWeek week) {
    if (!week.reachable()
        && !(week.harvestGrams() == 0 && week.plannedGrams() == 0 && week.kinds().isEmpty())) {
      faults.add(
          new Fault(
              Rule.REACHABLE,
              BowlCheck.where(week),
              "grams out of reach",
              "none",
              week.harvestGrams() + " picked, " + week.plannedGrams() + " eaten"));
    }
  }
}
