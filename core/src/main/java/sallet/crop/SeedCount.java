package sallet.crop;

/** How many seeds to sow so that enough plants come. */
public final class SeedCount {
  private SeedCount() {}

  /** Strength a + b of the Beta prior over a lot's usable share. */
  public static final double PRIOR_STRENGTH = 20;

  /** Certainty wanted for the number of plants. */
  public static final double CERTAINTY = 0.9;

  /**
   * Smallest number of cells, one plant each, so that at least {@code plants} usable plants come
   * with the certainty wanted, the usable share being Beta distributed (Beta-binomial rule).
   */
  public static int cellsFor(int plants, double usableShare) {
    throw new UnsupportedOperationException("not built yet");
  }
}
