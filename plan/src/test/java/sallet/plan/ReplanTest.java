package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.crop.PlantState;
import sallet.household.Household;
import sallet.plan.linear.LinearSolver;

/** Plans that go on from what stands. */
class ReplanTest {
  private static final List<String> CROPS =
      List.of("loose-leaf lettuce, green", "mizuna", "Swiss chard");
  private static final LocalDate TODAY = Households.START.plusWeeks(7);
  private static final Household HOUSEHOLD = Households.bench(240, CROPS, List.of());

  /** A lettuce of about 100 g and six weeks, from the growth model's own units. */
  private static final PlantState HALF_GROWN = new PlantState(4, 0.8, 0.6, 900, 18);

  private static SowingPlan plan;

  @BeforeAll
  static void planFromWhatStands() {
    plan = planned(present(List.of()));
  }

  private static SowingPlan planned(Present present) {
    return Planner.plan(
        new Planner.Request(
            HOUSEHOLD,
            Catalogue.builtIn(),
            TODAY,
            10,
            1.15,
            present,
            Effort.counted(6),
            LinearSolver.NATIVE),
        step -> {});
  }

  private static Present present(List<Present.Promise> promises) {
    return new Present(
        List.of(
            onBench("old", 42, List.of("A1", "A2", "C6"), 0),
            onBench("picked", 42, List.of("B1"), 1),
            inNursery("young", 12, 3),
            inCells("seeds", 2)),
        List.of("B6"),
        Map.of("mizuna", 20.0),
        Map.of(),
        Map.of(),
        promises,
        !promises.isEmpty());
  }

  private static Present.Plants onBench(String batch, int age, List<String> pots, int picked) {
    LocalDate up = TODAY.minusDays(age);
    return new Present.Plants(
        batch,
        "loose-leaf lettuce, green",
        pots.size(),
        up.minusDays(5),
        up,
        Optional.of(up.plusDays(2)),
        Optional.of(up.plusDays(16)),
        pots,
        0,
        0.85,
        HALF_GROWN,
        picked > 0 ? Optional.of(TODAY.minusDays(picked)) : Optional.empty());
  }

  private static Present.Plants inNursery(String batch, int age, int count) {
    LocalDate up = TODAY.minusDays(age);
    return new Present.Plants(
        batch,
        "Swiss chard",
        count,
        up.minusDays(7),
        up,
        Optional.of(up.plusDays(2)),
        Optional.empty(),
        List.of(),
        0,
        0.85,
        new PlantState(0.05, 0.01, 0.01, 15, 4),
        Optional.empty());
  }

  private static Present.Plants inCells(String batch, int count) {
    return new Present.Plants(
        batch,
        "mizuna",
        count,
        TODAY.minusDays(2),
        TODAY.plusDays(2),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        3,
        0.85,
        HALF_GROWN,
        Optional.empty());
  }

  @Test
  void everyStandingPlantIsAccountedFor() {
    assertThat(plan.standing().stream().map(s -> s.batch() + " " + s.plants()))
        .containsExactly("old 3", "picked 1", "young 3", "seeds 2");
  }

  @Test
  void plantsOnTheBenchStayInTheirPotsAndNobodyElseMovesInBeforeTheyLeave() {
    record Stay(String pot, LocalDate from, LocalDate to) {}
    List<Stay> stays = new ArrayList<>();
    for (Sowing s : plan.batches()) {
      for (Sowing.Course c : s.courses()) {
        c.pots().forEach(pot -> stays.add(new Stay(pot, c.toBench(), c.end())));
      }
    }
    assertThat(pots("old")).containsExactlyInAnyOrder("A1", "A2", "C6");
    assertThat(pots("picked")).containsExactly("B1");
    assertThat(stays.stream().map(Stay::pot)).as("a pot held by other plants").doesNotContain("B6");
    for (int i = 0; i < stays.size(); i++) {
      for (int j = 0; j < i; j++) {
        Stay a = stays.get(i);
        Stay b = stays.get(j);
        assertThat(
                !a.pot().equals(b.pot())
                    || !a.from().isBefore(b.to())
                    || !b.from().isBefore(a.to()))
            .as("%s and %s", a, b)
            .isTrue();
      }
    }
  }

  private static List<String> pots(String batch) {
    return plan.standing().stream()
        .filter(s -> s.batch().equals(batch))
        .flatMap(s -> s.courses().stream().flatMap(c -> c.pots().stream()))
        .toList();
  }

  @Test
  void aPlantPickedYesterdayRestsAndGramsInHandComeIntoTheFirstBowl() {
    LocalDate bowl = plan.weeks().get(0).bowlDay();
    assertThat(
            plan.standing().stream()
                .filter(s -> s.batch().equals("picked"))
                .flatMap(s -> s.courses().stream().flatMap(c -> c.picks().stream()))
                .map(Sowing.Pick::date))
        .allMatch(day -> !day.isBefore(TODAY.plusDays(4)));
    assertThat(plan.weeks().get(0).kinds())
        .anySatisfy(
            kind -> {
              assertThat(kind.crop()).isEqualTo("mizuna");
              assertThat(kind.grams()).isCloseTo(20, within(0.1));
            });
    assertThat(plan.picksNow()).isNotEmpty().allMatch(p -> p.date().equals(bowl));
    assertThat(plan.picksNow())
        .extracting(SowingPlan.PickNow::place)
        .isSubsetOf("A1", "A2", "C6", "B1");
    assertThat(plan.picksNow()).allSatisfy(p -> assertThat(p.why()).isNotBlank());
  }

  @Test
  void noValueIsBelowTheBound() {
    assertThat(plan.objective().gridBound()).isLessThanOrEqualTo(plan.objective().value() + 1e-6);
  }

  @Test
  void aPlanMadeAgainChangesNothingOfTheComingWeek() {
    SowingPlan again = planned(present(UnchangedReplansTest.promises(plan)));
    assertThat(week(again)).isEqualTo(week(plan));
    assertThat(again.objective().changes()).isZero();
  }

  /** Sowings, moves and ends of the coming seven days. */
  private static List<String> week(SowingPlan plan) {
    LocalDate until = TODAY.plusDays(7);
    return plan.batches().stream()
        .flatMap(
            s ->
                Stream.concat(
                    Stream.of("sow %s %s %d".formatted(s.date(), s.crop(), s.plants())),
                    s.courses().stream()
                        .flatMap(
                            c ->
                                Stream.of(
                                    "move %s %s %d".formatted(c.toBench(), s.batch(), c.plants()),
                                    "end %s %s %s".formatted(c.end(), c.pots(), c.lifted())))))
        .filter(t -> IntStream.range(0, 7).anyMatch(d -> t.contains(TODAY.plusDays(d) + " ")))
        .filter(t -> !t.contains(until.toString()))
        .sorted()
        .toList();
  }

  @Test
  void whatStandsIsWorthSomething() {
    double empty =
        planned(
                new Present(
                    List.of(), List.of("B6"), Map.of(), Map.of(), Map.of(), List.of(), false))
            .weeks()
            .stream()
            .mapToDouble(BowlWeek::plannedGrams)
            .sum();
    double standing = plan.weeks().stream().mapToDouble(BowlWeek::plannedGrams).sum();
    assertThat(standing).isGreaterThan(empty + 200);
  }
}
