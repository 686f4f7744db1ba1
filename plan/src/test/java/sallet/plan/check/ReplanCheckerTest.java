package sallet.plan.check;

import static org.assertj.core.api.Assertions.assertThat;
import static sallet.plan.check.Edit.with;
import static sallet.plan.check.ExamplePlan.FROM;
import static sallet.plan.check.ExamplePlan.day;
import static sallet.plan.check.ExampleReplan.CLUMP;
import static sallet.plan.check.ExampleReplan.OLD;
import static sallet.plan.check.ExampleReplan.YOUNG;
import static sallet.plan.check.Rule.*;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sallet.crop.Catalogue;
import sallet.crop.PlantState;
import sallet.plan.Present;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.SowingPlan;

/** The checker passes a good plan for a bench with plants on it and names what a bad one breaks. */
class ReplanCheckerTest {
  /**
   * A plan with one thing wrong, or the right plan for something else.
   *
   * @param what what is wrong, in words
   * @param plan how the plan is changed
   * @param present how what stands is changed
   * @param broken rules that must be named
   * @param follows rules that may be broken in its wake
   */
  record Wrong(
      String what,
      UnaryOperator<SowingPlan> plan,
      UnaryOperator<Present> present,
      Set<Rule> broken,
      Set<Rule> follows) {
    @Override
    public String toString() {
      return what;
    }
  }

  @Test
  void aPlanThatGoesOnFromWhatStandsHasNoFaultsAndNoNotes() {
    Verdict verdict = verdict(ExampleReplan.plan(), ExampleReplan.present());
    assertThat(verdict.faults()).isEmpty();
    assertThat(verdict.notes()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("wrongPlans")
  void aWrongPlanIsCaughtByTheRightRule(Wrong wrong) {
    SowingPlan plan = wrong.plan().apply(ExampleReplan.plan());
    List<Fault> faults = verdict(plan, wrong.present().apply(ExampleReplan.present())).faults();
    Set<Rule> rules = faults.stream().map(Fault::rule).collect(Collectors.toSet());
    assertThat(rules).as("%s", faults).containsAll(wrong.broken());
    rules.removeAll(wrong.broken());
    rules.removeAll(wrong.follows());
    assertThat(rules).as("%s", faults).isEmpty();
  }

  static Stream<Wrong> wrongPlans() {
    return Stream.of(accounts(), places(), growth(), costs()).flatMap(List::stream);
  }

  private static List<Wrong> accounts() {
    return List.of(
        wrong(
            "a plant forgotten",
            plan -> standing(plan, YOUNG, b -> with(b, "courses", b.courses().subList(0, 1))),
            Set.of(STANDING)),
        wrong(
            "a plant told twice",
            plan -> standing(plan, YOUNG, b -> with(b, "courses", twice(b.courses()))),
            Set.of(STANDING)),
        wrong(
            "one plant more than stands",
            plan -> course(plan, YOUNG, 1, c -> with(c, "plants", 2)),
            Set.of(STANDING)),
        wrong(
            "a batch that does not stand",
            plan -> standing(plan, CLUMP, b -> with(b, "batch", "other")),
            Set.of(STANDING)),
        wrong(
            "a batch of another day",
            plan -> standing(plan, CLUMP, b -> with(b, "date", day(1, 1))),
            Set.of(STANDING)),
        wrong(
            "seeds for plants that stand",
            plan -> standing(plan, OLD, b -> with(b, "seeds", 2)),
            Set.of(STANDING)),
        wrong(
            "a new batch named like one that stands",
            plan -> with(plan, "sowings", List.of(with(plan.sowings().get(0), "batch", OLD))),
            Set.of(BATCH)));
  }

  private static List<Wrong> places() {
    return List.of(
        wrong(
            "a plant in another pot",
            plan -> course(plan, OLD, 0, c -> with(c, "pots", List.of("A4"))),
            Set.of(STANDING)),
        wrong(
            "a plant that comes to its pot again",
            plan -> course(plan, OLD, 0, c -> with(c, "toBench", day(1, 6))),
            Set.of(STAYS),
            PICK_GRAMS),
        wrong(
            "a clump that leaves its cell again",
            plan -> course(plan, CLUMP, 0, c -> with(c, "toNursery", LocalDate.of(2026, 12, 30))),
            Set.of(STAYS)),
        wrong(
            "a pot cleared without its name",
            plan -> course(plan, OLD, 1, c -> with(c, "pots", List.of())),
            Set.of(STAYS)),
        wrong(
            "a clump moved on a Thursday",
            plan -> course(plan, CLUMP, 0, c -> with(c, "toBench", day(1, 7))),
            Set.of(TO_BENCH, PICK_GRAMS)),
        wrong(
            "a seedling moved before it is up",
            plan -> course(plan, YOUNG, 0, c -> with(c, "toNursery", day(1, 6))),
            present -> plants(present, YOUNG, p -> with(p, "emergence", day(1, 7))),
            Set.of(TO_NURSERY, STANDING),
            TO_BENCH),
        wrong(
            "a pot that something else grows in",
            plan -> plan,
            present -> with(present, "otherPots", List.of("A3")),
            Set.of(POT_TAKEN)),
        wrong(
            "a crop that cannot be planned told as if it could",
            plan -> plan,
            present -> plants(present, CLUMP, p -> with(p, "crop", "garden cress")),
            Set.of(STANDING)),
        wrong(
            "a pot taken while a plant stands in it",
            plan ->
                course(
                    course(plan, YOUNG, 0, c -> with(c, "pots", List.of("B1"))),
                    YOUNG,
                    0,
                    c -> with(c, "group", 1)),
            Set.of(POT_TAKEN)),
        wrong(
            "more cells than there are, with those of a batch that stands",
            plan -> plan,
            present -> plants(present, YOUNG, p -> with(p, "cells", 5)),
            Set.of(CELLS)),
        wrong(
            "more nursery places than there are",
            plan -> course(plan, CLUMP, 0, c -> with(c, "plants", 6)),
            present -> plants(present, CLUMP, p -> with(p, "count", 6)),
            Set.of(PLACES),
            POT_NAMES,
            HARVEST,
            OBJECTIVE));
  }

  private static List<Wrong> growth() {
    return List.of(
        wrong(
            "another vigour",
            plan -> plan,
            present -> plants(present, OLD, p -> with(p, "vigour", 0.85)),
            Set.of(PICK_GRAMS)),
        wrong(
            "a larger plant",
            plan -> plan,
            present ->
                plants(present, OLD, p -> with(p, "state", new PlantState(7, 0.8, 0.5, 1500, 18))),
            Set.of(PICK_GRAMS, CLEARED_GRAMS)),
        wrong(
            "a pick that leaves four leaves",
            plan -> plan,
            present ->
                plants(present, OLD, p -> with(p, "state", new PlantState(6, 0.8, 0.5, 1500, 3))),
            Set.of(LEAF_FLOOR)),
        wrong(
            "a pick before the rest is over",
            plan -> plan,
            present -> plants(present, OLD, p -> with(p, "lastPick", Optional.of(day(1, 5)))),
            Set.of(REST),
            OBJECTIVE),
        wrong(
            "a plant kept past its time for more than a week",
            plan -> plan,
            present ->
                plants(
                    with(present, "plants", List.copyOf(present.plants())),
                    OLD,
                    p ->
                        with(
                            with(p, "emergence", LocalDate.of(2026, 10, 20)),
                            "sown",
                            LocalDate.of(2026, 10, 16))),
            Set.of(LAST_DAY, STANDING),
            PICK_GRAMS,
            CLEARED_GRAMS),
        wrong(
            "less cleared than stands",
            plan -> course(plan, OLD, 1, c -> with(c, "clearedGrams", 140.0)),
            Set.of(CLEARED_GRAMS),
            OBJECTIVE),
        wrong(
            "leaves of what has not come up",
            plan -> course(plan, YOUNG, 1, c -> with(c, "clearedGrams", 1.0)),
            Set.of(CLEARED_GRAMS),
            OBJECTIVE));
  }

  private static List<Wrong> costs() {
    return List.of(
        wrong(
            "the fridge counted as harvest",
            plan ->
                with(
                    plan,
                    "weeks",
                    Edit.replaced(
                        plan.weeks(),
                        w -> w.bowlDay().equals(day(1, 9)),
                        w -> with(w, "harvestGrams", 88.714357964))),
            Set.of(HARVEST)),
        wrong(
            "the fridge was empty",
            plan -> plan,
            present -> with(present, "inHandGrams", Map.of()),
            Set.of(SUPPLY),
            OBJECTIVE),
        objective("shortGrams", 330.0),
        objective("wasteGrams", 170.0),
        objective("oneKindGrams", 0.0),
        objective("carriedGrams", 79.0),
        objective("seeds", 1.0),
        objective("changes", 0),
        objective("value", 3788.0),
        wrong(
            "a firm promise broken for ten points",
            plan -> plan,
            present -> with(present, "firm", true),
            Set.of(OBJECTIVE)),
        wrong(
            "nothing had been promised",
            plan -> plan,
            present -> with(present, "promises", List.of()),
            Set.of(OBJECTIVE)));
  }

  private static Wrong objective(String term, Object value) {
    return wrong(
        "objective with wrong " + term,
        plan -> with(plan, "objective", with(plan.objective(), term, value)),
        Set.of(OBJECTIVE));
  }

  /** A seedling too old to move may still do so on the first task day, and not later. */
  @Test
  void aLateSeedlingMovesAtOnceOrNeverMore() {
    Present late =
        plants(
            ExampleReplan.present(),
            CLUMP,
            p ->
                with(
                    with(p, "emergence", LocalDate.of(2026, 11, 20)),
                    "sown",
                    LocalDate.of(2026, 11, 16)));
    assertThat(rules(ExampleReplan.plan(), late)).doesNotContain(TO_BENCH);
    assertThat(
            rules(course(ExampleReplan.plan(), CLUMP, 0, c -> with(c, "toBench", day(1, 9))), late))
        .contains(TO_BENCH);
  }

  private static Set<Rule> rules(SowingPlan plan, Present present) {
    return verdict(plan, present).faults().stream().map(Fault::rule).collect(Collectors.toSet());
  }

  private static List<Course> twice(List<Course> courses) {
    List<Course> more = new ArrayList<>(courses);
    more.add(courses.get(1));
    return more;
  }

  private static SowingPlan standing(SowingPlan plan, String batch, UnaryOperator<Sowing> edit) {
    return with(
        plan, "standing", Edit.replaced(plan.standing(), b -> b.batch().equals(batch), edit));
  }

  private static SowingPlan course(
      SowingPlan plan, String batch, int index, UnaryOperator<Course> edit) {
    return standing(
        plan,
        batch,
        b -> {
          List<Course> courses = new ArrayList<>(b.courses());
          courses.set(index, edit.apply(courses.get(index)));
          return with(b, "courses", courses);
        });
  }

  private static Present plants(Present present, String batch, UnaryOperator<Present.Plants> edit) {
    return with(
        present, "plants", Edit.replaced(present.plants(), p -> p.batch().equals(batch), edit));
  }

  private static Wrong wrong(
      String what, UnaryOperator<SowingPlan> plan, Set<Rule> broken, Rule... follows) {
    return wrong(what, plan, present -> present, broken, follows);
  }

  private static Wrong wrong(
      String what,
      UnaryOperator<SowingPlan> plan,
      UnaryOperator<Present> present,
      Set<Rule> broken,
      Rule... follows) {
    return new Wrong(what, plan, present, broken, Set.of(follows));
  }

  private static Verdict verdict(SowingPlan plan, Present present) {
    HomeCalendar calendar =
        new HomeCalendar(ExamplePlan.household(), plan.from(), plan.weeks().size());
    LocalDate first =
        present.plants().stream().map(Present.Plants::sown).min(LocalDate::compareTo).orElse(FROM);
    Surroundings surroundings =
        new DriftingSurroundings(
            first.isBefore(ExampleReplan.FIRST) ? first : ExampleReplan.FIRST,
            calendar.days() + 100,
            12,
            14);
    return PlanChecker.examine(
        new Subject(
            plan, ExamplePlan.household(), Catalogue.builtIn(), present, calendar, surroundings));
  }
}
