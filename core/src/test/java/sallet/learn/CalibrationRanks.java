package sallet.learn;

import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Ranks of hidden truths among draws from what is believed of them. When the belief is right every
 * rank is as likely as any other (Talts and others 2018, arXiv:1804.06788).
 */
final class CalibrationRanks {
  static final int DRAWS = 99;
  static final int BINS = 20;

  /** One right belief in a hundred has ranks that stray further. */
  static final double LARGEST_CHI_SQUARE =
      new ChiSquaredDistribution(BINS - 1).inverseCumulativeProbability(0.99);

  private final int[] counts = new int[BINS];

  /** Adds a rank, 0 to {@link #DRAWS}. */
  void add(int rank) {
    counts[rank * BINS / (DRAWS + 1)]++;
  }

  double chiSquare() {
    double expected = IntStream.of(counts).sum() / (double) BINS;
    return IntStream.of(counts)
        .mapToDouble(count -> (count - expected) * (count - expected) / expected)
        .sum();
  }
}
