package sallet.plan;

import sallet.crop.HarvestRule;
import sallet.crop.SeedCount;

/**
 * What things are worth, in points; ten points are one gram missing from a bowl. All judgement, to
 * be shown with every plan.
 */
final class Weights {
  private Weights() {}

  /** A gram missing from a bowl. */
  static final double SHORT = 10;

  /** An edible gram grown and not eaten. */
  static final double WASTE = 2;

  /** A gram of one kind above its share of the bowl. */
  static final double ONE_KIND = 3;

  /** A gram eaten a week after it was picked. */
  static final double CARRIED = 0.05;

  /** A seed sown. */
  static final double SEED = 5;

  /** Largest number of plants in one sowing for which the cells are reckoned. */
  private static final int LARGEST_BATCH = 24;

  /** Points for the seeds of one pot's plants. */
  static double seeds(HarvestRule rule) {
    return SEED * seedsPerPot(rule);
  }

  /** Expected seeds for one pot's plants. */
  static double seedsPerPot(HarvestRule rule) {
    return rule.plantsPerPot() / rule.usableShare();
  }

  /**
   * Cells to reckon for one plant so that the whole cells of any batch size are covered, never more
   * than the household has.
   */
  static double cellsPerPlant(HarvestRule rule, int cells) {
    double most = 0;
    for (int k = 1; k <= LARGEST_BATCH; k++) {
      most = Math.max(most, SeedCount.cellsFor(k, rule.usableShare()) / (double) k);
    }
    return Math.min(most, cells);
  }
}
