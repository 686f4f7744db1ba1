package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sallet.crop.Crop;
import sallet.crop.LifeDays;
import sallet.crop.PlaceDays;
import sallet.plan.Present;
import sallet.plan.TaskCalendar;
import sallet.plan.rehearse.Plant.Fate;
import sallet.plan.rehearse.Plant.Stage;

/**
 * A household's places in one season, with the truth nobody sees. Plants grow by day, hand work is
 * done in the evening of task days. Mutable: one for each season and habit.
 */
final class World {
  /** Age from which the grower weighs a plant once, d. Judgement. */
  private static final int WEIGH_AGE = 26;

  private final Scene scene;
  private final Fates fates;
  private final List<PlaceDays> light;
  private final Kitchen kitchen;
  private final Notebook notebook;
  private final Tally tally;
  private final List<Plant> plants = new ArrayList<>();
  private final Map<String, Integer> cellsOf = new HashMap<>();
  private final Set<Plant> weighed = new HashSet<>();
  private LocalDate today;

  World(Scene scene, long seed) {
    this.scene = scene;
    SplittableRandom dice = new SplittableRandom(seed);
    double[] sky = Skylight.weather(scene.hidden(), scene.light().days(), dice.split());
    this.light = scene.light().pots(sky);
    this.fates = new Fates(scene, dice.split());
    this.kitchen = new Kitchen(scene.kindShare());
    this.notebook = new Notebook(dice.split(), scene.hidden().readingSd());
    this.tally = new Tally(scene.calendar());
    this.today = scene.calendar().from();
  }

  /**
   * Plays all days; on each task day the grower works once the plants have grown.
   *
   * @param cancelled asked each day; once true the season is given up
   */
  Optional<PlayedSeason> play(Grower grower, BooleanSupplier cancelled) {
    TaskCalendar calendar = scene.calendar();
    Set<LocalDate> taskDays = new HashSet<>(calendar.slots());
    for (int d = 0; d < calendar.days(); d++) {
      if (cancelled.getAsBoolean()) {
        return Optional.empty();
      }
      today = scene.day(d);
      plants.forEach(plant -> plant.grow(today));
      noteSeedlings();
      if (taskDays.contains(today)) {
        findDead();
        noteWeights();
        grower.work(this);
      }
    }
    return Optional.of(tally.season());
  }

  /** Puts what there is on the first day in its places. */
  void begin(Present present) {
    LocalDate dayBefore = today.minusDays(1);
    for (Present.Plants group : present.plants()) {
      Crop crop = scene.catalogue().find(group.crop()).orElseThrow();
      List<String> potsLeft = new ArrayList<>(group.pots());
      for (Fate fate : fates.standing(group, crop, today)) {
        Plant plant =
            new Plant(fate, scene.light().nursery(), scene.household().nursery().cellAreaCm2());
        if (group.toBench().isPresent()) {
          int i = scene.pots().indexOf(potsLeft.remove(0));
          plant.toPot(dayBefore, scene.pots().get(i), light.get(i), scene.siteCm2().get(i));
        } else if (group.toNursery().isPresent()) {
          plant.toNursery(
              dayBefore, scene.light().nursery(), scene.household().nursery().placeAreaCm2());
        }
        if (plant.up(today)) {
          plant.stands(group, today, fates.size(), dryMatterShare(plant));
        }
        plants.add(plant);
      }
    }
    present
        .inHandGrams()
        .forEach(
            (name, grams) ->
                scene.catalogue().find(name).ifPresent(crop -> kitchen.keep(crop, grams)));
  }

  private double dryMatterShare(Plant plant) {
    PlaceDays place = plant.stays().get(plant.stays().size() - 1).place();
    return LifeDays.day(plant.crop.growth().orElseThrow(), 1, 0, place.dliMol(0), place.meanC(0), 1)
        .dryMatterShare();
  }

  Scene scene() {
    return scene;
  }

  Kitchen kitchen() {
    return kitchen;
  }

  Notebook notebook() {
    return notebook;
  }

  LocalDate today() {
    return today;
  }

  /** Factor of a crop's growth in this season on its median. */
  double luckOf(Crop crop) {
    return fates.luckOf(crop);
  }

  /** The bowl filled today, or -1. */
  int bowlToday() {
    TaskCalendar calendar = scene.calendar();
    for (int w = 0; w < calendar.bowls(); w++) {
      if (calendar.bowl(w).equals(today)) {
        return w;
      }
    }
    return -1;
  }

  double demandToday() {
    int bowl = bowlToday();
    return bowl < 0 ? 0 : scene.calendar().demandGrams(bowl);
  }

  /** Plants that have come up, by age. */
  List<Plant> seen() {
    return seen(plant -> true);
  }

  private List<Plant> seen(Predicate<Plant> which) {
    return plants.stream()
        .filter(plant -> plant.up(today) && which.test(plant))
        .sorted(Comparator.comparing((Plant plant) -> plant.emergence))
        .toList();
  }

  /** The same at one kind of place. */
  List<Plant> at(Stage stage) {
    return seen(plant -> plant.stage() == stage);
  }

  /** Plants of one batch at a kind of place. */
  List<Plant> at(Stage stage, String batch) {
    return seen(plant -> plant.stage() == stage && plant.batch.equals(batch));
  }

  /** The plant in a pot. */
  Stream<Plant> inPot(String pot) {
    return plants.stream().filter(plant -> plant.pot().equals(pot));
  }

  /** Pots without a plant, in the order of the bench. */
  List<String> freePots() {
    Set<String> taken = new HashSet<>();
    plants.forEach(plant -> taken.add(plant.pot()));
    return scene.pots().stream().filter(pot -> !taken.contains(pot)).toList();
  }

  int freeCells() {
    return scene.household().nursery().cells()
        - cellsOf.values().stream().mapToInt(cells -> cells).sum();
  }

  int freeNurseryPlaces() {
    long taken = plants.stream().filter(plant -> plant.stage() == Stage.NURSERY).count();
    return scene.household().nursery().places() - (int) taken;
  }

  /** Plants alive and cells that may still give some. */
  int plantsOnTheWay() {
    long waiting = plants.stream().filter(plant -> !plant.up(today)).count();
    return seen().size() + (int) waiting;
  }

  /** Throws away the oldest spare seedlings until a number of cells is free. */
  void makeRoomInCells(int cells) {
    for (Plant plant : at(Stage.CELL)) {
      if (freeCells() < cells) {
        clear(plant);
      }
    }
  }

  void sow(String batch, Crop crop, int cells) {
    if (cells < 1) {
      return;
    }
    int seeds = cells * crop.harvest().orElseThrow().plantsPerPot();
    double cellMeanC = scene.light().nursery().meanC(0);
    for (Fate fate : fates.sow(batch, crop, cells, today, cellMeanC)) {
      plants.add(
          new Plant(fate, scene.light().nursery(), scene.household().nursery().cellAreaCm2()));
    }
    cellsOf.put(batch, cells);
    notebook.sow(today, batch, crop, seeds, cells);
    tally.sown(today, seeds);
  }

  void moveToNursery(Plant plant) {
    plant.toNursery(today, scene.light().nursery(), scene.household().nursery().placeAreaCm2());
    notebook.toNursery(today, plant);
    emptyCells(plant.batch);
  }

  void moveToPot(Plant plant, String pot) {
    int i = scene.pots().indexOf(pot);
    plant.toPot(today, pot, light.get(i), scene.siteCm2().get(i));
    notebook.toPot(today, plant);
    emptyCells(plant.batch);
  }

  /** Cells are emptied of what did not come up when the first seedlings leave them. */
  private void emptyCells(String batch) {
    int left = at(Stage.CELL, batch).size();
    cellsOf.computeIfPresent(batch, (b, cells) -> left == 0 ? null : left);
  }

  /** Picks leaves for today's bowl; gives edible grams. */
  double pick(Plant plant, double share) {
    double grams = plant.pick(today, share);
    kitchen.bring(plant.crop, grams);
    notebook.pick(today, plant, grams);
    tally.taken(today, grams);
    return grams;
  }

  /** Lifts a whole plant for today's bowl; gives edible grams. */
  double lift(Plant plant) {
    double grams = plant.edibleG();
    kitchen.bring(plant.crop, grams);
    notebook.lift(today, plant, grams);
    tally.taken(today, grams);
    plants.remove(plant);
    return grams;
  }

  /** Throws a plant away with all its leaves. */
  void clear(Plant plant) {
    if (plant.stage() == Stage.BENCH) {
      tally.cleared(today, plant.edibleG());
    }
    notebook.lost(today, plant);
    plants.remove(plant);
    emptyCells(plant.batch);
  }

  /** Fills today's bowl. */
  void eat(double grams) {
    tally.eaten(today, kitchen.eat(grams));
  }

  private void noteSeedlings() {
    for (String batch : cellsOf.keySet().stream().sorted().toList()) {
      List<Plant> up =
          plants.stream().filter(p -> p.batch.equals(batch) && p.emergence.equals(today)).toList();
      if (!up.isEmpty()) {
        notebook.emerge(today, batch, up.get(0).crop, up.size());
      }
    }
  }

  /** What died since the last task day is found and taken out. */
  private void findDead() {
    for (Plant plant : plants.stream().filter(p -> !p.death.isAfter(today)).toList()) {
      notebook.lost(today, plant);
      plants.remove(plant);
      emptyCells(plant.batch);
    }
  }

  private void noteWeights() {
    if (bowlToday() < 0) {
      return;
    }
    for (Plant plant : at(Stage.BENCH)) {
      if (plant.ageDays(today) >= WEIGH_AGE && weighed.add(plant)) {
        notebook.weigh(today, plant);
      }
    }
  }
}
