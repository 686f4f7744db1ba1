package sallet.water.reservoir;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Water used over some days, lognormal.
 *
 * @param medianL median, L
 * @param logSd standard deviation of its logarithm
 */
public record Demand(double medianL, double logSd) {
  /** Weather and humidity. Judgement. */
  private static final double WEATHER_LOG_SD = 0.15;

  /** Growth. Judgement. */
  private static final double GROWTH_LOG_SD = 0.10;

  private static final NormalDistribution NORMAL = new NormalDistribution();

  public Demand {
    if (!(medianL >= 0 && logSd > 0)) {
      throw new IllegalArgumentException(
          "a demand needs litres and a spread above 0, had %s L and %s".formatted(medianL, logSd));
    }
  }

  /** With the spread of the household's factor, of weather and of growth. */
  public static Demand of(double medianL, double factorLogSd) {
    double variance =
        factorLogSd * factorLogSd + WEATHER_LOG_SD * WEATHER_LOG_SD + GROWTH_LOG_SD * GROWTH_LOG_SD;
    return new Demand(medianL, Math.sqrt(variance));
  }

  /** Probability that a volume is enough. */
  public double lasts(double usableL) {
    if (medianL == 0) {
      return 1;
    }
    return usableL <= 0 ? 0 : NORMAL.cumulativeProbability(Math.log(usableL / medianL) / logSd);
  }

  /** Volume that is enough with a probability, L. */
  public double litresFor(double probability) {
    return medianL * Math.exp(logSd * NORMAL.inverseCumulativeProbability(probability));
  }
}
