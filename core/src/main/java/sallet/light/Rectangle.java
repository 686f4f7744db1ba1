package sallet.light;

/**
 * An upright rectangle, seen from a point: x to the right, z up from it.
 *
 * @param x1M left edge, m
 * @param x2M right edge, m
 * @param z1M lower edge, m
 * @param z2M upper edge, m
 */
record Rectangle(double x1M, double x2M, double z1M, double z2M) {

  boolean isEmpty() {
    return x2M <= x1M || z2M <= z1M;
  }

  boolean contains(double xM, double zM) {
    return xM >= x1M && xM <= x2M && zM >= z1M && zM <= z2M;
  }

  double widthM() {
    return x2M - x1M;
  }

  double heightM() {
    return z2M - z1M;
  }

  /** The part above the level of the point. */
  Rectangle aboveLevel() {
    return new Rectangle(x1M, x2M, Math.max(0, z1M), Math.max(0, z2M));
  }

  /** What both cover; may be empty. */
  Rectangle and(Rectangle other) {
    return new Rectangle(
        Math.max(x1M, other.x1M),
        Math.min(x2M, other.x2M),
        Math.max(z1M, other.z1M),
        Math.min(z2M, other.z2M));
  }

  /** The same rectangle grown about the point. */
  Rectangle times(double factor) {
    return new Rectangle(x1M * factor, x2M * factor, z1M * factor, z2M * factor);
  }
}
