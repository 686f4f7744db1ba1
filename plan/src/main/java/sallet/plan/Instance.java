package sallet.plan;

import java.util.List;
import sallet.crop.Crop;
import sallet.household.Household;

/**
 * A planning question, ready to be solved.
 *
 * @param household the household
 * @param crops crops to choose from
 * @param calendar days, slots and bowls
 * @param at what the places offer
 * @param margin factor on demand
 * @param reachable for each bowl whether a sowing can still serve it
 */
record Instance(
    Household household,
    List<Crop> crops,
    TaskCalendar calendar,
    Surroundings at,
    double margin,
    List<Boolean> reachable) {

  /** Grams to plan for at a bowl: 0 where no sowing can serve it. */
  double aimGrams(int w) {
    return reachable.get(w) ? margin * calendar.demandGrams(w) : 0;
  }

  /** Largest share of a bowl one kind may take, so that the wanted number of kinds appears. */
  double kindShare() {
    return 1 / (household.eaters().kinds() - 0.5);
  }

  /** Whether a crop keeps from one bowl to the next. */
  boolean keeps(int crop) {
    return crops.get(crop).harvest().orElseThrow().fridgeCarryDays() >= 7;
  }
}
