package sallet.household;

/**
 * A pot on the bench.
 *
 * @param name unique name, such as A1
 * @param xM distance of its middle from the west edge of the tray, m
 * @param yM distance of its middle from the south edge of the tray, m
 */
public record Pot(String name, double xM, double yM) {
  /** Distance between the middles of two pots, m. */
  public double apartM(Pot other) {
    return Math.hypot(xM - other.xM, yM - other.yM);
  }
}
