package sallet.plan.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.plan.BowlWeek;

/** Which bowls are called out of reach. */
final class ReachCheck {
  private final List<Fault> faults = new ArrayList<>();
  private final List<Fault> notes = new ArrayList<>();

  ReachCheck(Subject subject) {
    Optional<LocalDate> first = new Reach(subject).firstBowlDay();
    subject.plan().weeks().forEach(week -> examine(first, week));
  }

  /** Weeks wrongly called within or out of reach, and weeks out of reach with grams in them. */
  List<Fault> faults() {
    return faults;
  }

  /** The one week that a careful plan may call out of reach though it is not. */
  List<Fault> notes() {
    return notes;
  }

  private void examine(Optional<LocalDate> first, BowlWeek week) {
    String where = BowlCheck.where(week);
    boolean inReach = first.isPresent() && !week.bowlDay().isBefore(first.get());
    if (inReach != week.reachable()) {
      Fault fault =
          new Fault(
              Rule.REACHABLE,
              where,
              "within reach",
              inReach + ", first bowl " + first.map(LocalDate::toString).orElse("none"),
              "" + week.reachable());
      boolean firstInReach = first.isPresent() && week.bowlDay().isBefore(first.get().plusDays(7));
      (inReach && firstInReach ? notes : faults).add(fault);
    }
    if (!week.reachable()
        && !(week.harvestGrams() == 0 && week.plannedGrams() == 0 && week.kinds().isEmpty())) {
      faults.add(
          new Fault(
              Rule.REACHABLE,
              where,
              "grams out of reach",
              "none",
              week.harvestGrams() + " picked, " + week.plannedGrams() + " eaten"));
    }
  }
}
