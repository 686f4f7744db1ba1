package sallet.feed.solution;

/**
 * Equilibrium constants of water, carbon dioxide and calcite.
 *
 * <p>Plummer and Busenberg (1982, Geochim. Cosmochim. Acta 46:1011), T in kelvin; coefficients from
 * memory, they give the published −6.352, −10.329, −1.468 and −8.480 at 25 °C. Valid 0 to 90 °C.
 */
public final class Carbonate {
  private Carbonate() {}

  /** log10 K of CO2 + H2O = H + HCO3. */
  public static double logK1(double temperatureC) {
    double k = kelvin(temperatureC);
    return -356.3094 - 0.06091964 * k + 21834.37 / k + 126.8339 * Math.log10(k) - 1684915 / (k * k);
  }

  /** log10 K of HCO3 = H + CO3. */
  public static double logK2(double temperatureC) {
    double k = kelvin(temperatureC);
    return -107.8871 - 0.03252849 * k + 5151.79 / k + 38.92561 * Math.log10(k) - 563713.9 / (k * k);
  }

  /** log10 of the solubility of carbon dioxide, mol/(kg atm). */
  public static double logHenry(double temperatureC) {
    double k = kelvin(temperatureC);
    return 108.3865 + 0.01985076 * k - 6919.53 / k - 40.45154 * Math.log10(k) + 669365 / (k * k);
  }

  /** log10 of the solubility product of calcite. */
  public static double logCalcite(double temperatureC) {
    double k = kelvin(temperatureC);
    return -171.9065 - 0.077993 * k + 2839.319 / k + 71.595 * Math.log10(k);
  }

  /** log10 of the ion product of water (Harned and Hamer form, 1933). */
  public static double logWater(double temperatureC) {
    double k = kelvin(temperatureC);
    return 6.0875 - 4470.99 / k - 0.01706 * k;
  }

  private static double kelvin(double temperatureC) {
    return temperatureC + Water.ZERO_CELSIUS_K;
  }
}
