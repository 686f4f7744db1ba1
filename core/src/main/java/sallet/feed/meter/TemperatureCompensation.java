package sallet.feed.meter;

import sallet.feed.FeedFault;

/**
 * Linear temperature compensation (ISO 7888 style): EC25 = EC_T / (1 + α (T − 25)).
 *
 * <p>α is 0.0191 for natural waters and 0.02 in most meters; between 10 and 30 °C the straight line
 * errs by less than 1 % for nutrient solutions.
 */
public final class TemperatureCompensation {
  /** Usual slope, per °C. */
  public static final double USUAL_SLOPE = 0.02;

  private TemperatureCompensation() {}

  /** Conductivity at 25 °C of a reading without compensation, same unit. */
  public static double at25(double reading, double temperatureC, double slopePerC) {
    if (!(temperatureC >= 0 && temperatureC <= 50)) {
      throw new FeedFault(
          "The temperature of a reading must be 0 to 50 °C, was %s °C".formatted(temperatureC));
    }
    if (!(slopePerC >= 0 && slopePerC <= 0.03)) {
      throw new FeedFault("The slope must be 0 to 0.03 per °C, was %s".formatted(slopePerC));
    }
    return reading / (1 + slopePerC * (temperatureC - 25));
  }
}
