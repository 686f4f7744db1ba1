package sallet.plan;

import java.util.List;
import java.util.stream.IntStream;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.plan.linear.LinearSolver;

/**
 * A planning question, ready to be solved.
 *
 * @param household the household
 * @param crops crops that are sown or stand already
 * @param sowable how many of them, the first, may be sown
 * @param calendar days, slots and bowls
 * @param at what the places offer
 * @param standing plants that stand already
 * @param takenCells for each slot the cells they take
 * @param inHandGrams edible grams of each crop picked for the first bowl or left in the fridge
 * @param promises what the last plan meant to do
 * @param changePoints what a plant sown, moved or lifted otherwise costs
 * @param vigour factor on assimilation of each crop
 * @param margin factor on demand
 * @param firstBowl first bowl that plants can serve; the number of bowls when there is none
 * @param solver who solves the linear programmes
 */
record Instance(
    Household household,
    List<Crop> crops,
    int sowable,
    TaskCalendar calendar,
    Surroundings at,
    List<StandingPlants> standing,
    List<Integer> takenCells,
    List<Double> inHandGrams,
    List<Present.Promise> promises,
    double changePoints,
    List<Double> vigour,
    double margin,
    int firstBowl,
    LinearSolver solver) {
  Instance {
    promises = List.copyOf(promises);
    vigour = List.copyOf(vigour);
    crops = List.copyOf(crops);
    standing = List.copyOf(standing);
    takenCells = List.copyOf(takenCells);
    inHandGrams = List.copyOf(inHandGrams);
  }

  /** The same question, knowing what its courses can serve. */
  Instance reaching(List<Course> courses) {
    return from(Courses.firstBowl(courses, calendar.bowls()));
  }

  /** The same question with a first bowl that counts. */
  Instance from(int bowl) {
    return new Instance(
        household,
        crops,
        sowable,
        calendar,
        at,
        standing,
        takenCells,
        inHandGrams,
        promises,
        changePoints,
        vigour,
        margin,
        bowl,
        solver);
  }

  /** Whether anything can serve a bowl: plants, or for the first what is in hand. */
  boolean reachable(int w) {
    return w >= firstBowl || (w == 0 && inHand() > 0);
  }

  /**
   * Grams to plan for at a bowl: no more than can serve it. The next bowl is filled from what can
   * be seen standing, so it needs no margin.
   */
  double aimGrams(int w) {
    double factor = w == 0 ? Math.min(1, margin) : margin;
    double wanted = factor * calendar.demandGrams(w);
    if (w >= firstBowl) {
      return wanted;
    }
    return w == 0 ? Math.min(wanted, inHand()) : 0;
  }

  private double inHand() {
    return inHandGrams.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Largest share of a bowl one kind may take, so that the wanted number of kinds appears. */
  double kindShare() {
    return 1 / (household.eaters().kinds() - 0.5);
  }

  /** Whether a crop keeps from one bowl to the next. */
  boolean keeps(int crop) {
    return crops.get(crop).harvest().orElseThrow().fridgeCarryDays() >= 7;
  }

  /** Cells a slot has left for new sowings. */
  int freeCells(int slot) {
    return Math.max(0, at.cells() - takenCells.get(slot));
  }

  /** Sum of the true demand of the reachable bowls, g. */
  double demandGrams() {
    return IntStream.range(0, calendar.bowls())
        .filter(this::reachable)
        .mapToDouble(calendar::demandGrams)
        .sum();
  }
}
