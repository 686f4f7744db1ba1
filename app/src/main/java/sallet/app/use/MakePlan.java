package sallet.app.use;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sallet.app.report.Changes;
import sallet.app.report.PlanAnswer;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.journal.Journal;
import sallet.learn.Learned;
import sallet.learn.Standing;
import sallet.plan.Effort;
import sallet.plan.LastPlan;
import sallet.plan.Planner;
import sallet.plan.Present;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;
import sallet.plan.WhatIf;
import sallet.plan.linear.LinearSolver;
import sallet.plan.rehearse.Luck;

/** What do I sow, move, pick and lift so that the bowl is full every week from now on? */
public final class MakePlan {
  /** Part of the time to think that each what-if gets. */
  private static final int WHAT_IF_PART = 2;

  private MakePlan() {}

  /**
   * How to plan.
   *
   * @param from first day
   * @param weeks number of bowls, 1 to 52
   * @param margin factor on demand, 0.5 to 2; when empty what the journal teaches, else the usual
   * @param seconds time to think, at least 1
   * @param dives searches for whole plants to make without a clock, so that the same question gets
   *     the same plan; 0 to go by the clock
   * @param solver who solves the linear programmes
   * @param whatIf whether to ask what limits the bowl
   */
  public record Wish(
      LocalDate from,
      int weeks,
      Optional<Double> margin,
      double seconds,
      int dives,
      LinearSolver solver,
      boolean whatIf) {
    private Effort effort() {
      return dives > 0 ? Effort.counted(dives) : Effort.within(time());
    }

    private Duration time() {
      return Duration.ofMillis(Math.round(seconds * 1000));
    }
  }

  /**
   * The plan of a household.
   *
   * @param standing what stands on the first day, by its journal
   * @param last the last plan
   * @param progress told one short line for each step
   * @param cancelled asked often; once true the best plan found so far is given
   * @throws sallet.plan.NoPlan when the question has no answer
   */
  public static PlanAnswer of(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Optional<Stock> standing,
      Optional<LastPlan> last,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    Asked asked = asked(household, catalogue, wish, standing, last);
    Standing now = asked.now();
    SowingPlan plan = Planner.plan(asked.request(), progress, cancelled);
    progress.accept("Luck of the coming weeks");
    return new PlanAnswer(
        Luck.told(plan, household, catalogue, asked.request().present(), now.learned()),
        standing.map(Stock::standing),
        asked.basis(),
        last.map(l -> Changes.of(plan, l, now)).orElse(List.of()),
        wish.whatIf() ? whatIf(asked.request(), plan, wish, progress, cancelled) : List.of());
  }

  /** The sowings alone, without their luck and what limits them; see {@link #of}. */
  static SowingPlan sowings(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Optional<Stock> standing,
      Optional<LastPlan> last,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    return Planner.plan(
        asked(household, catalogue, wish, standing, last).request(), progress, cancelled);
  }

  /** What stands, what that rests on, and what the planner is asked. */
  private record Asked(Standing now, String basis, Planner.Request request) {}

  private static Asked asked(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Optional<Stock> standing,
      Optional<LastPlan> last) {
    Standing now =
        standing
            .map(Stock::standing)
            .orElseGet(() -> Standing.of(Journal.EMPTY, catalogue, household, wish.from()));
    String basis =
        Integer.toHexString(household.toString().hashCode())
            + standing.map(s -> "-" + s.journal().until(wish.from()).fingerprint()).orElse("");
    Present present =
        standing.isEmpty() && last.isEmpty()
            ? Present.NOTHING
            : Present.of(
                now,
                standing.map(Stock::journal).orElse(Journal.EMPTY),
                household,
                catalogue,
                last.map(l -> l.promises(now)).orElse(List.of()),
                last.filter(l -> l.basis().equals(basis)).isPresent());
    double usual = standing.isPresent() ? now.learned().margin() : Learned.USUAL_MARGIN;
    return new Asked(
        now,
        basis,
        new Planner.Request(
            household,
            catalogue,
            wish.from(),
            wish.weeks(),
            wish.margin().orElse(usual),
            present,
            wish.effort(),
            wish.solver()));
  }

  /**
   * What the journal of a household comes to.
   *
   * @param standing what stands
   * @param journal the journal
   */
  public record Stock(Standing standing, Journal journal) {}

  private static List<WhatIf.Bottleneck> whatIf(
      Planner.Request request,
      SowingPlan plan,
      Wish wish,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    List<String> sown = plan.sowings().stream().map(Sowing::crop).distinct().toList();
    Duration time =
        wish.dives() > 0 ? request.effort().linear() : wish.time().dividedBy(WHAT_IF_PART);
    return WhatIf.of(request, sown, time, progress, cancelled);
  }
}
