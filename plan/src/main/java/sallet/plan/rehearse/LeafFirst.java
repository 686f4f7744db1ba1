package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import sallet.plan.rehearse.Plant.Stage;

/**
 * Picking by rule, for habits without a picking of their own. The fridge is eaten first. Plants
 * that will not last until the next bowl are lifted, and the oldest where seedlings wait for a pot;
 * then leaves are picked where most stand, every kind up to its share of the bowl, and then without
 * regard to kinds until the bowl is full. Last, heads large enough are lifted.
 */
final class LeafFirst {
  private static final int DAYS_TO_NEXT_BOWL = 7;

  /** Days after emergence from which a plant may give way to a seedling. Judgement. */
  private static final int OLD = 40;

  private static final double A_GRAM = 1;

  private final World world;
  private final LocalDate today;
  private final double demandGrams;

  private LeafFirst(World world, double demandGrams) {
    this.world = world;
    this.today = world.today();
    this.demandGrams = demandGrams;
  }

  /** Picks and lifts for today's bowl, and fills it. */
  static void harvest(World world) {
    LeafFirst rule = new LeafFirst(world, world.demandToday());
    rule.liftLast();
    rule.liftForSeedlings();
    rule.fill();
    world.eat(world.demandToday());
  }

  /** Picks leaves, then lifts heads, until so many grams are at hand. */
  static void fill(World world, double grams) {
    new LeafFirst(world, grams).fill();
  }

  private void fill() {
    pick(world.scene().kindShare() * demandGrams);
    pick(demandGrams);
    liftHeads();
  }

  private double missing() {
    return demandGrams - world.kitchen().atHand();
  }

  private void liftLast() {
    LocalDate next = today.plusDays(DAYS_TO_NEXT_BOWL);
    for (Plant plant : world.at(Stage.BENCH)) {
      if (plant.lastDay().isBefore(next)) {
        take(plant);
      }
    }
  }

  private void take(Plant plant) {
    if (plant.mayLift(today)) {
      world.lift(plant);
    } else {
      world.clear(plant);
    }
  }

  private void liftForSeedlings() {
    long waiting =
        world.at(Stage.NURSERY).stream().filter(p -> p.ageDays(today) >= Rhythm.BENCH_AGE).count();
    long wanted = waiting - world.freePots().size();
    for (Plant plant : world.at(Stage.BENCH)) {
      if (wanted > 0 && plant.ageDays(today) >= OLD && plant.mayLift(today) && missing() > 0) {
        world.lift(plant);
        wanted--;
      }
    }
  }

  private void pick(double cap) {
    List<Plant> most =
        world.at(Stage.BENCH).stream()
            .sorted(Comparator.comparingDouble((Plant p) -> -p.edibleG()))
            .toList();
    for (Plant plant : most) {
      double wanted = Math.min(missing(), cap - world.kitchen().atHand(plant.crop));
      double share = Math.min(plant.largestPick(today), wanted / plant.edibleG());
      if (wanted >= A_GRAM && share > 0) {
        world.pick(plant, share);
      }
    }
  }

  private void liftHeads() {
    for (Plant plant : world.at(Stage.BENCH)) {
      boolean head = !plant.crop.harvest().orElseThrow().leafPick();
      if (head && missing() >= A_GRAM && plant.mayLift(today)) {
        world.lift(plant);
      }
    }
  }
}
