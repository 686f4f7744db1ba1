package sallet.light;

/**
 * Share of the sky's light on the flat outdoors that reaches a point through a glazed opening.
 *
 * <p>The sky seen through the opening is cut into upright strips of equal azimuth and each strip
 * into steps of equal light on the flat (equal in the square of the sine of the altitude); a ray
 * through the middle of each step meets the glass at its own angle. Without glass the sum along a
 * strip is exact, skyline and reveal included, so that few rays do.
 *
 * @param even under an even sky
 * @param overcast under an overcast sky, three times as bright overhead as at the horizon (Moon and
 *     Spencer 1942)
 */
record SkyCoefficients(double even, double overcast) {
  static final SkyCoefficients NONE = new SkyCoefficients(0, 0);

  private static final int STRIPS = 32;

  private static final int RAYS_IN_STRIP = 12;

  /**
   * How bright houses look against the sky they hide. Source: Building Research Establishment
   * Digest 309, as tabulated by Tregenza and Sharples.
   */
  private static final double HOUSES_IN_EVEN_SKY = 0.1;

  private static final double HOUSES_IN_OVERCAST_SKY = 0.2;

  SkyCoefficients times(double factor) {
    return new SkyCoefficients(even * factor, overcast * factor);
  }

  SkyCoefficients plus(SkyCoefficients other) {
    return new SkyCoefficients(even + other.even, overcast + other.overcast);
  }

  /** With houses or hills up to an altitude, which are not quite black. */
  static SkyCoefficients of(Opening opening, Glazing glazing, double skylineDeg) {
    SkyCoefficients seen = aboveSkyline(opening, glazing, skylineDeg);
    if (skylineDeg <= 0) {
      return seen;
    }
    SkyCoefficients whole = aboveSkyline(opening, glazing, 0);
    return new SkyCoefficients(
        seen.even + HOUSES_IN_EVEN_SKY * (whole.even - seen.even),
        seen.overcast + HOUSES_IN_OVERCAST_SKY * (whole.overcast - seen.overcast));
  }

  /** With a black skyline. */
  static SkyCoefficients aboveSkyline(Opening opening, Glazing glazing, double skylineDeg) {
    Rectangle part = opening.clear().aboveLevel();
    if (part.isEmpty()) {
      return NONE;
    }
    double d = opening.distanceM();
    double skyline = Math.toRadians(Math.max(0, skylineDeg));
    double left = Math.atan(part.x1M() / d);
    double step = (Math.atan(part.x2M() / d) - left) / STRIPS;
    SkyCoefficients sum = NONE;
    for (int i = 0; i < STRIPS; i++) {
      double cosTurn = Math.cos(left + (i + 0.5) * step);
      double low = Math.max(skyline, Math.atan(part.z1M() * cosTurn / d));
      double high = Math.atan(part.z2M() * cosTurn / d);
      if (high > low) {
        sum = sum.plus(strip(low, high, cosTurn, glazing));
      }
    }
    return sum.times(step / Math.PI);
  }

  /** Integral of sin g cos g over the altitudes g of a strip, times glass and the sky's pattern. */
  private static SkyCoefficients strip(double low, double high, double cosTurn, Glazing glazing) {
    double step = (high - low) / RAYS_IN_STRIP;
    double even = 0;
    double overcast = 0;
    for (int j = 0; j < RAYS_IN_STRIP; j++) {
      double altitude = low + (j + 0.5) * step;
      double light = Math.sin(2 * altitude) * Math.sin(step) / 2;
      double through = light * glazing.at(cosTurn * Math.cos(altitude));
      even += through;
      overcast += through * (1 + 2 * Math.sin(altitude));
    }
    return new SkyCoefficients(even, overcast * 3 / 7);
  }
}
