package sallet.learn;

import sallet.crop.SeedLot;

/** Learns the share of cells that give a plant from counts, exact and not. */
final class SeedCounts {
  private SeedCounts() {}

  /**
   * The lot after at least {@code came} of {@code sown} cells gave a plant: the rest were not
   * looked at. What is believed then is a mixture of Beta distributions, one for each number that
   * may have come, weighted by its Beta-binomial probability; it is told as the Beta distribution
   * of the same mean and variance.
   */
  static SeedLot atLeast(SeedLot lot, int came, int sown) {
    if (came <= 0 || lot.b() == 0) {
      return lot;
    }
    double n = lot.a() + lot.b() + sown;
    double sum = 0;
    double first = 0;
    double second = 0;
    for (int j = came; j <= sown; j++) {
      double weight = lot.atLeast(j, sown) - (j < sown ? lot.atLeast(j + 1, sown) : 0);
      double a = lot.a() + j;
      sum += weight;
      first += weight * a / n;
      second += weight * a * (a + 1) / (n * (n + 1));
    }
    double mean = first / sum;
    double variance = second / sum - mean * mean;
    double strength = mean * (1 - mean) / variance - 1;
    return new SeedLot(mean * strength, (1 - mean) * strength);
  }
}
