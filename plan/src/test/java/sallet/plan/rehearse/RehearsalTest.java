package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.plan.linear.LinearSolver;

class RehearsalTest {
  private static final Rehearsal REHEARSAL =
      Rehearsal.of(
          new Rehearsal.Request(
              SmallBench.of(240),
              Catalogue.builtIn(),
              SmallBench.START,
              Hidden.USUAL,
              OptionalDouble.empty(),
              LinearSolver.NATIVE,
              1));

  @Test
  void planningAgainEachWeekFillsTheBowl() {
    Result plan = REHEARSAL.play(new Habit.PlanWeekly(), 1, done -> {}, () -> false);
    assertThat(plan.scores()).hasSize(1);
    assertThat(plan.scores().get(0).fill()).isGreaterThan(0.93);
    assertThat(plan.scores().get(0).waste()).isLessThan(0.15);
    Result once = REHEARSAL.play(new Habit.AllAtOnce(12), 1, done -> {}, () -> false);
    assertThat(plan.scores().get(0).points()).isLessThan(once.scores().get(0).points());
  }

  @Test
  void everySeasonIsToldAndTheSameSeedGivesTheSameScores() {
    AtomicInteger told = new AtomicInteger();
    Habit habit = new Habit.EveryWeeks(2, 3);
    Result result = REHEARSAL.play(habit, 4, done -> told.incrementAndGet(), () -> false);
    assertThat(told).hasValue(4);
    assertThat(REHEARSAL.play(habit, 4, done -> {}, () -> false)).isEqualTo(result);
  }

  @Test
  void seasonsThatWereCutShortDoNotCount() {
    AtomicInteger asked = new AtomicInteger();
    Result result =
        REHEARSAL.play(
            new Habit.EveryWeeks(1, 3), 20, done -> {}, () -> asked.incrementAndGet() > 2000);
    assertThat(result.scores().size()).isBetween(1, 19);
  }

  @Test
  void aRhythmIsTunedOnSeasonsThatAreNotReported() {
    Habit tuned = REHEARSAL.tuned(new Habit.EveryWeeks(2, 1), () -> false);
    assertThat(REHEARSAL.choices(new Habit.EveryWeeks(2, 1))).contains(tuned);
    double few = points(REHEARSAL.choices(tuned).findFirst().orElseThrow());
    assertThat(points(tuned)).isLessThan(few);
  }

  private static double points(Habit habit) {
    return REHEARSAL.play(habit, 6, done -> {}, () -> false).estimate(Score::points).mean();
  }
}
