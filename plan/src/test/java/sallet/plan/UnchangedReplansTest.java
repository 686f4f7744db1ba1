package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.plan.RandomHouseholds.Wish;
import sallet.plan.check.Fault;
import sallet.plan.check.PlanChecker;
import sallet.plan.linear.LinearSolver;

/** A plan made again while nothing was recorded keeps every task of the coming seven days. */
class UnchangedReplansTest {
  private static final int HOUSEHOLDS = 60;
  private static final int DAYS = 7;
  private static final Catalogue CATALOGUE = Catalogue.builtIn();

  @Test
  void noTaskOfTheComingWeekChanges() {
    int tasks = 0;
    List<String> wrong = new ArrayList<>();
    for (long seed = 0; seed < HOUSEHOLDS; seed++) {
      Wish wish = RandomHouseholds.small(seed, CATALOGUE);
      Present present = RandomPresent.of(seed, wish, CATALOGUE);
      Optional<SowingPlan> first = plan(wish, present, 1);
      if (first.isEmpty()) {
        continue;
      }
      Present unchanged = keeping(present, promises(first.get()));
      SowingPlan again = plan(wish, unchanged, 3).orElseThrow();
      List<String> before = week(first.get());
      List<String> after = week(again);
      if (!after.equals(before)) {
        wrong.add("seed " + seed + "\n  before " + before + "\n  after  " + after);
      }
      tasks += before.size();
      if (again.objective().changes() > 0) {
        wrong.add("seed " + seed + ": " + again.objective().changes() + " changes");
      }
      for (Fault fault : PlanChecker.check(again, wish.household(), CATALOGUE, unchanged)) {
        wrong.add("seed " + seed + ": " + fault);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(tasks).as("tasks").isGreaterThan(HOUSEHOLDS);
  }

  private static Optional<SowingPlan> plan(Wish wish, Present present, int dives) {
    try {
      return Optional.of(
          Planner.plan(
              wish.request(CATALOGUE, present, Effort.counted(dives), LinearSolver.NATIVE),
              step -> {}));
    } catch (NoPlan e) {
      return Optional.empty();
    }
  }

  private static Present keeping(Present present, List<Present.Promise> promises) {
    return new Present(
        present.plants(),
        present.otherPots(),
        present.inHandGrams(),
        present.growthFactors(),
        present.usableShares(),
        promises,
        true);
  }

  /** What a plan promises: all plants but those given up on its first day. */
  static List<Present.Promise> promises(SowingPlan plan) {
    List<Present.Promise> promises = new ArrayList<>();
    for (Sowing s : plan.batches()) {
      String batch = plan.standing().contains(s) ? s.batch() : "";
      for (Sowing.Course c : s.courses()) {
        if (!c.picks().isEmpty() || c.end().isAfter(plan.from())) {
          promises.add(
              new Present.Promise(
                  batch,
                  s.crop(),
                  s.date(),
                  c.toBench(),
                  c.pots().get(0),
                  c.end(),
                  c.lifted(),
                  c.plants(),
                  c.picks().stream()
                      .collect(Collectors.toMap(Sowing.Pick::date, Sowing.Pick::gramsPerPlant))));
        }
      }
    }
    return promises;
  }

  /** Sowings, moves, picks and ends of the first seven days, each once for every pot. */
  private static List<String> week(SowingPlan plan) {
    List<String> tasks = new ArrayList<>();
    for (Sowing s : plan.batches()) {
      boolean stands = plan.standing().contains(s);
      if (!stands) {
        add(tasks, plan, s.date(), "sow %s %d".formatted(s.crop(), s.plants()));
      }
      for (Sowing.Course c : s.courses()) {
        for (String pot : c.pots()) {
          add(tasks, plan, c.toBench(), "move %s %s".formatted(s.crop(), pot));
          add(tasks, plan, c.end(), "end %s %s %s".formatted(s.crop(), pot, c.lifted()));
          c.picks()
              .forEach(
                  p ->
                      add(
                          tasks,
                          plan,
                          p.date(),
                          String.format(
                              Locale.ROOT, "pick %s %s %.1f", s.crop(), pot, p.gramsPerPlant())));
        }
      }
    }
    return tasks.stream().sorted().toList();
  }

  private static void add(List<String> tasks, SowingPlan plan, LocalDate day, String task) {
    if (!day.isBefore(plan.from()) && day.isBefore(plan.from().plusDays(DAYS))) {
      tasks.add(day + " " + task);
    }
  }
}
