package sallet.light;

/** Lamps that are bright below and fade to the sides alike all around. */
final class Beam {
  private Beam() {}

  /**
   * Flux of a lamp whose intensity falls with the power m of the cosine, per intensity straight
   * down: 2π/(m + 1). Exact; m = 1 is Lambert's law.
   */
  static double cosineFlux(double power) {
    return 2 * Math.PI / (power + 1);
  }

  /** Angle from straight down at which such a lamp has half its intensity, degrees. Exact. */
  static double halfAngleDeg(double power) {
    return Math.toDegrees(Math.acos(Math.pow(2, -1 / power)));
  }

  /**
   * Flux from a table of intensities by zones: 2π (cos a - cos b) times the mean of both ends.
   * Source: zonal flux as in the IES Lighting Handbook.
   *
   * @param anglesDeg from straight down, growing, degrees
   * @param intensities at these angles
   */
  static double zonalFlux(double[] anglesDeg, double[] intensities) {
    double flux = 0;
    for (int i = 1; i < anglesDeg.length; i++) {
      double zone =
          Math.cos(Math.toRadians(anglesDeg[i - 1])) - Math.cos(Math.toRadians(anglesDeg[i]));
      flux += Math.PI * zone * (intensities[i - 1] + intensities[i]);
    }
    return flux;
  }
}
