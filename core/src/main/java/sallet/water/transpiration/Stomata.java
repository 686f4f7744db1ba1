package sallet.water.transpiration;

/** How far leaf pores are open. */
public final class Stomata {
  private Stomata() {}

  /**
   * Resistance of lettuce leaves to water vapour, s/m: 60 (1500 + PPFD) / (200 + PPFD), 450 in the
   * dark. Source: Graamans et al. 2017, Agricultural Systems 153:138-147, equation 9; seen at 140
   * to 600 µmol/m²/s, 15 to 25 °C.
   */
  public static double resistanceSM(double ppfdUmol) {
    return 60 * (1500 + ppfdUmol) / (200 + ppfdUmol);
  }
}
