package sallet.light;

/**
 * Share of the sky's light on the flat outdoors that reaches a point through a glazed opening.
 *
 * @param even under an even sky
 * @param overcast under an overcast sky, three times as bright overhead as at the horizon (Moon and
 *     Spencer 1942)
 */
record SkyCoefficients(double even, double overcast) {
  static final SkyCoefficients NONE = new SkyCoefficients(0, 0);

  /** Rays along each side of an opening to begin with. */
  private static final int RAYS = 8;

  /** The same below a skyline, whose edge cuts the rays. */
  private static final int RAYS_AT_SKYLINE = 32;

  private static final int MOST_RAYS = 512;

  /** Change from one halving of the rays' cells to the next that ends it. */
  private static final double SETTLED = 0.005;

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

  /** With a black skyline: rays through the opening, the cells halved until the sum settles. */
  static SkyCoefficients aboveSkyline(Opening opening, Glazing glazing, double skylineDeg) {
    Rectangle part = opening.clear().aboveLevel();
    if (part.isEmpty()) {
      return NONE;
    }
    double longest = Math.max(part.widthM(), part.heightM());
    int least = skylineDeg > 0 ? RAYS_AT_SKYLINE : RAYS;
    int n = Math.max(least, 2 * (int) Math.ceil(0.35 * longest / opening.distanceM()));
    SkyCoefficients before = rays(part, opening.distanceM(), glazing, skylineDeg, n);
    while (n < MOST_RAYS) {
      n *= 2;
      SkyCoefficients finer = rays(part, opening.distanceM(), glazing, skylineDeg, n);
      if (Math.abs(finer.even - before.even) <= SETTLED * finer.even) {
        return finer;
      }
      before = finer;
    }
    return before;
  }

  /**
   * Sum over n by n cells, each seen along the ray to its middle: solid angle and slant of a cell
   * of area dA at distance r are dA d/r³ and z/r, so its share of an even sky's light is dA z d/(π
   * r⁴).
   */
  private static SkyCoefficients rays(
      Rectangle part, double d, Glazing glazing, double skylineDeg, int n) {
    double dx = part.widthM() / n;
    double dz = part.heightM() / n;
    double skylineSine = Math.sin(Math.toRadians(skylineDeg));
    double even = 0;
    double overcast = 0;
    for (int i = 0; i < n; i++) {
      double x = part.x1M() + (i + 0.5) * dx;
      for (int j = 0; j < n; j++) {
        double z = part.z1M() + (j + 0.5) * dz;
        double r2 = x * x + z * z + d * d;
        double r = Math.sqrt(r2);
        if (z >= r * skylineSine) {
          double share = z * d / (r2 * r2) * glazing.at(d / r);
          even += share;
          overcast += share * (1 + 2 * z / r);
        }
      }
    }
    double cell = dx * dz / Math.PI;
    return new SkyCoefficients(even * cell, overcast * cell * 3 / 7);
  }
}
