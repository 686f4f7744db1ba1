package sallet.weather;

/**
 * Share of the light on the flat that comes from the sky and not straight from the sun, from the
 * clearness: the light on the flat over the same outside the air.
 *
 * <p>{@link #erbsMonthly} fits mean weather (Sallet's climates), {@link #erbsDaily} a single day,
 * {@link #erbsHourly} a single hour. {@link #orgillHollandsHourly} and {@link #bolandHourly} are
 * there to compare with.
 */
public final class DiffuseFraction {
  /** Sunset angle that parts winter from the other seasons in the daily and monthly forms. */
  private static final double WINTER_SUNSET_DEG = 81.4;

  private DiffuseFraction() {}

  /** Of an hour. Source: Erbs, Klein and Duffie 1982, hourly correlation; clearness 0 to 1. */
  public static double erbsHourly(double clearness) {
    double k = clearness;
    if (k <= 0.22) {
      return 1 - 0.09 * k;
    }
    return k <= 0.80 ? 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336))) : 0.165;
  }

  /** Of an hour. Source: Orgill and Hollands 1977; clearness 0 to 1. */
  public static double orgillHollandsHourly(double clearness) {
    if (clearness < 0.35) {
      return 1 - 0.249 * clearness;
    }
    return clearness <= 0.75 ? 1.557 - 1.84 * clearness : 0.177;
  }

  /**
   * Of an hour. Source: Boland, Huang and Ridley 2013, logistic form with the coefficients for
   * quarter-hours; clearness 0 to 1.
   */
  public static double bolandHourly(double clearness) {
    return 1 / (1 + Math.exp(8.645 * (clearness - 0.613)));
  }

  /** Of a day. Source: Erbs, Klein and Duffie 1982, daily correlation. */
  public static double erbsDaily(double clearness, double sunsetAngleDeg) {
    double k = clearness;
    if (sunsetAngleDeg <= WINTER_SUNSET_DEG) {
      return k < 0.715 ? 1 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : 0.143;
    }
    return k < 0.722 ? 1 + k * (0.2832 + k * (-2.5557 + k * 0.8448)) : 0.175;
  }

  /**
   * Of a month's mean day. Source: Erbs, Klein and Duffie 1982, monthly correlation. Fitted for
   * clearness 0.3 to 0.8; the nearer end is taken outside.
   */
  public static double erbsMonthly(double clearness, double sunsetAngleDeg) {
    double k = Math.max(0.3, Math.min(0.8, clearness));
    return sunsetAngleDeg <= WINTER_SUNSET_DEG
        ? 1.391 + k * (-3.560 + k * (4.189 - k * 2.137))
        : 1.311 + k * (-3.022 + k * (3.427 - k * 1.821));
  }

  /**
   * Clearness of an hour, 0 to 1. The sine of the altitude is taken as at least 0.065 (3.7
   * degrees), below which the ratio means nothing (common practice).
   */
  public static double clearness(double globalWm2, double outsideNormalWm2, double sinAltitude) {
    return Math.min(1, Math.max(0, globalWm2) / (outsideNormalWm2 * Math.max(0.065, sinAltitude)));
  }
}
