package sallet.light;

/**
 * A flat face that shines evenly in all directions (Lambert's law), above and parallel to the face
 * it lights. The light at a point is what the panel sends out per area, times the configuration
 * factor. Exact at any distance: no part of the panel is taken as a point.
 */
final class Panel {
  private Panel() {}

  /**
   * Configuration factor of a rectangle whose corner lies straight above the point; odd in each
   * side. Source: the closed form of radiative transfer handbooks, for instance Howell, "A Catalog
   * of Radiation Heat Transfer Configuration Factors", C-11.
   */
  static double corner(double a, double b, double heightM) {
    double p = a / heightM;
    double q = b / heightM;
    double sp = Math.sqrt(1 + p * p);
    double sq = Math.sqrt(1 + q * q);
    return (p / sp * Math.atan(q / sp) + q / sq * Math.atan(p / sq)) / (2 * Math.PI);
  }

  /**
   * Configuration factor of a rectangle.
   *
   * @param lengthM size along x, m
   * @param widthM size along y, m
   * @param xM from the middle of the panel to the point along x, m
   * @param yM the same along y, m
   * @param heightM panel above the point, above 0 m
   */
  static double rectangle(double lengthM, double widthM, double xM, double yM, double heightM) {
    double x1 = -lengthM / 2 - xM;
    double x2 = lengthM / 2 - xM;
    double y1 = -widthM / 2 - yM;
    double y2 = widthM / 2 - yM;
    return corner(x2, y2, heightM)
        - corner(x1, y2, heightM)
        - corner(x2, y1, heightM)
        + corner(x1, y1, heightM);
  }

  /** Configuration factor of a disc for a point beside its axis (Howell, as above, B-13). */
  static double disc(double diameterM, double offsetM, double heightM) {
    double r2 = diameterM * diameterM / 4;
    double a2 = offsetM * offsetM;
    double h2 = heightM * heightM;
    double sum = h2 + a2 + r2;
    return 0.5 * (1 - (h2 + a2 - r2) / Math.sqrt(sum * sum - 4 * a2 * r2));
  }
}
