package sallet.weather;

/**
 * How a mean day's light is spread over its hours: the share of the day's sum that falls in the
 * hour around an hour angle. Both forms are 0 outside sunrise to sunset; sampled values want to be
 * scaled to the sum 1.
 */
public final class HourShape {
  private HourShape() {}

  /**
   * Of the global light. Source: Collares-Pereira and Rabl 1979.
   *
   * @param hourAngleRad 0 at noon
   * @param sunsetAngleRad hour angle of sunset, 0 to π
   */
  public static double global(double hourAngleRad, double sunsetAngleRad) {
    double late = sunsetAngleRad - Math.toRadians(60);
    double a = 0.409 + 0.5016 * Math.sin(late);
    double b = 0.6609 - 0.4767 * Math.sin(late);
    return diffuse(hourAngleRad, sunsetAngleRad) * (a + b * Math.cos(hourAngleRad));
  }

  /** Of the diffuse light. Source: Liu and Jordan 1960; arguments as for the global light. */
  public static double diffuse(double hourAngleRad, double sunsetAngleRad) {
    if (Math.abs(hourAngleRad) >= sunsetAngleRad) {
      return 0;
    }
    double cosSunset = Math.cos(sunsetAngleRad);
    return Math.PI
        / 24
        * (Math.cos(hourAngleRad) - cosSunset)
        / (Math.sin(sunsetAngleRad) - sunsetAngleRad * cosSunset);
  }
}
