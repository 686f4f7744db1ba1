package sallet.crop;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * What is believed of the usable share of a lot of seed: a Beta distribution.
 *
 * @param a seeds believed to have come
 * @param b seeds believed to have failed
 */
public record SeedLot(double a, double b) {

  /** Strength a + b before any count. Judgement. */
  public static final double PRIOR_STRENGTH = 20;

  public SeedLot {
    if (!(a > 0 && b >= 0)) {
      throw new IllegalArgumentException(
          "a lot needs a above 0 and b of 0 or more, was " + a + " and " + b);
    }
  }

  /** A lot before any count, believed to have this usable share, above 0 up to 1. */
  public static SeedLot expecting(double usableShare) {
    SeedCount.requireShare("usable share", usableShare);
    return new SeedLot(PRIOR_STRENGTH * usableShare, PRIOR_STRENGTH * (1 - usableShare));
  }

  /** The lot after {@code came} of {@code sown} seeds came. */
  public SeedLot seen(int came, int sown) {
    if (came < 0 || came > sown) {
      throw new IllegalArgumentException("of " + sown + " seeds " + came + " cannot have come");
    }
    return new SeedLot(a + came, b + sown - came);
  }

  /** Mean usable share. */
  public double mean() {
    return a / (a + b);
  }

  /** Usable share that is not exceeded with this probability, 0 to 1. */
  public double quantile(double probability) {
    return b == 0 ? 1 : new BetaDistribution(a, b).inverseCumulativeProbability(probability);
  }

  /** Probability that at least {@code k} of {@code n} seeds come (Beta-binomial). */
  public double atLeast(int k, int n) {
    double fewer = 0;
    double[] chances = chances(n);
    for (int x = 0; x < Math.min(k, n + 1); x++) {
      fewer += chances[x];
    }
    return 1 - fewer;
  }

  /** Probabilities that 0, 1, ... {@code n} of {@code n} seeds come (Beta-binomial). */
  double[] chances(int n) {
    double[] chances = new double[n + 1];
    double none = 1;
    for (int i = 0; i < n; i++) {
      none *= (b + i) / (a + b + i);
    }
    if (none == 0) {
      chances[n] = 1;
      return chances;
    }
    chances[0] = none;
    for (int x = 0; x < n; x++) {
      chances[x + 1] = chances[x] * (n - x) / (x + 1.0) * (x + a) / (n - x - 1 + b);
    }
    return chances;
  }
}
