package sallet.crop;

import java.util.function.IntToDoubleFunction;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/** How many seeds to sow so that enough plants come. */
public final class SeedCount {
  private SeedCount() {}

  /** Certainty wanted for the number of plants. Judgement. */
  public static final double CERTAINTY = 0.9;

  /** Slack in comparing a probability with the certainty wanted. */
  private static final double ROUNDING = 1e-12;

  /**
   * Smallest number of cells, one plant each, so that at least {@code plants} usable plants come
   * with the certainty wanted, the usable share being Beta distributed (Beta-binomial rule).
   *
   * @param usableShare mean usable share of the lot, above 0 up to 1
   */
  public static int cellsFor(int plants, double usableShare) {
    return cellsFor(plants, SeedLot.expecting(usableShare));
  }

  /** The same for a lot of which some seeds may have been counted. */
  public static int cellsFor(int plants, SeedLot lot) {
    return smallest(plants, CERTAINTY, n -> lot.atLeast(plants, n));
  }

  /** The same for a share known exactly (binomial rule). */
  public static int cellsForKnownShare(int plants, double usableShare, double certainty) {
    requireShare("usable share", usableShare);
    requireCertainty(certainty);
    return smallest(
        plants,
        certainty,
        n -> 1 - new BinomialDistribution(n, usableShare).cumulativeProbability(plants - 1));
  }

  /** Smallest number of seeds in a cell so that at least one comes with the certainty wanted. */
  public static int seedsPerCell(double share, double certainty) {
    requireShare("germinating share", share);
    requireCertainty(certainty);
    return smallest(1, certainty, n -> 1 - Math.pow(1 - share, n));
  }

  /** The same for a lot of which some seeds may have been counted (Beta-binomial rule). */
  public static int seedsPerCell(SeedLot lot, double certainty) {
    requireCertainty(certainty);
    return smallest(1, certainty, n -> lot.atLeast(1, n));
  }

  private static int smallest(int plants, double certainty, IntToDoubleFunction probability) {
    if (plants < 0) {
      throw new IllegalArgumentException("plants wanted must be 0 or more, were " + plants);
    }
    int n = plants;
    while (n > 0 && probability.applyAsDouble(n) < certainty - ROUNDING) {
      n++;
    }
    return n;
  }

  static void requireShare(String what, double share) {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException(what + " must be above 0 and at most 1, was " + share);
    }
  }

  private static void requireCertainty(double certainty) {
    if (!(certainty > 0 && certainty < 1)) {
      throw new IllegalArgumentException(
          "certainty must lie between 0 and 1, both excluded, was " + certainty);
    }
  }
}
