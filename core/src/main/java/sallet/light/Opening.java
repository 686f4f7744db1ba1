package sallet.light;

import sallet.household.Room;
import sallet.household.Window;

/**
 * A window's opening as a point in the room sees it, looking out at right angles to the wall.
 *
 * @param hole the opening in the wall, x growing with the azimuth, z from the level of the point
 * @param distanceM from the point to the inner face of the wall, m
 * @param revealM from the inner to the outer face of the opening, m
 */
record Opening(Rectangle hole, double distanceM, double revealM) {
  /** Nearest a leaf comes to a pane, m: keeps the sum over the opening finite. Judgement. */
  private static final double LEAST_DISTANCE_M = 0.02;

  Opening {
    distanceM = Math.max(LEAST_DISTANCE_M, distanceM);
  }

  /** As seen from a point of the room. */
  static Opening of(Room room, Window window, double xM, double yM, double zM) {
    double near = window.fromM();
    double far = near + window.widthM();
    double sill = window.sillM() - zM;
    double head = sill + window.heightM();
    return switch (window.wall()) {
      case NORTH ->
          new Opening(
              new Rectangle(near - xM, far - xM, sill, head), room.depthM() - yM, window.revealM());
      case EAST ->
          new Opening(
              new Rectangle(yM - far, yM - near, sill, head), room.widthM() - xM, window.revealM());
      case SOUTH ->
          new Opening(new Rectangle(xM - far, xM - near, sill, head), yM, window.revealM());
      case WEST ->
          new Opening(new Rectangle(near - yM, far - yM, sill, head), xM, window.revealM());
    };
  }

  /**
   * The part of the inner face through which the point sees out past the edges of the outer face. A
   * ray that meets the inner face at (x, z) meets the outer one at the same point grown by
   * (distance + reveal) / distance.
   */
  Rectangle clear() {
    return hole.and(hole.times(distanceM / (distanceM + revealM)));
  }
}
