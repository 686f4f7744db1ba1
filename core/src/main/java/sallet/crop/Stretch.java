package sallet.crop;

/** How far dim light draws a seedling's stem. The coefficients are common practice. */
public final class Stretch {
  /** Stem length, relative to good light, from which to warn. Judgement. */
  public static final double WARN_ABOVE = 1.5;

  /** Stem length, relative to good light, from which a place is no good. Judgement. */
  public static final double REJECT_ABOVE = 2;

  private Stretch() {}

  /**
   * Length of the stem below the seed leaves, relative to good light.
   *
   * @param dliMol daily light integral, mol/m²/d
   */
  public static double stemFactor(double dliMol) {
    return 1 + 2.5 * Math.exp(-dliMol / 2.5);
  }
}
