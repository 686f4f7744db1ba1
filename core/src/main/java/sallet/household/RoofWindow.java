package sallet.household;

/**
 * A window in the roof or ceiling.
 *
 * @param xM middle of the pane in the room, from the west wall, m
 * @param yM middle of the pane, from the south wall, m
 * @param heightM middle of the pane above the floor, m
 * @param widthM along its level edges, m
 * @param lengthM along its slope, m
 * @param slopeDeg 0 lying flat, 90 standing
 * @param faces compass direction it looks down the slope to, before the room is turned
 * @param shaftM depth of the shaft between the room and the glass, m
 * @param glass its panes and what they lose
 */
public record RoofWindow(
    double xM,
    double yM,
    double heightM,
    double widthM,
    double lengthM,
    double slopeDeg,
    Wall faces,
    double shaftM,
    Glass glass) {

  /**
   * The panes of a window; meanings as for {@link Window}.
   *
   * @param visibleTransmittance NaN for clear glass
   */
  public record Glass(
      int panes,
      double visibleTransmittance,
      double glassShare,
      double cleanliness,
      double curtain) {}
}
