package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.crop.Crop;
import sallet.plan.rehearse.Plant.Stage;

/**
 * Sows every so many weeks as many seeds as give a steady number of plants, crop after crop in
 * turn, or a whole bench at once when the last is nearly eaten. Seedlings move on when they are old
 * enough and there is room; leaves are picked by {@link LeafFirst}.
 */
final class Rhythm implements Grower {
  /** Days after emergence from which a seedling may move to its pot. Judgement. */
  static final int BENCH_AGE = 14;

  /** Days after emergence after which a seedling is too old to move. Judgement. */
  private static final int OLDEST_SEEDLING = 40;

  /** So few plants are left when a whole bench is sown again. Judgement. */
  private static final int NEARLY_EATEN = 3;

  private final int everyWeeks;
  private final double plants;
  private final Map<Crop, Double> owedCells = new HashMap<>();
  private double owedPlants;
  private int nextCrop;
  private List<String> potsInTurn = List.of();

  private Rhythm(int everyWeeks, double plants) {
    this.everyWeeks = everyWeeks;
    this.plants = plants;
  }

  /** Sows for so many usable plants a week. */
  static Rhythm every(int weeks, double plantsAWeek) {
    return new Rhythm(weeks, plantsAWeek);
  }

  /** Sows for so many usable plants at once. */
  static Rhythm allAtOnce(double plants) {
    return new Rhythm(0, plants);
  }

  @Override
  public void work(World world) {
    boolean bowlDay = world.bowlToday() >= 0;
    if (bowlDay) {
      LeafFirst.harvest(world);
    }
    moveToPots(world);
    moveToNursery(world);
    if (bowlDay && due(world)) {
      owedPlants += everyWeeks == 0 ? plants : plants * everyWeeks;
      sow(world);
    }
  }

  private boolean due(World world) {
    return everyWeeks == 0
        ? world.plantsOnTheWay() <= NEARLY_EATEN
        : world.bowlToday() % everyWeeks == 0;
  }

  private void moveToPots(World world) {
    LocalDate today = world.today();
    List<Plant> seedlings = new ArrayList<>(world.at(Stage.NURSERY));
    seedlings.addAll(world.at(Stage.CELL));
    if (potsInTurn.isEmpty()) {
      potsInTurn = world.scene().brightestFirst();
    }
    List<String> free = new ArrayList<>(potsInTurn);
    free.retainAll(world.freePots());
    for (Plant plant : seedlings) {
      if (plant.ageDays(today) > OLDEST_SEEDLING) {
        world.clear(plant);
      } else if (plant.ageDays(today) >= BENCH_AGE && !free.isEmpty()) {
        world.moveToPot(plant, free.remove(0));
      }
    }
  }

  private static void moveToNursery(World world) {
    for (Plant plant : world.at(Stage.CELL)) {
      if (plant.ageDays(world.today()) >= 1 && world.freeNurseryPlaces() > 0) {
        world.moveToNursery(plant);
      }
    }
  }

  private void sow(World world) {
    List<Crop> crops = world.scene().crops();
    Map<Crop, Integer> cells = new LinkedHashMap<>();
    for (; owedPlants >= 1; owedPlants--) {
      Crop crop = crops.get(nextCrop++ % crops.size());
      double owed = owedCells.getOrDefault(crop, 0.0) + 1 / crop.usableShare();
      cells.merge(crop, (int) owed, Integer::sum);
      owedCells.put(crop, owed - (int) owed);
    }
    cells.forEach(
        (crop, wanted) ->
            world.sow(
                crop.name() + " " + world.today(), crop, Math.min(wanted, world.freeCells())));
  }
}
