package sallet.air;

/** Water vapour in the air. */
public final class Vapour {
  private Vapour() {}

  /**
   * Vapour pressure of saturated air, kPa. Source: FAO Irrigation and Drainage Paper 56 (1998),
   * equation 11. Range: 0 to 50 °C.
   */
  public static double saturationKpa(double temperatureC) {
    return 0.6108 * Math.exp(17.27 * temperatureC / (temperatureC + 237.3));
  }

  /**
   * Relative humidity of air that is cooled or warmed without gaining or losing water, percent, at
   * most 100: what is too much becomes dew.
   */
  public static double humidityAfter(double humidityPercent, double fromC, double toC) {
    return Math.min(100, humidityPercent * saturationKpa(fromC) / saturationKpa(toC));
  }
}
