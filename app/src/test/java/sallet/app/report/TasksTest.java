package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;

class TasksTest {
  private static final SowingPlan PLAN = PorchPlan.plan();
  private static final List<Task> TASKS = Tasks.of(PLAN);

  private static List<String> on(int week) {
    return TASKS.stream()
        .filter(t -> t.date().equals(PorchPlan.bowl(week)))
        .map(Task::text)
        .toList();
  }

  @Test
  void theFirstDayIsSowing() {
    assertThat(on(0))
        .containsExactly(
            "Sow 6 seeds of mizuna, one a cell, 6 cells (batch B01).",
            "Sow 4 seeds of green loose-leaf lettuce, one a cell, 4 cells (batch B02).",
            "Sow 4 seeds of Swiss chard, one a cell, 4 cells (batch B03).");
  }

  @Test
  void clumpsAreSownSeveralToACellAndMovedAsClumps() {
    assertThat(on(1)).contains("Sow 9 seeds of salad rocket, 3 a cell, 3 cells (batch B04).");
    assertThat(on(3))
        .contains("Move the 2 strongest clumps of salad rocket from cell to nursery (batch B04).");
    assertThat(on(4))
        .contains("Move 2 clumps of salad rocket from the nursery into B4 and B5 (batch B04).");
  }

  @Test
  void aFullDayIsListedSoThatEachStepFindsItsPlaceFree() {
    assertThat(on(14))
        .containsExactly(
            "Lift B2 and B3 (Swiss chard, about 140 g); free B2 and B3 for Swiss chard today.",
            "Lift B4, B5 and B6 (spinach, about 90 g).",
            "Move 2 seedlings of Swiss chard from the nursery into B2 and B3 (batch B11).",
            "Move 3 seedlings of butterhead lettuce from the nursery into C4, A3 and A6 (batch"
                + " B12).",
            "Pick outer leaves from C5, C6 and B1 (cos (romaine) lettuce): about 36 g each, 108 g"
                + " in all, no more than 40 % of the leaf.",
            "Pick outer leaves from C1, C2 and C3 (green loose-leaf lettuce): about 26 g each, 78 g"
                + " in all, no more than 40 % of the leaf.");
  }

  @Test
  void aPlantPastItsTimeIsClearedAndItsWasteNamed() {
    Task clear =
        TASKS.stream().filter(t -> t.event() == Task.Event.CLEAR).findFirst().orElseThrow();

    assertThat(clear.text())
        .isEqualTo(
            "Clear B4 and B5 (salad rocket, no longer needed, about 24 g are left: eat what you can, compost the rest); free B4"
                + " and B5 for spinach today.");
    assertThat(clear.event().journalWord()).isEqualTo("lost");
    assertThat(clear.grams()).isZero();
  }

  @Test
  void aLastPickFromAPlantClearedThatDayComesBeforeTheClearing() {
    LocalDate day = PorchPlan.bowl(6);
    Sowing.Course course =
        new Sowing.Course(
            1,
            PorchPlan.bowl(1),
            PorchPlan.bowl(3),
            0,
            List.of("A1"),
            List.of(new Sowing.Pick(day, 0.4, 20)),
            day,
            false,
            5);
    Sowing sowing =
        new Sowing(
            "X", PorchPlan.FROM, "mizuna", 1, 1, PorchPlan.FROM.plusDays(5), List.of(course));

    assertThat(Tasks.of(with(List.of(sowing))).stream().map(Task::event))
        .containsExactly(
            Task.Event.SOW,
            Task.Event.MOVE_TO_NURSERY,
            Task.Event.MOVE_TO_POT,
            Task.Event.PICK,
            Task.Event.CLEAR);
  }

  /** Law: done one after another as listed, no task meets a full place or a missing plant. */
  @Test
  void theListCanBeCarriedOutFromTopToBottom() {
    Map<String, String> pots = new HashMap<>();
    Map<String, Integer> inNursery = new HashMap<>();
    LocalDate last = LocalDate.MIN;
    for (Task task : TASKS) {
      assertThat(task.date()).as(task.text()).isAfterOrEqualTo(last);
      last = task.date();
      List<String> places = List.of(task.place().split("\\+"));
      switch (task.event()) {
        case SOW -> assertThat(inNursery).doesNotContainKey(task.batch());
        case MOVE_TO_NURSERY -> inNursery.merge(task.batch(), task.count(), Integer::sum);
        case MOVE_TO_POT -> {
          assertThat(places).as(task.text()).hasSize(task.count());
          for (String pot : places) {
            assertThat(pots.put(pot, task.batch())).as(task.text()).isNull();
          }
          inNursery.merge(task.batch(), -task.count(), Integer::sum);
          assertThat(inNursery.get(task.batch())).as(task.text()).isNotNegative();
        }
        case PICK -> places.forEach(pot -> assertThat(pots).containsEntry(pot, task.batch()));
        case LIFT, CLEAR ->
            places.forEach(pot -> assertThat(pots.remove(pot, task.batch())).isTrue());
      }
    }
    assertThat(pots).isEmpty();
    assertThat(inNursery.values()).containsOnly(0);
  }

  /** Law: the tasks of a bowl day bring in what the plan says is harvested that day. */
  @Test
  void gramsOfTheTasksAreTheHarvestOfThePlan() {
    Map<LocalDate, Double> grams =
        TASKS.stream()
            .collect(
                Collectors.groupingBy(
                    Task::date, TreeMap::new, Collectors.summingDouble(Task::grams)));
    PLAN.weeks()
        .forEach(
            week ->
                assertThat(grams.getOrDefault(week.bowlDay(), 0.0))
                    .isCloseTo(week.harvestGrams(), within(1e-9)));
  }

  @Test
  void aSeedlingThatCameUpDuringAnAbsenceGoesStraightToItsPot() {
    LocalDate sown = PLAN.from();
    LocalDate back = sown.plusDays(24);
    Sowing.Course course =
        new Sowing.Course(
            2,
            back,
            back,
            0,
            List.of("A1", "A2"),
            List.of(new Sowing.Pick(back.plusDays(28), 1, 80)),
            back.plusDays(28),
            true,
            0);
    Sowing sowing = new Sowing("B99", sown, "mizuna", 4, 4, sown.plusDays(4), List.of(course));
    assertThat(Tasks.of(with(List.of(sowing))).stream().map(Task::text))
        .containsExactly(
            "Sow 4 seeds of mizuna, one a cell, 4 cells (batch B99).",
            "Move 2 seedlings of mizuna from the cells into A1 and A2 (batch B99).",
            "Lift A1 and A2 (mizuna, about 160 g).");
  }

  private static SowingPlan with(List<Sowing> sowings) {
    return new SowingPlan(
        PLAN.from(),
        PLAN.taskDays(),
        PLAN.margin(),
        PLAN.weeks(),
        List.of(),
        sowings,
        List.of(),
        PLAN.objective(),
        PLAN.solver(),
        PLAN.groups(),
        List.of(),
        List.of());
  }
}
