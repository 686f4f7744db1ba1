package sallet.app.use;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sallet.app.report.rehearse.RehearsalReport;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.linear.LinearSolver;
import sallet.plan.rehearse.Habit;
import sallet.plan.rehearse.Hidden;
import sallet.plan.rehearse.Rehearsal;
import sallet.plan.rehearse.Result;

/** How full would my bowl be by this habit or that, in seasons good and bad? */
public final class RehearseHabits {
  private RehearseHabits() {}

  /**
   * What to play.
   *
   * @param from first day of each season
   * @param habits habits to play; rhythms find their best number of plants first
   * @param seasons seasons for each habit, 1 or more
   * @param seed which seasons
   * @param hidden what the planner does not know of them
   * @param solver who solves the linear programmes
   */
  public record Wish(
      LocalDate from,
      List<Habit> habits,
      int seasons,
      long seed,
      Hidden hidden,
      LinearSolver solver) {
    public Wish {
      habits = List.copyOf(habits);
    }
  }

  /**
   * Plays the habits one after the other.
   *
   * @param progress told one short line for each step
   * @param cancelled asked often; once true only seasons played to their end count
   */
  public static RehearsalReport of(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    Rehearsal rehearsal =
        Rehearsal.of(
            new Rehearsal.Request(
                household,
                catalogue,
                wish.from(),
                wish.hidden(),
                OptionalDouble.empty(),
                wish.solver(),
                wish.seed()));
    List<Result> results = new ArrayList<>();
    for (Habit habit : wish.habits()) {
      progress.accept(habit.word() + ": getting ready");
      Habit tuned = rehearsal.tuned(habit, cancelled);
      Result result =
          rehearsal.play(
              tuned,
              wish.seasons(),
              done ->
                  progress.accept(
                      "%s: %d of %d seasons".formatted(habit.word(), done, wish.seasons())),
              cancelled);
      if (!result.scores().isEmpty()) {
        results.add(result);
      }
    }
    return new RehearsalReport(
        household,
        wish.from(),
        Rehearsal.WEEKS,
        Rehearsal.START_UP,
        wish.seasons(),
        wish.seed(),
        wish.hidden(),
        results);
  }
}
