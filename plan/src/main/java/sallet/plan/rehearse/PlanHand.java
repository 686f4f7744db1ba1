package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sallet.crop.Crop;
import sallet.plan.BowlWeek;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.SowingPlan;
import sallet.plan.rehearse.Plant.Stage;

/**
 * Does a day's work as a plan tells. Plants are lifted, moved and sown as told. Leaves are picked
 * from the plants named until the bowl is full: a little less from each where plants did better
 * than planned, more (up to the largest pick) where they did worse, then from others.
 */
final class PlanHand {
  private static final double HALF_A_GRAM = 0.5;

  /** Rounds in which what one plant cannot give is asked of the others. */
  private static final int ROUNDS = 4;

  private final World world;
  private final SowingPlan plan;
  private final LocalDate today;
  private final double bowlGrams;

  private PlanHand(World world, SowingPlan plan, double bowlGrams) {
    this.world = world;
    this.plan = plan;
    this.bowlGrams = bowlGrams;
    this.today = world.today();
  }

  /**
   * Today's work.
   *
   * @param bowlGrams grams to fill today's bowl with
   */
  static void work(World world, SowingPlan plan, double bowlGrams) {
    PlanHand hand = new PlanHand(world, plan, bowlGrams);
    if (world.bowlToday() >= 0) {
      hand.harvest();
    }
    hand.clear();
    plan.batches().forEach(hand::moveToPots);
    plan.batches().forEach(hand::moveToNursery);
    plan.sowings().stream().filter(s -> s.date().equals(hand.today)).forEach(hand::sow);
  }

  private void harvest() {
    double lifted = 0;
    Map<Plant, Double> leaves = new LinkedHashMap<>();
    for (Sowing batch : plan.batches()) {
      for (Course course : batch.courses()) {
        if (course.lifted() && course.end().equals(today)) {
          lifted += plants(batch, course).mapToDouble(world::lift).sum();
        } else {
          course.picks().stream()
              .filter(pick -> pick.date().equals(today))
              .forEach(
                  pick -> plants(batch, course).forEach(p -> leaves.put(p, pick.gramsPerPlant())));
        }
      }
    }
    pick(leaves, wanted(lifted));
    LeafFirst.fill(world, bowlGrams);
    world.eat(bowlGrams);
  }

  /** The plants of a course that stand in their pots. */
  private Stream<Plant> plants(Sowing batch, Course course) {
    return course.pots().stream()
        .flatMap(world::inPot)
        .filter(plant -> plant.batch.equals(batch.batch()))
        .toList()
        .stream();
  }

  /** Leaf grams wanted: those planned, but for what the plan means beyond the bowl. */
  private double wanted(double lifted) {
    Optional<BowlWeek> week =
        plan.weeks().stream().filter(w -> w.bowlDay().equals(today)).findFirst();
    double harvest = week.map(BowlWeek::harvestGrams).orElse(0.0);
    double bowl = week.map(BowlWeek::plannedGrams).orElse(0.0);
    return harvest - (bowl - bowlGrams) - lifted;
  }

  private void pick(Map<Plant, Double> planned, double wanted) {
    Map<Plant, Double> shares = new LinkedHashMap<>();
    double open = wanted;
    List<Plant> able = new ArrayList<>(planned.keySet());
    for (int round = 0; round < ROUNDS && open > HALF_A_GRAM && !able.isEmpty(); round++) {
      double sum = able.stream().mapToDouble(p -> planned.getOrDefault(p, 0.0)).sum();
      double factor = open / sum;
      for (Plant plant : List.copyOf(able)) {
        double before = shares.getOrDefault(plant, 0.0);
        double more = factor * planned.getOrDefault(plant, 0.0) / plant.edibleG();
        double share = Math.min(plant.largestPick(today), before + more);
        shares.put(plant, share);
        open -= (share - before) * plant.edibleG();
        if (share < before + more) {
          able.remove(plant);
        }
      }
    }
    shares.forEach(
        (plant, share) -> {
          if (share > 0) {
            world.pick(plant, share);
          }
        });
  }

  /** Throws away what the plan has no use for. */
  private void clear() {
    for (Sowing batch : plan.batches()) {
      for (Course course : batch.courses()) {
        if (discarded(course)) {
          (course.pots().isEmpty()
                  ? seedlings(batch, course.toNursery().isBefore(today)).limit(course.plants())
                  : plants(batch, course))
              .forEach(world::clear);
        }
      }
    }
  }

  private boolean discarded(Course course) {
    boolean thrown = course.clearedGrams() > 0 || today.equals(plan.from());
    return course.end().equals(today) && !course.lifted() && thrown;
  }

  private Stream<Plant> seedlings(Sowing batch, boolean inNursery) {
    return world.at(inNursery ? Stage.NURSERY : Stage.CELL, batch.batch()).stream();
  }

  private void moveToPots(Sowing batch) {
    if (batch.courses().stream().noneMatch(course -> course.toBench().equals(today))) {
      return;
    }
    List<Plant> waiting = new ArrayList<>(world.at(Stage.NURSERY, batch.batch()));
    List<Plant> cells = new ArrayList<>(world.at(Stage.CELL, batch.batch()));
    for (Course course : batch.courses()) {
      if (course.toBench().equals(today) && !discarded(course)) {
        List<Plant> from = course.throughNursery() ? waiting : cells;
        for (String pot : course.pots()) {
          if (!from.isEmpty()) {
            free(pot).ifPresent(free -> world.moveToPot(from.remove(0), free));
          }
        }
      }
    }
  }

  /** The pot wanted, or another if something stands in it still. */
  private Optional<String> free(String wanted) {
    List<String> free = world.freePots();
    return free.contains(wanted) ? Optional.of(wanted) : free.stream().findFirst();
  }

  private void moveToNursery(Sowing batch) {
    for (Course course : batch.courses()) {
      if (course.toNursery().equals(today) && course.throughNursery() && !discarded(course)) {
        world.at(Stage.CELL, batch.batch()).stream()
            .limit(Math.min(course.plants(), world.freeNurseryPlaces()))
            .forEach(world::moveToNursery);
      }
    }
  }

  private void sow(Sowing sowing) {
    Optional<Crop> crop = world.scene().catalogue().find(sowing.crop());
    world.makeRoomInCells(sowing.cells());
    crop.ifPresent(c -> world.sow(sowing.batch(), c, Math.min(sowing.cells(), world.freeCells())));
  }
}
