package sallet.learn;

import sallet.crop.SeedLot;

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
}
