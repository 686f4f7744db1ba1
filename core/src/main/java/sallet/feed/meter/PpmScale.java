package sallet.feed.meter;

import java.util.Arrays;
import sallet.feed.FeedFault;

/**
 * Scales on which meters show conductivity as "ppm". None gives the true mass of a nutrient
 * solution; the factor is a convention of the maker.
 */
public enum PpmScale {
  /** Half of the conductivity, after sodium chloride. */
  HALF("0.5 (NaCl)", 0.5),
  /** Irrigation and soil water. */
  IRRIGATION("0.64 (irrigation water)", 0.64),
  /** After 40 % sodium sulfate, 40 % sodium bicarbonate, 20 % sodium chloride. */
  NATURAL_WATER("0.7 (natural water, 442)", 0.7);

  private final String label;
  private final double factor;

  PpmScale(String label, double factor) {
    this.label = label;
    this.factor = factor;
  }

  /** The scale of a factor as written, such as "0.5" or "0.64". */
  public static PpmScale ofFactor(String factor) {
    return Arrays.stream(values())
        .filter(s -> s.label.startsWith(factor.strip() + " "))
        .findFirst()
        .orElseThrow(
            () -> new FeedFault("The meter's factor must be 0.5, 0.64 or 0.7, was " + factor));
  }

  /** As printed. */
  public String label() {
    return label;
  }

  /** ppm per µS/cm. */
  public double factor() {
    return factor;
  }

  /** Conductivity behind a reading, mS/cm. */
  public double msCm(double ppm) {
    return ppm / factor / 1000;
  }

  /** What a meter of this scale shows. */
  public double ppm(double msCm) {
    return 1000 * msCm * factor;
  }
}
