package sallet.learn;

import org.hipparchus.distribution.continuous.BetaDistribution;
import sallet.crop.SeedLot;
import sallet.crop.forecast.Band;

/**
 * The share of cells that give a usable plant, before and after counting.
 *
 * @param prior before any count
 * @param cells cells sown in batches that were counted
 * @param came of them, those known to have given a plant
 * @param now after the counts
 */
public record LearnedShare(SeedLot prior, int cells, int came, SeedLot now) {
  /** A share of which nothing was counted yet. */
  public static LearnedShare prior(SeedLot lot) {
    return new LearnedShare(lot, 0, 0, lot);
  }

  /** What is believed now: 10, 50 and 90 %. */
  public Band band() {
    return new Band(quantile(now, 0.1), quantile(now, 0.5), quantile(now, 0.9));
  }

  /** The share that a lot lies below with a probability. */
  static double quantile(SeedLot lot, double probability) {
    return lot.b() == 0
        ? 1
        : new BetaDistribution(lot.a(), lot.b()).inverseCumulativeProbability(probability);
  }

  /** The share after more cells were counted. */
  LearnedShare with(int moreCells, int moreCame, SeedLot then) {
    return new LearnedShare(prior, cells + moreCells, came + moreCame, then);
  }
}
