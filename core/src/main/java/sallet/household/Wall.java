package sallet.household;

/** A wall of the room, named for the compass direction it faces before the room is turned. */
public enum Wall {
  NORTH(0),
  EAST(90),
  SOUTH(180),
  WEST(270);

  private final double azimuthDeg;

  Wall(double azimuthDeg) {
    this.azimuthDeg = azimuthDeg;
  }

  /** Azimuth of the outward normal, degrees clockwise from north, for a room that is not turned. */
  public double azimuthDeg() {
    return azimuthDeg;
  }
}
