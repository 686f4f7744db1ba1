package sallet.plan.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.plan.BowlWeek;
import sallet.plan.Present;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan.Objective;

/** What the plan costs: each term worked out from its bowls and batches, and their sum. */
final class ObjectiveCheck implements Check {
  private static final double SHORT = 10;
  private static final double WASTE = 2;
  private static final double ONE_KIND = 2;
  private static final double CARRIED = 0.05;
  private static final double SEED = 15;
  private static final double CHANGE = 10;

  /** A change when nothing was recorded since the last plan. */
  private static final double FIRM_CHANGE = 10_000;

  /** Days for which the last plan's sowings are promised. */
  private static final int PROMISED_DAYS = 14;

  /** Grams of a kind that a bowl need not tell. */
  private static final double TRACE_G = 0.05;

  @Override
  public void examine(Subject subject, List<Fault> faults) {
    Objective told = subject.plan().objective();
    Terms terms = new Terms(subject);
    double traces = TRACE_G * terms.crops.size() * subject.plan().weeks().size() + Close.GRAMS;
    term("grams missing", terms.shortG, told.shortGrams(), traces, faults);
    term("grams wasted", terms.wasteG, told.wasteGrams(), traces, faults);
    term("grams of one kind too much", terms.oneKindG, told.oneKindGrams(), traces, faults);
    term(
        "grams carried",
        terms.carriedG,
        told.carriedGrams(),
        traces * subject.plan().weeks().size(),
        faults);
    term("seeds", seeds(subject), told.seeds(), Close.GRAMS, faults);
    changes(subject, told.changes(), faults);
    double sum =
        SHORT * told.shortGrams()
            + WASTE * told.wasteGrams()
            + ONE_KIND * told.oneKindGrams()
            + CARRIED * told.carriedGrams()
            + SEED * told.seeds()
            + (subject.present().firm() ? FIRM_CHANGE : CHANGE) * told.changes();
    term("points in all", sum, told.value(), Close.GRAMS * (1 + sum), faults);
  }

  private static void term(
      String what, double expected, double found, double tolerance, List<Fault> faults) {
    if (!(Math.abs(expected - found) <= tolerance)) {
      faults.add(Fault.number(Rule.OBJECTIVE, "objective", what, expected, found));
    }
  }

  /** The terms that follow from bowls and picks. */
  private static final class Terms {
    final Set<String> crops = new TreeSet<>();
    final LocalDate firstByPlants;
    double shortG;
    double wasteG;
    double oneKindG;
    double carriedG;

    Terms(Subject subject) {
      firstByPlants = new Reach(subject).withAnyMoves().orElse(LocalDate.MAX);
      subject.plan().batches().forEach(batch -> crops.add(batch.crop()));
      crops.addAll(subject.present().inHandGrams().keySet());
      subject.plan().batches().stream()
          .flatMap(batch -> batch.courses().stream())
          .forEach(course -> wasteG += course.plants() * course.clearedGrams());
      subject.plan().weeks().forEach(week -> add(subject, week));
      crops.forEach(crop -> carriedG += carried(subject, crop));
    }

    /** Grams of a crop that must have been kept a week for its bowls, worked out from the last. */
    private static double carried(Subject subject, String crop) {
      List<BowlWeek> weeks = subject.plan().weeks();
      double sum = 0;
      double intoNext = 0;
      for (int w = weeks.size() - 1; w >= 0; w--) {
        double fresh = BowlCheck.supplied(subject, crop, weeks.get(w).bowlDay());
        intoNext = Math.max(0, BowlCheck.eaten(weeks.get(w), crop) - (fresh - intoNext));
        sum += intoNext;
      }
      return sum;
    }

    /**
     * What a bowl is to hold: no more than is in hand where plants cannot serve it yet, and no
     * margin for the next bowl.
     */
    private double aim(Subject subject, BowlWeek week) {
      boolean next = week.equals(subject.plan().weeks().get(0));
      double factor = next ? Math.min(1, subject.plan().margin()) : subject.plan().margin();
      double wanted = factor * subject.calendar().demandGrams(week.bowlDay());
      if (!week.reachable()) {
        return 0;
      }
      boolean fromFridge =
          subject.inHandGrams() > 0
              && week.equals(subject.plan().weeks().get(0))
              && week.bowlDay().isBefore(firstByPlants);
      return fromFridge ? Math.min(wanted, subject.inHandGrams()) : wanted;
    }

    private void add(Subject subject, BowlWeek week) {
      double aim = aim(subject, week);
      double kindLimit = aim / (subject.household().eaters().kinds() - 0.5);
      double bowl = 0;
      for (String crop : crops) {
        double fresh = BowlCheck.supplied(subject, crop, week.bowlDay());
        double eaten = BowlCheck.eaten(week, crop);
        bowl += eaten;
        wasteG += fresh - eaten;
        oneKindG += kindLimit >= aim ? 0 : Math.max(0, eaten - kindLimit);
      }
      shortG += Math.max(0, aim - bowl);
    }
  }

  /** Seeds expected for one usable plant each, whole batches not reckoned. */
  private static double seeds(Subject subject) {
    double seeds = 0;
    for (Sowing sowing : subject.plan().sowings()) {
      seeds +=
          subject
              .crop(sowing.crop())
              .flatMap(Crop::harvest)
              .map(rule -> sowing.plants() * perPlant(rule))
              .orElse(0.0);
    }
    return seeds;
  }

  private static double perPlant(HarvestRule rule) {
    return rule.plantsPerPot() / rule.usableShare();
  }

  /** Plants that stand and were promised otherwise may come on top of sowings. */
  private static void changes(Subject subject, int told, List<Fault> faults) {
    int sown = changedSowings(subject);
    boolean alone =
        !subject.present().firm()
            && subject.present().promises().stream().allMatch(promise -> promise.batch().isEmpty());
    if (alone ? told != sown : told < sown) {
      faults.add(Fault.number(Rule.OBJECTIVE, "objective", "changes", sown, told));
    }
  }

  private record Day(String crop, LocalDate date) {}

  /** Plants sown more or fewer than promised, once there was a promise. */
  private static int changedSowings(Subject subject) {
    if (subject.present().promises().isEmpty()) {
      return 0;
    }
    LocalDate until = subject.calendar().from().plusDays(PROMISED_DAYS);
    List<Map.Entry<Day, Integer>> all = new ArrayList<>();
    for (Present.Promise promise : subject.present().promises()) {
      boolean kept =
          subject.calendar().isTaskDay(promise.sown())
              && subject.sowableCrops().stream().anyMatch(c -> c.name().equals(promise.crop()));
      if (promise.batch().isEmpty() && kept) {
        all.add(Map.entry(new Day(promise.crop(), promise.sown()), promise.count()));
      }
    }
    subject
        .plan()
        .sowings()
        .forEach(s -> all.add(Map.entry(new Day(s.crop(), s.date()), -s.plants())));
    Map<Day, Integer> open = new HashMap<>();
    all.stream()
        .filter(e -> e.getKey().date().isBefore(until))
        .forEach(e -> open.merge(e.getKey(), e.getValue(), Integer::sum));
    return open.values().stream().mapToInt(Math::abs).sum();
  }
}
