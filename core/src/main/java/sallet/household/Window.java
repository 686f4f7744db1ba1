package sallet.household;

/**
 * A plain window in a wall.
 *
 * @param wall the wall it sits in
 * @param fromM distance of its near edge from the west end (north and south walls) or the south end
 *     (east and west walls) of the wall, m
 * @param widthM width of the opening, m
 * @param heightM height of the opening, m
 * @param sillM height of its lower edge above the floor, m
 * @param revealM depth of the reveal outside the glass plane, m
 * @param panes number of panes, 1 to 4
 * @param visibleTransmittance light let through at right angles; the clear-glass value of {@code
 *     panes} when NaN
 * @param glassShare share of the opening that is glass and not frame, 0 to 1
 * @param cleanliness share of light that passes the dirt, 0 to 1
 * @param curtain share of light that passes a curtain or blind, 1 when there is none
 * @param skylineDeg altitude up to which houses or hills hide the sky, degrees
 * @param outlook what else stands before it
 */
public record Window(
    Wall wall,
    double fromM,
    double widthM,
    double heightM,
    double sillM,
    double revealM,
    int panes,
    double visibleTransmittance,
    double glassShare,
    double cleanliness,
    double curtain,
    double skylineDeg,
    Outlook outlook) {

  /** A window with nothing but a skyline before it. */
  public Window(
      Wall wall,
      double fromM,
      double widthM,
      double heightM,
      double sillM,
      double revealM,
      int panes,
      double visibleTransmittance,
      double glassShare,
      double cleanliness,
      double curtain,
      double skylineDeg) {
    this(
        wall,
        fromM,
        widthM,
        heightM,
        sillM,
        revealM,
        panes,
        visibleTransmittance,
        glassShare,
        cleanliness,
        curtain,
        skylineDeg,
        Outlook.OPEN);
  }
}
