package sallet.crop;

import java.util.Arrays;
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

  /**
   * Smallest number of seeds in each of some cells so that every cell gets at least one plant with
   * {@link #CERTAINTY}. Cells are sown from one lot: where one fails the others are more likely to
   * fail too (Beta-binomial rule).
   */
  public static int seedsPerCell(int cells, SeedLot lot) {
    return smallest(1, CERTAINTY, n -> everyCell(cells, n, lot));
  }

  /** Probability that each of some cells gets a plant, by how many seeds of the lot came before. */
  static double everyCell(int cells, int seeds, SeedLot lot) {
    double[] came = {1};
    for (int cell = 0; cell < cells; cell++) {
      double[] more = new double[came.length + seeds];
      for (int before = cell; before < came.length; before++) {
        double[] chances = lot.seen(before, cell * seeds).chances(seeds);
        for (int x = 1; x <= seeds; x++) {
          more[before + x] += came[before] * chances[x];
        }
      }
      came = more;
    }
    return Arrays.stream(came).sum();
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
