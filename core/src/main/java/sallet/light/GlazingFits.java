package sallet.light;

/**
 * Short formulas for glass at an angle, relative to light at right angles, to compare {@link
 * Glazing} with. They are good to a few percent below 60 degrees and wrong near grazing.
 */
final class GlazingFits {
  private GlazingFits() {}

  /** ASHRAE incidence angle modifier for one pane, 1 - 0.05 (1/cos θ - 1), not below 0. */
  static double ashrae(double angleRad) {
    return Math.max(0, 1 - 0.05 * (1 / Math.cos(angleRad) - 1));
  }

  /** Rivero 1958, 1.018 cos θ (1 + sin³ θ). */
  static double rivero(double angleRad) {
    double sine = Math.sin(angleRad);
    return 1.018 * Math.cos(angleRad) * (1 + sine * sine * sine);
  }
}
