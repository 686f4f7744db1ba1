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
  static final double ONE_KIND = 2;

  /** A gram eaten a week after it was picked. */
  static final double CARRIED = 0.05;

  /** A seed sown, with its cell, its medium and the care of it. Found by playing seasons. */
  static final double SEED = 15;

  /** A plant sown more or fewer than the last plan promised for the coming two weeks. */
  static final double CHANGE = 10;

  /** The same when nothing was recorded since: more than any plan can gain by it. */
  static final double FIRM_CHANGE = 10_000;

  /** Points for the seeds of one pot's plants. */
  static double seeds(HarvestRule rule) {
    return SEED * seedsPerPot(rule);
  }

  /** Expected seeds for one pot's plants. */
  static double seedsPerPot(HarvestRule rule) {
    return rule.plantsPerPot() / rule.usableShare();
  }

  /**
   * Fewest cells a plant can take in any whole batch the household has cells for: the plan with
   * fractions counts with these, so that no whole plan takes fewer.
   */
  static double cellsPerPlant(HarvestRule rule, int cells) {
    double least = cells;
    for (int k = 1; k <= cells && batchCells(k, rule, cells) <= cells; k++) {
      least = Math.min(least, batchCells(k, rule, cells) / (double) k);
    }
    return least;
  }

  /** Cells for a batch of plants; a household with too few for one plant sows all it has. */
  static int batchCells(int plants, HarvestRule rule, int cells) {
    int wanted = plants == 0 ? 0 : SeedCount.cellsFor(plants, rule.usableShare());
    return plants == 1 ? Math.min(wanted, cells) : wanted;
  }
}
