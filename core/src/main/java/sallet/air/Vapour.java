package sallet.air;

/**
 * Water vapour in the air: one set of formulas for the whole program. Range: 0 to 50 °C. Source,
 * unless another is named: Allen, Pereira, Raes and Smith (1998), FAO Irrigation and Drainage Paper
 * 56.
 */
public final class Vapour {
  /** Gas constant, J/mol/K, and molar mass of water, kg/mol. */
  private static final double GAS_J_MOL_K = 8.314462;

  private static final double WATER_KG_MOL = 0.018015;

  private static final double KELVIN = 273.15;

  /** Psychrometer coefficient of an aspirated wet bulb, 1/°C. FAO-56 equation 16. */
  private static final double ASPIRATED_PER_C = 0.000662;

  private Vapour() {}

  /** Vapour pressure of saturated air, kPa. Equation 11. */
  public static double saturationKpa(double temperatureC) {
    return 0.6108 * Math.exp(17.27 * temperatureC / (temperatureC + 237.3));
  }

  /** How fast saturation grows with temperature, kPa/°C. Equation 13. */
  public static double slopeKpaPerC(double temperatureC) {
    double below = temperatureC + 237.3;
    return 4098 * saturationKpa(temperatureC) / (below * below);
  }

  /** Pressure of the air at a height above the sea, kPa. Equation 7. */
  public static double pressureKpa(double elevationM) {
    return 101.3 * Math.pow((293 - 0.0065 * elevationM) / 293, 5.26);
  }

  /** Psychrometric constant, kPa/°C. Equation 8. */
  public static double psychrometricKpaPerC(double pressureKpa) {
    return 0.665e-3 * pressureKpa;
  }

  /** Heat that evaporates a gram of water, J/g. Annex 3 (from memory). */
  public static double latentJPerG(double temperatureC) {
    return 1000 * (2.501 - 0.002361 * temperatureC);
  }

  /** Water in a cubic metre of air, g/m³. Ideal gas. */
  public static double concentrationGM3(double vapourKpa, double temperatureC) {
    return 1e6 * vapourKpa * WATER_KG_MOL / (GAS_J_MOL_K * (temperatureC + KELVIN));
  }

  /** Vapour pressure of air that holds so much water, kPa: the inverse of the concentration. */
  public static double kpaOfConcentration(double gM3, double temperatureC) {
    return gM3 * GAS_J_MOL_K * (temperatureC + KELVIN) / (1e6 * WATER_KG_MOL);
  }

  /** Temperature at which the vapour saturates the air, °C: the inverse of equation 11. */
  public static double dewPointC(double vapourKpa) {
    double x = Math.log(vapourKpa / 0.6108);
    return 237.3 * x / (17.27 - x);
  }

  /** Vapour pressure from a dry and a wet bulb in moving air, kPa. Equation 15. */
  public static double ofPsychrometerKpa(double dryC, double wetC, double pressureKpa) {
    return saturationKpa(wetC) - ASPIRATED_PER_C * pressureKpa * (dryC - wetC);
  }

  /** Temperature of a wet bulb in moving air, °C: equation 15 solved by halving. */
  public static double wetBulbC(double dryC, double vapourKpa, double pressureKpa) {
    double low = dewPointC(vapourKpa);
    double high = dryC;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (ofPsychrometerKpa(dryC, middle, pressureKpa) < vapourKpa) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Relative humidity of air that is cooled or warmed without gaining or losing water, percent, at
   * most 100: what is too much becomes dew.
   */
  public static double humidityAfter(double humidityPercent, double fromC, double toC) {
    return Math.min(100, humidityPercent * saturationKpa(fromC) / saturationKpa(toC));
  }
}
