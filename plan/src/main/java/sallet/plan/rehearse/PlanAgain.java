package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sallet.crop.Crop;
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
      PlanHand.work(world, plan.get());
    } else if (world.bowlToday() >= 0) {
      LeafFirst.harvest(world);
      world.eat();
    }
  }

  private Optional<SowingPlan> again(World world) {
    Scene scene = world.scene();
    Standing standing =
        Standing.of(
            world.notebook().journal(), scene.catalogue(), weekly.places(), world.today());
    try {
      return Optional.of(
          Planner.plan(
              new Planner.Request(
                  scene.household(),
                  scene.catalogue(),
                  world.today(),
                  weekly.bowls(),
                  weekly.margin().orElse(standing.learned().margin()),
                  Believed.present(standing, fridge(world)),
                  weekly.effort(),
                  weekly.solver()),
              weekly.season(),
              step -> {},
              () -> false));
    } catch (NoPlan e) {
      return Optional.empty();
    }
  }

  private static Map<String, Double> fridge(World world) {
    Map<String, Double> grams = new HashMap<>();
    for (Map.Entry<Crop, Double> kept : world.kitchen().fridge().entrySet()) {
      grams.put(kept.getKey().name(), kept.getValue());
    }
    return grams;
  }
}
