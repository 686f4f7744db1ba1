package sallet.water.reservoir;

/** Oxygen in water that is in balance with air. */
public final class Oxygen {
  private static final double MG_PER_ML = 1.42905;
  private static final double STANDARD_MMHG = 760;

  private Oxygen() {}

  /**
   * Saturation, mg/L. Source: Benson and Krause 1984 as fitted by Garcia and Gordon 1992, Limnology
   * and Oceanography 37:1307-1312; pressure as in the USGS memoranda 81.11 and 2011.03. Range: 0 to
   * 40 °C.
   *
   * @param salinityPsu salinity; a nutrient solution of 1.6 mS/cm is about 1
   */
  public static double saturationMgL(double temperatureC, double pressureMmHg, double salinityPsu) {
    double ts = Math.log((298.15 - temperatureC) / (273.15 + temperatureC));
    double fresh = polynomial(ts, 2.00907, 3.22014, 4.05010, 4.94457, -0.256847, 3.88767);
    double salt = polynomial(ts, 6.24523e-3, 7.37614e-3, 1.03410e-2, 8.17083e-3);
    double mlL = Math.exp(fresh - salinityPsu * salt - 4.88682e-7 * salinityPsu * salinityPsu);
    double vapour = Math.pow(10, 8.10765 - 1750.286 / (235 + temperatureC));
    return MG_PER_ML * mlL * (pressureMmHg - vapour) / (STANDARD_MMHG - vapour);
  }

  private static double polynomial(double x, double... coefficients) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }
}
