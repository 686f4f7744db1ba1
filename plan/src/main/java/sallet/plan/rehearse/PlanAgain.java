package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sallet.journal.Journal;
import sallet.learn.Standing;
import sallet.plan.NoPlan;
import sallet.plan.Planner;
import sallet.plan.Present;
import sallet.plan.SowingPlan;

/**
 * Plans anew at every bowl from what the notebook holds: what was sown, counted, moved, picked and
 * weighed. The truth of the season stays hidden.
 */
final class PlanAgain implements Grower {
  private static final int A_WEEK = 7;

  private final Weekly weekly;
  private Optional<SowingPlan> plan = Optional.empty();

  PlanAgain(Weekly weekly) {
    this.weekly = weekly;
  }

  @Override
  public void work(World world) {
    LocalDate today = world.today();
    boolean old = plan.map(p -> !p.from().plusDays(A_WEEK).isAfter(today)).orElse(true);
    if (world.bowlToday() >= 0 || old) {
      plan = again(world);
    }
    if (plan.isPresent()) {
      PlanHand.work(world, plan.get(), world.demandToday());
    } else if (world.bowlToday() >= 0) {
      LeafFirst.harvest(world);
    }
  }

  private Optional<SowingPlan> again(World world) {
    Scene scene = world.scene();
    Journal journal = world.notebook().journal();
    Standing standing = Standing.of(journal, scene.catalogue(), weekly.places(), world.today());
    try {
      return Optional.of(
          Planner.plan(
              new Planner.Request(
                  scene.household(),
                  scene.catalogue(),
                  world.today(),
                  weekly.bowls(),
                  weekly.margin().orElse(standing.learned().margin()),
                  present(world, standing, journal),
                  weekly.effort(),
                  weekly.solver()),
              weekly.season(),
              step -> {},
              () -> false));
    } catch (NoPlan e) {
      return Optional.empty();
    }
  }

  /** What stands by the notebook; what the fridge holds can be seen. */
  private static Present present(World world, Standing standing, Journal journal) {
    Scene scene = world.scene();
    Present believed =
        Present.of(standing, journal, scene.household(), scene.catalogue(), List.of(), false);
    return believed.withInHand(world.kitchen().fridge());
  }
}
