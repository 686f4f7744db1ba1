package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.List;

/**
 * What one season gave.
 *
 * @param weeks a week for each bowl day, in order
 */
public record PlayedSeason(List<Week> weeks) {
  public PlayedSeason {
    weeks = List.copyOf(weeks);
  }

  /**
   * A week, up to and with its bowl day. All grams are edible grams.
   *
   * @param bowlDay the day of the bowl
   * @param demandGrams what was wanted; 0 when everybody was away
   * @param eatenGrams what was in the bowl
   * @param kinds kinds of which it held 10 g or more
   * @param harvestGrams picked and lifted
   * @param spoiltGrams picked and not eaten in time
   * @param clearedGrams thrown away with plants that were not eaten
   * @param seeds seeds sown
   * @param touched plants picked or lifted
   */
  public record Week(
      LocalDate bowlDay,
      double demandGrams,
      double eatenGrams,
      int kinds,
      double harvestGrams,
      double spoiltGrams,
      double clearedGrams,
      int seeds,
      int touched) {

    /** Grown and not eaten. */
    public double wastedGrams() {
      return spoiltGrams + clearedGrams;
    }
  }
}
