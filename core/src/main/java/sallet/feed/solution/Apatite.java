package sallet.feed.solution;

import sallet.feed.ion.Ion;

/**
 * Hydroxyapatite, the most insoluble calcium phosphate: a long-term note only, because it forms
 * slowly and its published solubility products differ by four powers of ten.
 *
 * <p>Reaction Ca5(PO4)3OH + 4 H = 5 Ca + 3 HPO4 + H2O.
 */
public final class Apatite {
  /** Heat of the data base's reaction, kJ/mol (−36.155 kcal, from memory). */
  private static final double HEAT_KJ = -151.27;

  private Apatite() {}

  /** With log10 K = −3.421 at 25 °C of a public-domain data base (Parkhurst and Appelo 2013). */
  public static double saturationIndex(SolutionState state) {
    double t = state.temperatureC() + Water.ZERO_CELSIUS_K;
    double slope = HEAT_KJ * 1000 / (Math.log(10) * Water.GAS_CONSTANT);
    return logProduct(state) + 3.421 + slope * (1 / t - 1 / (25 + Water.ZERO_CELSIUS_K));
  }

  /**
   * With log10 K = −7.47 after McDowell, Gregory and Brown 1977 (from memory), at any temperature.
   */
  public static double saturationIndexAfterMcDowell(SolutionState state) {
    return logProduct(state) + 7.47;
  }

  private static double logProduct(SolutionState state) {
    return 5 * state.logActivity(Ion.CALCIUM.name())
        + 3 * state.logActivity(Species.HYDROGEN_PHOSPHATE)
        + 4 * state.ph();
  }
}
