package sallet.feed.dose;

/** Volume of a liquid acid or base from the charge it must take away or bring. */
public final class AcidVolume {
  private AcidVolume() {}

  /**
   * Charge / (molarity × equivalents), mL.
   *
   * @param meq charge, meq
   * @param molL strength of the liquid, mol/L (that is mmol/mL)
   * @param equivalents charge one mole takes, 1 or 2
   */
  public static double millilitres(double meq, double molL, int equivalents) {
    return meq / (molL * equivalents);
  }
}
