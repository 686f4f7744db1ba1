package sallet.light;

/**
 * Share of the sky's light on the flat that reaches a point through an upright opening without
 * glass or skyline, in closed form. Each is a corner function of a rectangle from the foot of the
 * perpendicular, put together from four corners.
 */
final class SkyFactor {
  private SkyFactor() {}

  private interface Corner {
    double of(double width, double height);
  }

  /** On a level face under an even sky: the configuration factor of an upright rectangle. */
  static double even(Rectangle hole, double distanceM) {
    return corners(hole.aboveLevel(), (b, h) -> evenCorner(b, h, distanceM));
  }

  /**
   * On a level face under an overcast sky, three times as bright overhead as at the horizon (Moon
   * and Spencer 1942). Integral of the closed form family of Walsh 1961.
   */
  static double overcast(Rectangle hole, double distanceM) {
    return corners(
        hole.aboveLevel(),
        (b, h) ->
            3.0 / 7 * evenCorner(b, h, distanceM)
                + 2 / (7 * Math.PI) * gradedCorner(b, h, distanceM));
  }

  /** On an upright face that looks at the window, even sky and ground alike. */
  static double upright(Rectangle hole, double distanceM) {
    return corners(hole, (b, h) -> Panel.corner(b, h, distanceM));
  }

  private static double corners(Rectangle r, Corner f) {
    return f.of(r.x2M(), r.z2M())
        - f.of(r.x1M(), r.z2M())
        - f.of(r.x2M(), r.z1M())
        + f.of(r.x1M(), r.z1M());
  }

  private static double evenCorner(double b, double h, double d) {
    double slant = Math.hypot(d, h);
    return (Math.atan(b / d) - d / slant * Math.atan(b / slant)) / (2 * Math.PI);
  }

  private static double gradedCorner(double b, double h, double d) {
    double dh = d * d + h * h;
    double db = d * d + b * b;
    return Math.asin(h * b / Math.sqrt(dh * db)) - h * b * d / (dh * Math.sqrt(dh + b * b));
  }
}
