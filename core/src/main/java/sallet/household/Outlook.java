package sallet.household;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;

/**
 * What stands before a window. Directions are compass degrees, altitudes are seen from the window's
 * middle, as a compass and a protractor with a plumb line tell them.
 *
 * @param horizon points of the skyline of hills and roofs, straight lines between them, by growing
 *     azimuth; empty when there is only the window's own skyline
 * @param houses things that hide the sky up to an altitude between two directions
 * @param trees crowns that let some light through
 * @param overhang a balcony or eave above the window
 */
public record Outlook(
    List<Point> horizon, List<House> houses, List<Tree> trees, Optional<Overhang> overhang) {
  /** Nothing. */
  public static final Outlook OPEN = new Outlook(List.of(), List.of(), List.of(), Optional.empty());

  public Outlook {
    horizon = List.copyOf(horizon);
    houses = List.copyOf(houses);
    trees = List.copyOf(trees);
  }

  /** Whether nothing stands there. */
  public boolean isOpen() {
    return equals(OPEN);
  }

  /** A point of the skyline, degrees. */
  public record Point(double azimuthDeg, double altitudeDeg) {}

  /** From one direction clockwise to another, up to an altitude, degrees. */
  public record House(double fromDeg, double toDeg, double altitudeDeg) {}

  /**
   * A crown.
   *
   * @param fromDeg its left edge, degrees
   * @param toDeg its right edge, clockwise from the left one
   * @param lowDeg altitude of its lower edge
   * @param highDeg altitude of its top
   * @param summerSky share of the sky seen through it in full leaf, 0 to 1
   * @param winterSky share seen through it when bare
   * @param leafOut day the buds break
   * @param leafFall day the leaves begin to fall
   */
  public record Tree(
      double fromDeg,
      double toDeg,
      double lowDeg,
      double highDeg,
      double summerSky,
      double winterSky,
      MonthDay leafOut,
      MonthDay leafFall) {}

  /**
   * A level plate above the window.
   *
   * @param aboveM its underside above the window's upper edge, m
   * @param depthM how far it stands out from the wall, m
   * @param besideM how far it reaches beyond the window at either side, m
   */
  public record Overhang(double aboveM, double depthM, double besideM) {}
}
