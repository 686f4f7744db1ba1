package sallet.plan.check;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import sallet.crop.Crop;
import sallet.plan.BowlWeek;
import sallet.plan.BowlWeek.Kind;
import sallet.plan.Sowing;

/** What is harvested and eaten week by week. */
final class BowlCheck implements Check {
  /** Grams a bowl may hold above demand times margin: rounding of the plan. */
  private static final double BOWL_TOLERANCE_G = 0.1;

  /** Grams of a crop that may be eaten above what was picked: less than a kitchen scale shows. */
  private static final double SUPPLY_TOLERANCE_G = 1e-3;

  /** Fridge days a crop needs to be eaten a week later. */
  private static final int WEEK_DAYS = 7;

  @Override
  public void examine(Subject subject, List<Fault> faults) {
    for (BowlWeek week : subject.plan().weeks()) {
      double harvest =
          subject.plan().batches().stream()
              .mapToDouble(sowing -> picked(sowing, week.bowlDay()))
              .sum();
      if (!Close.sameSum(harvest, week.harvestGrams())) {
        faults.add(
            Fault.number(Rule.HARVEST, where(week), "harvest, g", harvest, week.harvestGrams()));
      }
      kinds(week, faults);
      double limit =
          subject.plan().margin() * subject.calendar().demandGrams(week.bowlDay())
              + BOWL_TOLERANCE_G;
      if (!(week.plannedGrams() <= limit)) {
        faults.add(Fault.above(Rule.BOWL_SIZE, where(week), "bowl, g", limit, week.plannedGrams()));
      }
    }
    Set<String> crops = new TreeSet<>();
    subject.plan().batches().forEach(sowing -> crops.add(sowing.crop()));
    subject.plan().weeks().forEach(week -> week.kinds().forEach(kind -> crops.add(kind.crop())));
    crops.forEach(crop -> supply(subject, crop, faults));
  }

  static String where(BowlWeek week) {
    return "week " + week.bowlDay();
  }

  /** Grams of a crop picked for a bowl; for the first with what is in hand already. */
  static double supplied(Subject subject, String crop, LocalDate bowlDay) {
    boolean first = bowlDay.equals(subject.plan().weeks().get(0).bowlDay());
    double inHand =
        first && subject.calendar().isPickDay(bowlDay)
            ? subject.present().inHandGrams().getOrDefault(crop, 0.0)
            : 0;
    return inHand
        + subject.plan().batches().stream()
            .filter(sowing -> sowing.crop().equals(crop))
            .mapToDouble(sowing -> picked(sowing, bowlDay))
            .sum();
  }

  /** Grams of a crop in a bowl. */
  static double eaten(BowlWeek week, String crop) {
    return week.kinds().stream()
        .filter(kind -> kind.crop().equals(crop))
        .mapToDouble(Kind::grams)
        .sum();
  }

  private static double picked(Sowing sowing, LocalDate day) {
    return sowing.courses().stream()
        .mapToDouble(
            course ->
                course.plants()
                    * course.picks().stream()
                        .filter(pick -> pick.date().equals(day))
                        .mapToDouble(Sowing.Pick::gramsPerPlant)
                        .sum())
        .sum();
  }

  private static void kinds(BowlWeek week, List<Fault> faults) {
    Set<String> seen = new HashSet<>();
    double sum = 0;
    double before = Double.POSITIVE_INFINITY;
    for (Kind kind : week.kinds()) {
      if (!seen.add(kind.crop())) {
        faults.add(new Fault(Rule.KINDS, where(week), "kind", "named once", kind.crop()));
      }
      if (!(kind.grams() >= 0 && kind.grams() <= before)) {
        faults.add(
            new Fault(
                Rule.KINDS,
                where(week),
                kind.crop() + ", g",
                "0 to " + before + ", most first",
                "" + kind.grams()));
      }
      before = kind.grams();
      sum += kind.grams();
    }
    if (!Close.sameSum(sum, week.plannedGrams())) {
      faults.add(Fault.number(Rule.KINDS, where(week), "bowl, g", sum, week.plannedGrams()));
    }
  }

  /** Follows one crop through the weeks, eating what is a week old before what is fresh. */
  private static void supply(Subject subject, String crop, List<Fault> faults) {
    boolean keeps =
        subject
            .catalogue()
            .find(crop)
            .flatMap(Crop::harvest)
            .filter(rule -> rule.fridgeCarryDays() >= WEEK_DAYS)
            .isPresent();
    double inFridge = 0;
    for (BowlWeek week : subject.plan().weeks()) {
      double fresh = supplied(subject, crop, week.bowlDay());
      double eaten = eaten(week, crop);
      if (!(eaten <= inFridge + fresh + SUPPLY_TOLERANCE_G)) {
        faults.add(
            Fault.above(Rule.SUPPLY, where(week), crop + " eaten, g", inFridge + fresh, eaten));
      }
      double freshEaten = Math.max(0, eaten - inFridge);
      inFridge = keeps ? Math.max(0, fresh - freshEaten) : 0;
    }
  }
}
