package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.journal.Journal;
import sallet.learn.Standing;
import sallet.plan.LastPlan;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;
import sallet.plan.WhatIf;

/** How a plan that goes on from what stands is told. */
class GoingOnTest {
  private static final SowingPlan BASE = PorchPlan.plan();
  private static final LocalDate TODAY = BASE.from();
  private static final Household HOUSEHOLD = PorchPlan.household();
  private static final Catalogue CATALOGUE = PorchPlan.catalogue();

  private static SowingPlan plan(List<Sowing> standing) {
    return new SowingPlan(
        TODAY,
        BASE.taskDays(),
        BASE.margin(),
        BASE.weeks(),
        standing,
        BASE.sowings(),
        List.of(
            new SowingPlan.PickNow(
                TODAY, "A1", "old", "mizuna", 41.2, true, "it is about to run to seed"),
            new SowingPlan.PickNow(
                TODAY, "A2", "old", "mizuna", 12.4, false, "40 % of its leaf now")),
        BASE.objective(),
        BASE.solver(),
        BASE.groups(),
        List.of(),
        List.of());
  }

  private static Sowing old(Sowing.Course course) {
    LocalDate sown = TODAY.minusDays(40);
    return new Sowing("old", sown, "mizuna", 0, 0, sown.plusDays(4), List.of(course));
  }

  private static Sowing.Course spare(List<String> pots) {
    return new Sowing.Course(
        Math.max(1, pots.size()),
        TODAY.minusDays(34),
        TODAY.minusDays(20),
        0,
        pots,
        List.of(),
        TODAY,
        false,
        30);
  }

  @Test
  void movesOfThePastAreNotAskedForAgain() {
    Sowing.Course lifted =
        new Sowing.Course(
            1,
            TODAY.minusDays(34),
            TODAY.minusDays(20),
            0,
            List.of("A1"),
            List.of(new Sowing.Pick(TODAY, 1, 41.2)),
            TODAY,
            true,
            0);

    List<Task> tasks =
        Tasks.of(plan(List.of(old(lifted)))).stream().filter(t -> t.batch().equals("old")).toList();

    assertThat(tasks).extracting(Task::text).containsExactly("Lift A1 (mizuna, about 41 g).");
  }

  @Test
  void aSparePlantStandsUntilItsPotIsWantedAndASpareSeedlingGoes() {
    String wanted = BASE.sowings().get(0).courses().get(0).pots().get(0);
    LocalDate moving =
        BASE.sowings().stream()
            .flatMap(s -> s.courses().stream())
            .filter(c -> c.pots().contains(wanted))
            .map(Sowing.Course::toBench)
            .min(LocalDate::compareTo)
            .orElseThrow();

    List<Task> tasks =
        Tasks.of(plan(List.of(old(spare(List.of(wanted)))))).stream()
            .filter(t -> t.batch().equals("old"))
            .toList();

    assertThat(tasks).hasSize(1);
    assertThat(tasks.get(0).date()).isEqualTo(moving);
    assertThat(tasks.get(0).text()).contains("Clear " + wanted).contains("reserve");

    assertThat(
            Tasks.of(plan(List.of(old(spare(List.of()))))).stream()
                .filter(t -> t.batch().equals("old"))
                .map(Task::text))
        .singleElement()
        .asString()
        .contains("Throw away 1 seedling");
  }

  @Test
  void textPageAndJsonTellWhatToPickAndWhatChanged() {
    Standing nothing = Standing.of(Journal.EMPTY, Catalogue.builtIn(), HOUSEHOLD, TODAY);
    PlanAnswer answer =
        new PlanAnswer(
            plan(List.of()),
            Optional.of(nothing),
            "basis",
            List.of("Sat 28 Nov: sow 3 cells of mizuna instead of 2."),
            List.of(
                new WhatIf.Bottleneck("one more pot", 12.34),
                new WhatIf.Bottleneck("one more cell", 0.01),
                new WhatIf.Bottleneck("no mizuna", -3.2)));

    String text = PlanText.of(answer, HOUSEHOLD, CATALOGUE);

    assertThat(text)
        .contains("THE NEXT BOWL, SAT 28 NOV")
        .contains("Lift all from A1 (mizuna): about 41 g; it is about to run to seed.")
        .contains("Pick 12 g from A2 (mizuna)")
        .contains("WHAT CHANGED SINCE THE LAST PLAN")
        .contains("sow 3 cells of mizuna instead of 2.")
        .contains("One more pot: brings 12.3 g of bowl a week.")
        .contains("No mizuna: costs 3.2 g of bowl a week.")
        .contains("Next to nothing either way: one more cell.");
    assertThat(PlanPage.of(answer, HOUSEHOLD, CATALOGUE, PorchPlan.light()))
        .contains("it is about to run to seed")
        .contains("sow 3 cells of mizuna instead of 2.")
        .contains("One more pot: brings 12.3");
    assertThat(PlanJson.of(answer, HOUSEHOLD, CATALOGUE))
        .contains("\"picksNow\"", "\"lift\" : true", "\"gramsPerWeek\" : 12.34");
  }

  @Test
  void changesNameSowingsAndWhatWasSeen() {
    Standing nothing = Standing.of(Journal.EMPTY, Catalogue.builtIn(), HOUSEHOLD, TODAY);
    Sowing first = BASE.sowings().get(0);
    LastPlan.Group less =
        new LastPlan.Group(
            first.batch(),
            false,
            first.crop(),
            first.date(),
            first.cells() - 1,
            first.courses().get(0).toBench(),
            "A1",
            first.courses().get(0).end(),
            true,
            1,
            Map.of());
    LastPlan last = new LastPlan(TODAY, List.of(less), Map.of(), Map.of(), "");

    List<String> told = Changes.of(BASE, last, nothing);

    assertThat(told.get(0))
        .contains("sow %d cells".formatted(first.cells()))
        .contains("instead of " + (first.cells() - 1));
    assertThat(told.get(told.size() - 1)).contains("Nothing new was seen");
  }
}
