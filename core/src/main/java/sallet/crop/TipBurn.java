package sallet.crop;

/**
 * How likely the margins of inner young leaves die back: more with light and heat, less with air
 * blown onto the crown, since calcium must follow growth. An index for ranking and warning, not a
 * measured probability; its coefficients are common practice.
 */
public final class TipBurn {
  private TipBurn() {}

  /** Speed of the air from which more of it helps no more, m/s. */
  public static final double ENOUGH_AIR_M_PER_S = 0.3;

  /** Daily light the crop bears in moving air, mol/m²/d. */
  public static double borneMol(double airMPerS, double typeFactor) {
    return (12 + 5 * Math.min(1, airMPerS / ENOUGH_AIR_M_PER_S)) * typeFactor;
  }

  /**
   * Index from 0 to 1.
   *
   * @param dliMol mean daily light integral of five days, mol/m²/d
   * @param meanC mean temperature of the 24 hours, °C
   * @param airMPerS air speed at the crown, m/s
   * @param typeFactor light the crop bears, relative to the usual type
   * @param closingHead whether the leaves close to a head
   */
  public static double index(
      double dliMol, double meanC, double airMPerS, double typeFactor, boolean closingHead) {
    double drive =
        -3
            + 0.35 * (dliMol - borneMol(airMPerS, typeFactor))
            + 0.25 * Math.max(0, meanC - 24)
            + (closingHead ? 1.0 : 0);
    return 1 / (1 + Math.exp(-drive));
  }
}
