package sallet.water.reservoir;

/**
 * How warm the solution is. Bands: 16 to 22 °C well, above 23 °C root rot threatens (Pythium
 * aphanidermatum killed spinach within 3 to 4 days at 27 °C: Bates and Stanghellini 1984; Gold and
 * Stanghellini 1985), above 26 °C acute, below 14 °C roots are slow; the limits are judgement.
 */
public enum SolutionWarmth {
  COLD("Below 14 °C roots take up little: a warmer spot for the reservoir, or wait."),
  COOL("A little cool; growth is slower, nothing is at risk."),
  WELL("16 to 22 °C suits roots and not the moulds that attack them."),
  WARM(
      "Above 22 °C root moulds begin to thrive: keep the reservoir in shade and off the floor heating."),
  HOT(
      "Above 23 °C root rot threatens: cool it, do not let it stand, look at the roots: they should be white."),
  ACUTE("Above 26 °C root rot can kill within days: cool it today or change it.");

  /** Heat a plastic tub gives off for each square metre and kelvin, W. Judgement. */
  private static final double TUB_WM2K = 8;

  private static final double WATER_J_L_K = 4186;

  private final String advice;

  SolutionWarmth(String advice) {
    this.advice = advice;
  }

  /** The band of a temperature. */
  public static SolutionWarmth of(double temperatureC) {
    if (temperatureC < 14) {
      return COLD;
    } else if (temperatureC < 16) {
      return COOL;
    } else if (temperatureC <= 22) {
      return WELL;
    } else if (temperatureC <= 23) {
      return WARM;
    }
    return temperatureC <= 26 ? HOT : ACUTE;
  }

  /** What to do. */
  public String advice() {
    return advice;
  }

  /** By how much a submerged pump warms its tank, K: all its power ends in the water. */
  public static double pumpWarmsK(double watts, double hoursPerDay, double tubM2) {
    return watts * hoursPerDay / 24 / (TUB_WM2K * tubM2);
  }

  /** Hours in which a tank takes on two thirds of a change of the room's temperature. */
  public static double followsHours(double litres, double tubM2) {
    return WATER_J_L_K * litres / (TUB_WM2K * tubM2) / 3600;
  }
}
