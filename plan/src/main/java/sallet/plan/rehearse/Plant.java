package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LastDay;
import sallet.crop.LifeDays;
import sallet.crop.PlaceDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;
import sallet.crop.Stay;
import sallet.plan.Present;

/** One plant, or the clump of one pot, as it really grows. */
final class Plant {
  final String batch;
  final Crop crop;
  final LocalDate sown;
  final LocalDate emergence;
  private final PlantParameters parameters;
  private final HarvestRule rule;
  private final double vigour;
  private final double regrowth;

  /** Day it dies, if nothing else ends it before. */
  final LocalDate death;

  private final List<Stay> stays = new ArrayList<>();
  private PlantState state;
  private double lightMemoryMol = Double.NaN;
  private double dryMatterShare = 0.05;
  private int picks;
  private LocalDate grown = LocalDate.MIN;
  private Stage stage = Stage.CELL;
  private String pot = "";
  private LocalDate lastDay = LocalDate.MAX;
  private Optional<LocalDate> toNursery = Optional.empty();
  private Optional<LocalDate> toBench = Optional.empty();
  private Optional<LocalDate> lastPick = Optional.empty();

  /** Where it is. */
  enum Stage {
    CELL,
    NURSERY,
    BENCH
  }

  /**
   * What is settled the day it is sown.
   *
   * @param vigour factor on assimilation
   * @param regrowth factor on assimilation for each pick
   */
  record Fate(
      String batch,
      Crop crop,
      LocalDate sown,
      LocalDate emergence,
      LocalDate death,
      double vigour,
      double regrowth) {}

  Plant(Fate fate, PlaceDays nursery, double cellCm2) {
    batch = fate.batch;
    crop = fate.crop;
    sown = fate.sown;
    emergence = fate.emergence;
    death = fate.death;
    vigour = fate.vigour;
    regrowth = fate.regrowth;
    parameters = crop.growth().orElseThrow();
    rule = crop.harvest().orElseThrow();
    state = PlantState.atEmergence(parameters);
    stays.add(new Stay(sown, nursery, cellCm2));
  }

  /** One day of growth at the place it stands. */
  void grow(LocalDate day) {
    if (day.isBefore(emergence) || !day.isAfter(grown)) {
      return;
    }
    Stay stay = stays.get(stays.size() - 1);
    int at = stay.place().index(day);
    double dli = stay.place().dliMol(at);
    lightMemoryMol =
        Double.isNaN(lightMemoryMol) ? dli : lightMemoryMol + (dli - lightMemoryMol) / 5;
    PlantDay today =
        LifeDays.day(
            parameters,
            vigour * rule.ageing(ageDays(day)) * Math.pow(regrowth, picks),
            stay.place().assimilateG(at),
            lightMemoryMol,
            stay.place().meanC(at),
            stay.siteCm2() / rule.plantsPerPot());
    state = PlantModel.step(state, parameters, today);
    dryMatterShare = today.dryMatterShare();
  }

  /** Days from emergence; below 0 before. */
  int ageDays(LocalDate day) {
    return (int) (day.toEpochDay() - emergence.toEpochDay());
  }

  boolean up(LocalDate day) {
    return !day.isBefore(emergence);
  }

  Stage stage() {
    return stage;
  }

  String pot() {
    return pot;
  }

  PlantState state() {
    return state;
  }

  int picks() {
    return picks;
  }

  Optional<LocalDate> toNursery() {
    return toNursery;
  }

  Optional<LocalDate> toBench() {
    return toBench;
  }

  Optional<LocalDate> lastPick() {
    return lastPick;
  }

  /** Last day it may stand in its pot. */
  LocalDate lastDay() {
    return lastDay;
  }

  /** Where it stood and stands. */
  List<Stay> stays() {
    return List.copyOf(stays);
  }

  /** Fresh grams of all that stands in its place. */
  double freshG() {
    return state.freshG(dryMatterShare) * rule.plantsPerPot();
  }

  double edibleG() {
    return freshG() * rule.edibleShare();
  }

  /** Largest share of its leaf area that may be picked on a day. */
  double largestPick(LocalDate day) {
    boolean ready =
        stage == Stage.BENCH
            && rule.leafPick()
            && ageDays(day) >= HarvestRule.FIRST_PICK_DAYS
            && freshG() >= HarvestRule.PICK_FROM_G
            && lastPick.filter(day::equals).isEmpty();
    return ready ? HarvestRule.largestPick(state.leaves()) : 0;
  }

  /** Whether it is worth lifting and eating on a day. */
  boolean mayLift(LocalDate day) {
    boolean large = freshG() / rule.plantsPerPot() >= rule.liftFromG();
    return stage == Stage.BENCH && (large || largestPick(day) > 0);
  }

  /** Into a nursery place, from the next day on. */
  void toNursery(LocalDate today, PlaceDays nursery, double placeCm2) {
    stage = Stage.NURSERY;
    toNursery = Optional.of(today);
    stays.add(new Stay(today.plusDays(1), nursery, placeCm2));
  }

  /** Into a pot, from the next day on. */
  void toPot(LocalDate today, String name, PlaceDays days, double siteCm2) {
    stage = Stage.BENCH;
    toBench = Optional.of(today);
    pot = name;
    stays.add(new Stay(today.plusDays(1), days, siteCm2));
    lastDay = LastDay.onBench(rule, crop.bolting(), emergence, stays);
  }

  /** Takes a share of its leaf area; gives edible grams. */
  double pick(LocalDate day, double share) {
    double grams = share * edibleG();
    state = state.pickedLeaves(share);
    picks++;
    lastPick = Optional.of(day);
    return grams;
  }

  /** Stands already at the end of a day as the planner has it, so much larger or smaller. */
  void stands(Present.Plants group, LocalDate today, double size, double dryShare) {
    PlantState s = group.state();
    state =
        new PlantState(
            s.shootG() * size,
            s.rootG() * size,
            s.reserveG() * size,
            s.leafCm2() * size,
            s.leaves());
    dryMatterShare = dryShare;
    lastPick = group.lastPick();
    grown = today;
  }
}
