package sallet.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static sallet.plan.check.Edit.batch;
import static sallet.plan.check.Edit.course;
import static sallet.plan.check.Edit.pick;
import static sallet.plan.check.Edit.reversed;
import static sallet.plan.check.Edit.week;
import static sallet.plan.check.Edit.with;
import static sallet.plan.check.ExamplePlan.BASIL;
import static sallet.plan.check.ExamplePlan.CRISPHEAD;
import static sallet.plan.check.ExamplePlan.LETTUCE;
import static sallet.plan.check.ExamplePlan.ROCKET;
import static sallet.plan.check.ExamplePlan.day;
import static sallet.plan.check.ExamplePlan.kind;
import static sallet.plan.check.Rule.*;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.BowlWeek;
import sallet.plan.Present;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;
import sallet.plan.SowingPlan;
import sallet.plan.SowingPlan.Objective;
import sallet.plan.SowingPlan.PotGroup;

/** The checker passes a good plan and names the rule that a bad one breaks. */
class PlanCheckerTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  /**
   * A plan with one thing wrong.
   *
   * @param what what is wrong, in words
   * @param edit how it is made
   * @param broken rules that must be named
   * @param follows rules that may be broken in its wake, because grams or places change with it
   */
  record Wrong(String what, UnaryOperator<SowingPlan> edit, Set<Rule> broken, Set<Rule> follows) {
    @Override
    public String toString() {
      return what;
    }
  }

  @Test
  void aPlanThatKeepsEveryRuleHasNoFaultsAndNoNotes() {
    Verdict verdict = verdict(ExamplePlan.plan(), ExamplePlan.household());
    assertThat(verdict.faults()).isEmpty();
    assertThat(verdict.notes()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("wrongPlans")
  void aWrongPlanIsCaughtByTheRightRule(Wrong wrong) {
    SowingPlan plan = wrong.edit().apply(ExamplePlan.plan());
    List<Fault> faults = verdict(plan, ExamplePlan.household()).faults();
    Set<Rule> rules = faults.stream().map(Fault::rule).collect(Collectors.toSet());
    assertThat(rules).as("%s", faults).containsAll(wrong.broken());
    rules.removeAll(wrong.broken());
    rules.removeAll(wrong.follows());
    // What a plan costs changes with nearly everything.
    rules.remove(OBJECTIVE);
    assertThat(rules).as("%s", faults).isEmpty();
  }

  @Test
  void everyRuleIsBrokenByAtLeastOneWrongPlan() {
    Set<Rule> broken = new TreeSet<>();
    wrongPlans().forEach(wrong -> broken.addAll(wrong.broken()));
    ReplanCheckerTest.wrongPlans().forEach(wrong -> broken.addAll(wrong.broken()));
    assertThat(broken).isEqualTo(EnumSet.allOf(Rule.class));
  }

  static Stream<Wrong> wrongPlans() {
    return Stream.of(dates(), batches(), moves(), pots(), picks(), grams(), bowls(), reach())
        .flatMap(List::stream);
  }

  private static List<Wrong> dates() {
    return List.of(
        wrong(
            "a bowl on a Sunday",
            plan -> week(plan, day(1, 16), w -> with(w, "bowlDay", day(1, 17))),
            BOWL_DAYS),
        wrong(
            "bowls out of order",
            plan -> with(plan, "weeks", firstTwoSwapped(plan.weeks())),
            BOWL_DAYS),
        wrong(
            "a task day left out",
            plan -> with(plan, "taskDays", plan.taskDays().subList(1, 22)),
            TASK_DAYS),
        wrong(
            "a task day inside the absence",
            plan ->
                with(
                    plan,
                    "taskDays",
                    Stream.concat(plan.taskDays().stream(), Stream.of(day(2, 17)))
                        .sorted()
                        .toList()),
            TASK_DAYS),
        wrong(
            "demand of a full week in a week half away",
            plan -> week(plan, day(2, 13), w -> with(w, "demandGrams", 140.0)),
            DEMAND),
        wrong(
            "an unknown pot in a group", plan -> group(plan, "pots", List.of("B1", "Z9")), GROUPS),
        wrong("a pot in two groups", plan -> group(plan, "pots", List.of("B1", "A1")), GROUPS),
        wrong("a group without pots", plan -> group(plan, "pots", List.of()), GROUPS),
        wrong("a group without room", plan -> group(plan, "siteCm2", 0.0), GROUPS),
        wrong("a site larger than the tray", plan -> group(plan, "siteCm2", 1100.0), GROUPS));
  }

  private static List<Wrong> batches() {
    return List.of(
        wrong("a name used twice", plan -> batch(plan, "B02", b -> with(b, "batch", "B01")), BATCH),
        wrong(
            "batches out of order", plan -> with(plan, "sowings", reversed(plan.sowings())), BATCH),
        wrong(
            "a batch without plants",
            plan -> batch(plan, "B04", b -> with(b, "courses", List.of())),
            Set.of(BATCH),
            HARVEST,
            SUPPLY),
        wrong(
            "a crop that grows in trays",
            plan -> batch(plan, "B04", b -> with(b, "crop", "garden cress")),
            Set.of(CROP),
            SUPPLY),
        wrong(
            "a crop that is not wanted",
            plan -> batch(plan, "B04", b -> with(b, "crop", "parsley")),
            Set.of(CROP),
            EMERGENCE,
            CERTAINTY,
            PICK_MASS,
            PICK_GRAMS,
            CLEARED_GRAMS,
            SUPPLY),
        wrong(
            "a sowing on a Sunday",
            plan -> batch(plan, "B05", b -> with(b, "date", day(1, 31))),
            Set.of(SOWING_DAY, EMERGENCE)),
        wrong(
            "a seed for each cell where three share one",
            plan -> batch(plan, "B02", b -> with(b, "seeds", 2)),
            SEEDS),
        wrong(
            "fewer cells than plants",
            plan -> batch(plan, "B01", b -> with(with(b, "cells", 1), "seeds", 1)),
            Set.of(SEEDS, CERTAINTY)),
        wrong(
            "one cell short of nine chances in ten",
            plan -> batch(plan, "B01", b -> with(with(b, "cells", 3), "seeds", 3)),
            CERTAINTY),
        wrong(
            "seedlings a day late",
            plan -> batch(plan, "B05", b -> with(b, "emergence", day(2, 4))),
            Set.of(EMERGENCE, PICK_GRAMS)));
  }

  private static List<Wrong> moves() {
    return List.of(
        wrong(
            "to the nursery on a Sunday",
            plan -> course(plan, "B05", c -> with(c, "toNursery", day(2, 7))),
            Set.of(TO_NURSERY),
            PICK_GRAMS),
        wrong(
            "to the nursery before emergence",
            plan -> course(plan, "B01", c -> with(c, "toNursery", day(1, 9))),
            TO_NURSERY),
        wrong(
            "to the bench on a Sunday",
            plan -> course(plan, "B02", c -> with(c, "toBench", day(1, 31))),
            Set.of(TO_BENCH, PICK_GRAMS)),
        wrong(
            "to the bench six days old",
            plan -> course(plan, "B03", c -> with(c, "toBench", day(1, 23))),
            Set.of(TO_BENCH, PICK_GRAMS)),
        wrong(
            "to the bench 41 days old",
            plan -> course(plan, "B03", c -> with(c, "toBench", day(2, 27))),
            Set.of(TO_BENCH, PICK_GRAMS),
            LIFT_MASS),
        wrong(
            "to the bench before the nursery",
            plan -> course(plan, "B03", c -> with(c, "toNursery", day(2, 10))),
            Set.of(TO_BENCH),
            CELLS),
        wrong(
            "standing past the plan's last day",
            plan -> course(plan, "B04", c -> with(c, "end", day(4, 3))),
            Set.of(END, CLEARING)),
        wrong(
            "no day on the bench",
            plan -> course(plan, "B03", c -> with(c, "end", day(2, 3))),
            Set.of(END, LIFT, PICK_DAY)),
        wrong(
            "cleared on a Thursday",
            plan -> course(plan, "B04", c -> with(c, "end", day(3, 25))),
            Set.of(CLEARING, CLEARED_GRAMS)),
        wrong(
            "rocket older than 50 days",
            plan ->
                pick(
                    course(plan, "B02", c -> with(c, "end", day(3, 13))),
                    "B02",
                    day(2, 27),
                    p -> with(p, "date", day(3, 13))),
            Set.of(LAST_DAY, PICK_GRAMS),
            HARVEST,
            SUPPLY));
  }

  private static List<Wrong> pots() {
    return List.of(
        wrong(
            "a plant without a pot",
            plan -> course(plan, "B03", c -> with(c, "pots", List.of())),
            POT_NAMES),
        wrong(
            "one pot for two plants",
            plan -> course(plan, "B03", c -> with(c, "pots", List.of("A3", "A3"))),
            Set.of(POT_NAMES),
            POT_TAKEN),
        wrong(
            "a pot that is not there",
            plan -> course(plan, "B03", c -> with(c, "pots", List.of("A9"))),
            POT_NAMES),
        wrong(
            "a pot of another group",
            plan -> course(plan, "B01", c -> with(c, "pots", List.of("B1"))),
            Set.of(POT_NAMES),
            POT_TAKEN),
        wrong(
            "a group that is not there",
            plan -> course(plan, "B03", c -> with(c, "group", 2)),
            POT_NAMES),
        wrong(
            "a pot still taken",
            plan -> course(plan, "B05", c -> with(c, "pots", List.of("A2"))),
            POT_TAKEN));
  }

  private static List<Wrong> picks() {
    return List.of(
        wrong(
            "a pick on a Wednesday",
            plan -> pick(plan, "B04", day(3, 20), p -> with(p, "date", day(3, 24))),
            Set.of(PICK_DAY, PICK_GRAMS),
            CLEARED_GRAMS,
            HARVEST,
            SUPPLY),
        wrong(
            "a pick while everybody is away",
            plan -> pick(plan, "B02", day(2, 13), p -> with(p, "date", day(2, 20))),
            Set.of(PICK_DAY, PICK_GRAMS),
            HARVEST,
            SUPPLY),
        wrong(
            "a pick before the bench",
            plan -> course(plan, "B02", c -> with(c, "toBench", day(2, 10))),
            Set.of(PICK_DAY),
            PICK_MASS,
            PICK_GRAMS,
            PLACES),
        wrong(
            "leaves from a crisphead",
            plan -> addPick(plan, "B03", new Pick(day(2, 27), 0.1, 10)),
            Set.of(PICK_KIND),
            PICK_GRAMS,
            HARVEST),
        wrong(
            "a pick 21 days after emergence",
            plan -> batch(plan, "B02", b -> with(b, "emergence", day(1, 16))),
            Set.of(PICK_AGE, EMERGENCE, PICK_GRAMS)),
        wrong(
            "a pick from 2 g of basil",
            plan -> addPick(plan, "B04", new Pick(day(2, 13), 0.1, 0.1)),
            Set.of(PICK_MASS),
            PICK_GRAMS,
            CLEARED_GRAMS,
            HARVEST),
        wrong(
            "41 percent of the leaves",
            plan -> pick(plan, "B05", day(3, 13), p -> with(p, "share", 0.41)),
            Set.of(PICK_SHARE, PICK_GRAMS)),
        wrong(
            "a pick of nothing",
            plan -> pick(plan, "B05", day(3, 13), p -> with(p, "share", 0.0)),
            Set.of(PICK_SHARE, PICK_GRAMS)),
        wrong(
            "picks out of order",
            plan -> course(plan, "B04", c -> with(c, "picks", reversed(c.picks()))),
            PICK_INTERVAL),
        wrong(
            "two picks four days apart",
            plan -> pick(plan, "B04", day(3, 20), p -> with(p, "date", day(3, 17))),
            Set.of(PICK_INTERVAL, PICK_DAY, LEAF_FLOOR),
            PICK_GRAMS,
            CLEARED_GRAMS,
            HARVEST,
            SUPPLY),
        wrong(
            "a lift that leaves a hundredth",
            plan -> pick(plan, "B05", day(3, 27), p -> with(p, "share", 0.99)),
            Set.of(LIFT, PICK_GRAMS)),
        wrong(
            "a lift that is not recorded",
            plan -> course(plan, "B03", c -> with(c, "picks", List.of())),
            Set.of(LIFT),
            HARVEST,
            SUPPLY),
        wrong(
            "a crisphead lifted at 184 g",
            plan ->
                pick(
                    course(plan, "B03", c -> with(c, "end", day(2, 27))),
                    "B03",
                    day(3, 13),
                    p -> with(p, "date", day(2, 27))),
            Set.of(LIFT_MASS, PICK_GRAMS),
            HARVEST,
            SUPPLY));
  }

  private static List<Wrong> grams() {
    return List.of(
        wrong(
            "a milligram too much in a pick",
            plan -> pick(plan, "B05", day(3, 13), p -> with(p, "gramsPerPlant", 56.900922371)),
            Set.of(PICK_GRAMS),
            HARVEST),
        wrong(
            "grams of the fresh, not the edible mass",
            plan -> pick(plan, "B03", day(3, 13), p -> with(p, "gramsPerPlant", 306.669431300)),
            Set.of(PICK_GRAMS),
            HARVEST),
        wrong(
            "a milligram too little cleared away",
            plan -> course(plan, "B04", c -> with(c, "clearedGrams", 25.596614863)),
            CLEARED_GRAMS),
        wrong(
            "something cleared away after the lift",
            plan -> course(plan, "B03", c -> with(c, "clearedGrams", 1.0)),
            CLEARED_GRAMS));
  }

  private static List<Wrong> bowls() {
    return List.of(
        wrong(
            "a gram too much harvested",
            plan -> week(plan, day(3, 20), w -> with(w, "harvestGrams", 7.721845348)),
            HARVEST),
        wrong(
            "two plants counted as one",
            plan ->
                course(plan, "B03", c -> with(with(c, "plants", 2), "pots", List.of("A3", "A4"))),
            Set.of(HARVEST, CERTAINTY),
            PLACES),
        wrong(
            "a bowl smaller than its kinds",
            plan -> week(plan, day(2, 27), w -> with(w, "plannedGrams", 159.0)),
            KINDS),
        wrong(
            "kinds with the least first",
            plan -> week(plan, day(2, 27), w -> with(w, "kinds", reversed(w.kinds()))),
            KINDS),
        wrong(
            "a kind named twice",
            plan -> eaten(plan, day(2, 27), kind(LETTUCE, 60), kind(LETTUCE, 50)),
            KINDS),
        wrong(
            "more rocket than was picked",
            plan -> eaten(plan, day(2, 6), kind(LETTUCE, 20), kind(ROCKET, 6.6)),
            SUPPLY),
        wrong(
            "basil a week old",
            plan -> eaten(plan, day(3, 27), kind(LETTUCE, 150), kind(BASIL, 0.5)),
            SUPPLY),
        wrong(
            "crisphead two weeks old",
            plan -> eaten(plan, day(3, 27), kind(LETTUCE, 150), kind(CRISPHEAD, 10)),
            SUPPLY),
        wrong(
            "the same crisphead eaten twice",
            plan -> eaten(plan, day(3, 20), kind(CRISPHEAD, 156)),
            plan -> eaten(plan, day(3, 13), kind(CRISPHEAD, 90), kind(LETTUCE, 48)),
            SUPPLY),
        wrong(
            "more than demand and margin",
            plan -> eaten(plan, day(3, 27), kind(LETTUCE, 161.2)),
            BOWL_SIZE),
        wrong(
            "a bowl while everybody is away",
            plan -> eaten(plan, day(2, 20), kind(LETTUCE, 5)),
            BOWL_SIZE));
  }

  private static List<Wrong> reach() {
    return List.of(
        wrong(
            "in reach a week too soon",
            plan -> week(plan, day(1, 30), w -> with(w, "reachable", true)),
            REACHABLE),
        wrong(
            "out of reach a week too long",
            plan -> week(plan, day(2, 13), w -> with(w, "reachable", false)),
            REACHABLE),
        wrong(
            "a bowl out of reach that is not empty",
            plan -> week(plan, day(2, 6), w -> with(w, "reachable", false)),
            REACHABLE));
  }

  @Test
  void cellsAndPlacesMustHoldTheBusiestDay() {
    Household household = ExamplePlan.household();
    assertThat(faults(with(household, "nursery", with(household.nursery(), "cells", 5))))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.rule()).isEqualTo(CELLS);
              assertThat(fault.found()).isEqualTo("6");
            });
    assertThat(faults(with(household, "nursery", with(household.nursery(), "places", 4))))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.rule()).isEqualTo(PLACES);
              assertThat(fault.where()).isEqualTo("day 2027-01-23");
              assertThat(fault.found()).isEqualTo("5");
            });
  }

  @Test
  void anAvoidedCropIsAFault() {
    Household household = ExamplePlan.household();
    Household avoiding =
        with(household, "crops", with(household.crops(), "avoid", List.of("Crisphead-Lettuce")));
    assertThat(faults(avoiding)).extracting(Fault::rule).containsExactly(CROP);
  }

  @Test
  void aHouseholdWithTooFewCellsForOnePlantMaySowWhatItHas() {
    Household household = ExamplePlan.household();
    SowingPlan plan = ExamplePlan.plan();
    SowingPlan one =
        with(plan, "sowings", List.of(with(with(plan.sowings().get(4), "cells", 1), "seeds", 1)));
    SowingPlan alone =
        costing(with(one, "weeks", onlyLateLettuce(plan.weeks())), 931.5, 281.408286586, 1.25);
    Household oneCell = with(household, "nursery", with(household.nursery(), "cells", 1));
    assertThat(verdict(alone, household).faults())
        .extracting(Fault::rule)
        .containsExactly(CERTAINTY);
    assertThat(verdict(alone, oneCell).faults()).isEmpty();
  }

  /**
   * Rocket counts every degree day of a 16 hour day and must leave at 0.8 of 700 °C d. From 15
   * January to its end on 27 February there are 44 days: 560 / 44 = 12.73 °C d a day.
   */
  @Test
  void aPlantLeavesOnTheDayItsBoltingSumReachesTheLimit() {
    assertThat(faultsInLongDays(12.8)).isEmpty();
    assertThat(faultsInLongDays(560 / 43.0 + 0.01))
        .extracting(Fault::rule)
        .containsExactly(LAST_DAY);
  }

  @Test
  void aPlanMayCallOneBowlOutOfReachThatIsNot() {
    assertThat(emptyPlan(day(2, 6)).notes()).isEmpty();
    assertThat(emptyPlan(day(2, 6)).faults()).isEmpty();
    assertThat(emptyPlan(day(2, 13)).notes()).extracting(Fault::rule).containsExactly(REACHABLE);
    assertThat(emptyPlan(day(2, 13)).faults()).isEmpty();
    assertThat(emptyPlan(day(2, 20)).faults()).extracting(Fault::rule).containsExactly(REACHABLE);
  }

  @Test
  void aPlanWithoutBowlsIsAFault() {
    SowingPlan plan = with(ExamplePlan.plan(), "weeks", List.of());
    assertThat(PlanChecker.check(plan, ExamplePlan.household(), CATALOGUE))
        .extracting(Fault::rule)
        .containsExactly(BOWL_DAYS);
  }

  /** The example's room has neither window nor lamp; here the nursery is dark as well. */
  @Test
  void nothingIsWithinReachInTheDark() {
    Household household = ExamplePlan.household();
    Household dark = with(household, "nursery", with(household.nursery(), "ppfdUmol", 0.0));
    assertThat(PlanChecker.check(nothingSown(LocalDate.MAX), dark, CATALOGUE)).isEmpty();
    assertThat(PlanChecker.check(nothingSown(day(3, 27)), dark, CATALOGUE))
        .extracting(Fault::rule)
        .containsExactly(REACHABLE);
  }

  @Test
  void aFaultReadsAsASentence() {
    Fault fault = Fault.above(CELLS, "day 2027-01-13", "in use", 5, 6);
    assertThat(fault)
        .hasToString(
            "CELLS at day 2027-01-13: in use should be at most 5, is 6. "
                + "No more cells are in use than the nursery has.");
  }

  private static Wrong wrong(String what, UnaryOperator<SowingPlan> edit, Rule broken) {
    return wrong(what, edit, Set.of(broken));
  }

  private static Wrong wrong(
      String what, UnaryOperator<SowingPlan> edit, Set<Rule> broken, Rule... follows) {
    return new Wrong(what, edit, broken, Set.copyOf(Arrays.asList(follows)));
  }

  private static Wrong wrong(
      String what, UnaryOperator<SowingPlan> first, UnaryOperator<SowingPlan> second, Rule broken) {
    return wrong(what, plan -> second.apply(first.apply(plan)), broken);
  }

  private static List<BowlWeek> firstTwoSwapped(List<BowlWeek> weeks) {
    return Stream.concat(reversed(weeks.subList(0, 2)).stream(), weeks.stream().skip(2)).toList();
  }

  private static SowingPlan group(SowingPlan plan, String component, Object value) {
    PotGroup dim = with(plan.groups().get(1), component, value);
    return with(plan, "groups", List.of(plan.groups().get(0), dim));
  }

  private static SowingPlan addPick(SowingPlan plan, String batch, Pick pick) {
    UnaryOperator<Course> edit =
        course ->
            with(course, "picks", Stream.concat(Stream.of(pick), course.picks().stream()).toList());
    return course(plan, batch, edit);
  }

  private static SowingPlan eaten(SowingPlan plan, LocalDate bowlDay, BowlWeek.Kind... kinds) {
    double sum = Arrays.stream(kinds).mapToDouble(BowlWeek.Kind::grams).sum();
    return week(
        plan, bowlDay, week -> with(with(week, "kinds", List.of(kinds)), "plannedGrams", sum));
  }

  /** The weeks of the example when only its last batch is sown. */
  private static List<BowlWeek> onlyLateLettuce(List<BowlWeek> weeks) {
    return weeks.stream()
        .map(
            week -> {
              double grams =
                  week.bowlDay().equals(day(3, 13))
                      ? 56.899922371
                      : week.bowlDay().equals(day(3, 27)) ? 224.508364215 : 0;
              return with(
                  with(with(week, "kinds", List.of()), "plannedGrams", 0.0), "harvestGrams", grams);
            })
        .toList();
  }

  /** The example without any sowing, its bowls within reach from a day on. */
  private static SowingPlan nothingSown(LocalDate reachableFrom) {
    List<BowlWeek> weeks =
        ExamplePlan.plan().weeks().stream()
            .map(
                week ->
                    new BowlWeek(
                        week.bowlDay(),
                        week.demandGrams(),
                        !week.bowlDay().isBefore(reachableFrom),
                        0,
                        0,
                        List.of(),
                        List.of()))
            .toList();
    double wanted =
        weeks.stream().filter(BowlWeek::reachable).mapToDouble(BowlWeek::demandGrams).sum();
    SowingPlan empty = with(with(ExamplePlan.plan(), "weeks", weeks), "sowings", List.of());
    return costing(empty, 1.15 * wanted, 0, 0);
  }

  /** A plan that says it costs grams missing, grams wasted and seeds. */
  private static SowingPlan costing(SowingPlan plan, double shortG, double wasteG, double seeds) {
    double points = 10 * shortG + 2 * wasteG + 15 * seeds;
    return with(
        plan, "objective", new Objective(points, Double.NaN, shortG, wasteG, 0, 0, seeds, 0));
  }

  private static Verdict emptyPlan(LocalDate reachableFrom) {
    return verdict(nothingSown(reachableFrom), ExamplePlan.household());
  }

  private static List<Fault> faults(Household household) {
    return verdict(ExamplePlan.plan(), household).faults();
  }

  private static List<Fault> faultsInLongDays(double boltingHeatCd) {
    return verdict(ExamplePlan.plan(), ExamplePlan.household(), 16, boltingHeatCd).faults();
  }

  private static Verdict verdict(SowingPlan plan, Household household) {
    return verdict(plan, household, 12, 14);
  }

  private static Verdict verdict(
      SowingPlan plan, Household household, double photoperiodHours, double boltingHeatCd) {
    HomeCalendar calendar = new HomeCalendar(household, plan.from(), plan.weeks().size());
    Surroundings surroundings =
        new DriftingSurroundings(plan.from(), calendar.days(), photoperiodHours, boltingHeatCd);
    return PlanChecker.examine(
        new Subject(plan, household, CATALOGUE, Present.NOTHING, calendar, surroundings));
  }
}
