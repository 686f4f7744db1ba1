package sallet.feed.meter;

import java.util.List;

/**
 * One factor for one meter, learned from fresh batches whose EC is known by computation.
 *
 * <p>Normal prior on the logarithm, mean 0, spread 5 % (the accuracy of the conductivity model);
 * each batch counts with 3 % (judgement).
 *
 * @param factor multiply readings by this
 * @param spread remaining uncertainty, as a share
 */
public record MeterFactor(double factor, double spread) {
  private static final double PRIOR_SPREAD = 0.05;
  private static final double BATCH_SPREAD = 0.03;

  /** From the ratios computed over read, one a batch. */
  public static MeterFactor learn(List<Double> computedOverRead) {
    double precision = 1 / (PRIOR_SPREAD * PRIOR_SPREAD);
    double weighted = 0;
    for (double ratio : computedOverRead) {
      double weight = 1 / (BATCH_SPREAD * BATCH_SPREAD);
      precision += weight;
      weighted += weight * Math.log(ratio);
    }
    return new MeterFactor(Math.exp(weighted / precision), Math.sqrt(1 / precision));
  }
}
