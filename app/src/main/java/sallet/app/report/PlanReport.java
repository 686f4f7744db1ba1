package sallet.app.report;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.forecast.Band;
import sallet.household.Household;
import sallet.plan.BowlWeek;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;

/**
 * A plan with all that is needed to tell of it.
 *
 * @param answer the plan and what goes with it
 * @param household the household it was made for
 * @param catalogue the crops it was made with
 * @param light light of the pots, for the bench map
 * @param tasks the plan's hand work
 */
record PlanReport(
    PlanAnswer answer,
    Household household,
    Catalogue catalogue,
    BenchLight light,
    List<Task> tasks) {

  /** A bowl lacks something worth telling from here on, g: a leaf or two. Judgement. */
  static final double SHORT_FROM_GRAMS = 1;

  /** A leaf or two is not worth a line about the fridge, g. Judgement. */
  private static final double FRIDGE_FROM_GRAMS = 5;

  /** Days told in full at the head of a report. */
  static final int TWO_WEEKS = 14;

  static PlanReport of(
      PlanAnswer answer, Household household, Catalogue catalogue, BenchLight light) {
    return new PlanReport(answer, household, catalogue, light, Tasks.of(answer.plan()));
  }

  SowingPlan plan() {
    return answer.plan();
  }

  LocalDate lastDay() {
    List<BowlWeek> weeks = plan().weeks();
    return weeks.isEmpty() ? plan().from() : weeks.get(weeks.size() - 1).bowlDay();
  }

  /** Bowls somebody wants and something sown could serve. */
  List<BowlWeek> reachable() {
    return plan().weeks().stream().filter(w -> w.reachable() && w.demandGrams() > 0).toList();
  }

  /** Reachable bowls that stay short. */
  List<BowlWeek> shortWeeks() {
    return reachable().stream().filter(PlanReport::isShort).toList();
  }

  static boolean isShort(BowlWeek week) {
    return week.reachable() && week.shortfallGrams() >= SHORT_FROM_GRAMS;
  }

  /**
   * Grams in a bowl in eight of ten seasons; empty when no season was played, when nobody eats, and
   * when all come to the same gram.
   */
  static Optional<Band> luck(BowlWeek week) {
    return week.luck()
        .map(BowlWeek.Luck::bowlGrams)
        .filter(bowl -> week.demandGrams() > 0)
        .filter(bowl -> Math.round(bowl.low()) < Math.round(bowl.high()));
  }

  /** One or two sentences: how full the bowls are. */
  String summary() {
    List<BowlWeek> bowls = reachable();
    if (bowls.isEmpty()) {
      return "No bowl of these weeks can be reached by sowing now.";
    }
    double demand = bowls.stream().mapToDouble(BowlWeek::demandGrams).sum();
    double missing = bowls.stream().mapToDouble(BowlWeek::shortfallGrams).sum();
    BowlWeek first =
        bowls.stream()
            .filter(w -> w.plannedGrams() >= SHORT_FROM_GRAMS)
            .findFirst()
            .orElse(bowls.get(0));
    return ("First bowl on %s. %d of %s within reach %s full; %s of the grams wanted are planned."
            + " Grams are a forecast for the mean plant in mean weather.")
        .formatted(
            Words.day(first.bowlDay()),
            bowls.size() - shortWeeks().size(),
            Words.count(bowls.size(), "bowl"),
            bowls.size() == 1 ? "is" : "are",
            Words.percent(1 - missing / demand));
  }

  /** What to put into the fridge on a bowl day for the bowl after; empty for next to nothing. */
  Optional<String> fridge(LocalDate day) {
    List<BowlWeek> weeks = plan().weeks();
    for (int w = 0; w + 1 < weeks.size(); w++) {
      BowlWeek next = weeks.get(w + 1);
      double grams = next.plannedGrams() - next.harvestGrams();
      if (weeks.get(w).bowlDay().equals(day) && grams >= FRIDGE_FROM_GRAMS) {
        return Optional.of(
            "Keep about %s in the fridge for the bowl of %s."
                .formatted(Words.grams(grams), Words.day(next.bowlDay())));
      }
    }
    return Optional.empty();
  }

  /** Seeds the plan sows of each crop, in order of first sowing. */
  List<String> seeds() {
    Map<String, Integer> seeds = new LinkedHashMap<>();
    plan().sowings().forEach(s -> seeds.merge(s.crop(), s.seeds(), Integer::sum));
    return seeds.entrySet().stream()
        .map(e -> e.getValue() + " of " + Words.spoken(e.getKey()))
        .toList();
  }

  /** Why a short bowl is short, as far as the plan knows. */
  static String whyShort(BowlWeek week) {
    return week.fullPlaces().isEmpty()
        ? "no place is full then: light, time or the kinds wanted set the limit"
        : "full then: " + Words.list(week.fullPlaces());
  }

  /** Crops of the plan in order of first sowing, then any others that come into a bowl. */
  List<String> crops() {
    Stream<String> sown = plan().batches().stream().map(Sowing::crop);
    Stream<String> eaten =
        plan().weeks().stream().flatMap(week -> week.kinds().stream()).map(BowlWeek.Kind::crop);
    return Stream.concat(sown, eaten).distinct().toList();
  }

  Optional<Crop> crop(String name) {
    return catalogue.all().stream().filter(c -> c.name().equals(name)).findFirst();
  }
}
