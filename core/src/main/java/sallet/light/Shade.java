package sallet.light;

import sallet.household.Outlook;

/**
 * The underside of an overhang as a point in the room sees it, looking out.
 *
 * @param zM above the point, m
 * @param nearM its inner edge, out from the point, m
 * @param farM its outer edge, out from the point, m
 * @param x1M left edge, m
 * @param x2M right edge, m
 */
record Shade(double zM, double nearM, double farM, double x1M, double x2M) {

  static Shade of(Opening opening, Outlook.Overhang overhang) {
    double near = opening.distanceM() + opening.revealM();
    return new Shade(
        opening.hole().z2M() + overhang.aboveM(),
        near,
        near + overhang.depthM(),
        opening.hole().x1M() - overhang.besideM(),
        opening.hole().x2M() + overhang.besideM());
  }

  /** Whether it hides the sun. */
  boolean hides(SunPatch sun) {
    double length = zM / sun.up();
    double out = length * sun.out();
    double right = length * sun.right();
    return zM > 0 && out >= nearM && out <= farM && right >= x1M && right <= x2M;
  }

  /**
   * The altitudes it hides in a direction turned from straight out, radians: lower and upper; equal
   * when it hides nothing there.
   */
  double[] hidden(double turnRad) {
    double tan = Math.tan(turnRad);
    double from = nearM;
    double to = farM;
    if (Math.abs(tan) > 1e-9) {
      from = Math.max(from, Math.min(x1M / tan, x2M / tan));
      to = Math.min(to, Math.max(x1M / tan, x2M / tan));
    } else if (x1M > 0 || x2M < 0) {
      return new double[] {0, 0};
    }
    if (zM <= 0 || to <= from) {
      return new double[] {0, 0};
    }
    double z = zM * Math.cos(turnRad);
    return new double[] {Math.atan(z / to), Math.atan(z / from)};
  }
}
