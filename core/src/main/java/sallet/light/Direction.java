package sallet.light;

/**
 * A direction or way in a room: east, north (before the room is turned) and up, m or without unit.
 */
record Direction(double east, double north, double up) {
  double dot(Direction other) {
    return east * other.east + north * other.north + up * other.up;
  }

  Direction times(double factor) {
    return new Direction(east * factor, north * factor, up * factor);
  }

  Direction plus(Direction other) {
    return new Direction(east + other.east, north + other.north, up + other.up);
  }
}
