package sallet.weather;

/**
 * The sky's light in three parts: even, around the sun, and along the horizon. Source: Perez,
 * Ineichen, Seals, Michalsky and Stewart 1990, with the coefficients for all sites together.
 *
 * @param evenWm2 on the flat from the even part, W/m²
 * @param aroundSunWm2 on a face turned to the sun from the part around it, W/m²
 * @param horizonWm2 on a standing face from the horizon's part, W/m²; negative when the horizon is
 *     darker than the rest
 * @param clearness 1 under cloud to above 6 in clear air
 */
public record PerezSky(double evenWm2, double aroundSunWm2, double horizonWm2, double clearness) {

  /** No light. */
  public static final PerezSky DARK = new PerezSky(0, 0, 0, 1);

  /** Clearness up to which a sky counts as overcast: the model's first class. */
  public static final double OVERCAST = 1.065;

  private static final double COS_85_DEG = Math.cos(Math.toRadians(85));

  /** Lower edge of the clearness class, then f11, f12, f13, f21, f22, f23. */
  private static final double[][] CLASSES = {
    {1.000, -0.008, 0.588, -0.062, -0.060, 0.072, -0.022},
    {1.065, 0.130, 0.683, -0.151, -0.019, 0.066, -0.029},
    {1.230, 0.330, 0.487, -0.221, 0.055, -0.064, -0.026},
    {1.500, 0.568, 0.187, -0.295, 0.109, -0.152, -0.014},
    {1.950, 0.873, -0.392, -0.362, 0.226, -0.462, 0.001},
    {2.800, 1.132, -1.237, -0.412, 0.288, -0.823, 0.056},
    {4.500, 1.060, -1.600, -0.359, 0.264, -1.127, 0.131},
    {6.200, 0.678, -0.327, -0.250, 0.156, -1.377, 0.251},
  };

  /** The sky of a moment. */
  public static PerezSky of(SkyMoment moment) {
    double diffuse = moment.diffuseWm2();
    if (diffuse <= 0) {
      return DARK;
    }
    double zenith = Math.toRadians(90 - moment.sun().altitudeDeg());
    double cube = 1.041 * zenith * zenith * zenith;
    double clearness = ((diffuse + moment.beamWm2()) / diffuse + cube) / (1 + cube);
    double brightness = diffuse * airMass(moment.sun().altitudeDeg()) / moment.outsideWm2();
    double[] f = CLASSES[classOf(clearness)];
    double aroundSun = Math.max(0, f[1] + f[2] * brightness + f[3] * zenith);
    double horizon = f[4] + f[5] * brightness + f[6] * zenith;
    double sine = Math.max(COS_85_DEG, Math.cos(zenith));
    return new PerezSky(
        (1 - aroundSun) * diffuse, aroundSun * diffuse / sine, horizon * diffuse, clearness);
  }

  private static int classOf(double clearness) {
    int i = CLASSES.length - 1;
    while (i > 0 && clearness < CLASSES[i][0]) {
      i--;
    }
    return i;
  }

  /** Whether the sky is overcast: brightest overhead, without a sun. */
  public boolean overcast() {
    return clearness < OVERCAST;
  }

  /** On a face under an open horizon, W/m². */
  public double onWm2(Plane plane, SunPosition sun) {
    double sum =
        evenWm2 * plane.skyShare()
            + aroundSunWm2 * Math.max(0, plane.cosIncidence(sun))
            + horizonWm2 * Math.sin(Math.toRadians(plane.tiltDeg()));
    return Math.max(0, sum);
  }

  /**
   * Length of the way through the air, 1 straight up. Source: Kasten and Young 1989; altitudes
   * below 0 count as 0.
   */
  static double airMass(double apparentAltitudeDeg) {
    double altitude = Math.max(0, apparentAltitudeDeg);
    return 1
        / (Math.sin(Math.toRadians(altitude)) + 0.50572 * Math.pow(altitude + 6.07995, -1.6364));
  }
}
