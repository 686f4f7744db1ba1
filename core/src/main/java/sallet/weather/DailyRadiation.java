package sallet.weather;

/**
 * Daily sums of sunlight on the flat. Source: Allen, Pereira, Raes and Smith 1998, FAO Irrigation
 * and Drainage Paper 56, equations 21 to 25, 34, 35 and 37. Any latitude; polar day and night
 * included.
 */
public final class DailyRadiation {
  /** Solar constant of equation 21, MJ per m² and minute. */
  private static final double SOLAR_CONSTANT_MJ_M2_MIN = 0.0820;

  /** Share of the light outside the air that arrives on a day without sunshine, equation 35. */
  static final double OVERCAST_SHARE = 0.25;

  /** What full sunshine adds to it, equation 35. */
  static final double SUNSHINE_SHARE = 0.50;

  private DailyRadiation() {}

  /** On a flat outside the air, MJ per m² and day (equation 21). */
  public static double outsideAirMegaJoules(double latitudeDeg, int dayOfYear) {
    double distance = 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
    double lat = Math.toRadians(latitudeDeg);
    double decl = declinationRad(dayOfYear);
    double ws = sunsetAngleRad(latitudeDeg, decl);
    return 24
        * 60
        / Math.PI
        * SOLAR_CONSTANT_MJ_M2_MIN
        * distance
        * (ws * Math.sin(lat) * Math.sin(decl) + Math.cos(lat) * Math.cos(decl) * Math.sin(ws));
  }

  /** From sunrise to sunset of the sun's middle, without refraction, h (equation 34). */
  public static double dayLengthHours(double latitudeDeg, int dayOfYear) {
    return 24 / Math.PI * sunsetAngleRad(latitudeDeg, dayOfYear);
  }

  /** Hour angle at sunset, radians, 0 in polar night and π in polar day (equation 25). */
  static double sunsetAngleRad(double latitudeDeg, int dayOfYear) {
    return sunsetAngleRad(latitudeDeg, declinationRad(dayOfYear));
  }

  private static double sunsetAngleRad(double latitudeDeg, double declinationRad) {
    double cos = -Math.tan(Math.toRadians(latitudeDeg)) * Math.tan(declinationRad);
    return Math.acos(Math.max(-1, Math.min(1, cos)));
  }

  private static double declinationRad(int dayOfYear) {
    return 0.409 * Math.sin(2 * Math.PI * dayOfYear / 365 - 1.39);
  }

  /**
   * Share of the light outside the air that reaches the ground, from the share of the day length
   * with bright sunshine (Ångström's equation 35 with a = 0.25, b = 0.50).
   *
   * @param sunshineShare 0 to 1; above is taken as 1
   */
  public static double clearnessFromSunshine(double sunshineShare) {
    return OVERCAST_SHARE + SUNSHINE_SHARE * Math.min(1, sunshineShare);
  }

  /**
   * On the flat at the ground from hours of bright sunshine, MJ per m² and day (equation 35); 0 in
   * polar night.
   */
  public static double fromSunshineMegaJoules(
      double latitudeDeg, int dayOfYear, double sunshineHours) {
    double dayLength = dayLengthHours(latitudeDeg, dayOfYear);
    return dayLength == 0
        ? 0
        : clearnessFromSunshine(sunshineHours / dayLength)
            * outsideAirMegaJoules(latitudeDeg, dayOfYear);
  }

  /** On the flat at the ground under a clear sky, MJ per m² and day (equation 37). */
  public static double clearSkyMegaJoules(double latitudeDeg, int dayOfYear, double elevationM) {
    return (0.75 + 2e-5 * elevationM) * outsideAirMegaJoules(latitudeDeg, dayOfYear);
  }
}
