package sallet.water.absence;

import java.util.ArrayList;
import java.util.List;
import sallet.water.reservoir.Demand;

/**
 * Visits that keep a reservoir from running out: as late as 95 times in a hundred allow.
 *
 * @param mornings days, counted from the first day away, on whose morning it is filled
 * @param litres what is poured in then, median, L
 * @param lasts least probability that the water lasts from one filling to the next
 */
record Visits(List<Integer> mornings, List<Double> litres, double lasts) {
  /** Nobody comes. */
  static final Visits NONE = new Visits(List.of(), List.of(), 1);

  Visits {
    mornings = List.copyOf(mornings);
    litres = List.copyOf(litres);
  }

  /**
   * The visits; none that help when not even one day lasts.
   *
   * @param perDayL median use of each day
   * @param logSd spread of the household's factor
   * @param firstL usable water at the start
   * @param fullL usable water of a full reservoir
   */
  static Visits of(List<Double> perDayL, double logSd, double firstL, double fullL) {
    List<Integer> mornings = new ArrayList<>();
    List<Double> litres = new ArrayList<>();
    double used = 0;
    double usable = firstL;
    double worst = 1;
    for (int day = 0; day < perDayL.size(); day++) {
      boolean reaches = Demand.of(used + perDayL.get(day), logSd).lasts(usable) >= Outlook.SAFE;
      if (!reaches && used > 0) {
        mornings.add(day);
        litres.add(used);
        used = 0;
        usable = fullL;
      }
      used += perDayL.get(day);
      worst = Math.min(worst, Demand.of(used, logSd).lasts(usable));
    }
    return new Visits(mornings, litres, worst);
  }

  /** What is poured in at all visits, median, L. */
  double pouredL() {
    return litres.stream().mapToDouble(Double::doubleValue).sum();
  }

  boolean safe() {
    return lasts >= Outlook.SAFE;
  }
}
