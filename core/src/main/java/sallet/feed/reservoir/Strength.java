package sallet.feed.reservoir;

import sallet.feed.FeedFault;

/**
 * Correction of strength, 1 being the full recipe.
 *
 * <p>EC rises a little slower than strength: EC = EC_full f^0.95 (fitted between quarter and full
 * strength of lettuce and tomato solutions with the conductivity model; exponent 0.942 to 0.950).
 */
public final class Strength {
  private static final double EXPONENT = 0.95;

  private Strength() {}

  /** Strength from the salts' part of a reading, both in mS/cm. */
  public static double fromEc(double ecOfSalts, double ecOfFullStrength) {
    return Math.pow(ecOfSalts / ecOfFullStrength, 1 / EXPONENT);
  }

  /** The salts' part of EC at a strength, mS/cm. */
  public static double ec(double strength, double ecOfFullStrength) {
    return ecOfFullStrength * Math.pow(strength, EXPONENT);
  }

  /**
   * Liquid to pour in, L: V (s_t − s) / (s_liquid − s_t). Of two stocks this much of each.
   *
   * @param liquid strength of what is poured: 0 for water, 100 for a hundredfold stock
   */
  public static double litresToAdd(double volumeL, double now, double wanted, double liquid) {
    double litres = volumeL * (wanted - now) / (liquid - wanted);
    if (!(litres >= 0 && Double.isFinite(litres))) {
      throw new FeedFault(
          "A liquid of strength %.2f cannot bring strength %.2f to %.2f"
              .formatted(liquid, now, wanted));
    }
    return litres;
  }
}
