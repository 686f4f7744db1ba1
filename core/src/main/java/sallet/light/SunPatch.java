package sallet.light;

import sallet.weather.SunPosition;

/**
 * The sun's direction seen from inside, looking out of a wall at right angles.
 *
 * @param right component towards larger azimuth
 * @param out component out of the wall: also the cosine of the angle at which the beam meets the
 *     pane
 * @param up component upwards
 */
record SunPatch(double right, double out, double up) {

  static SunPatch of(SunPosition sun, double wallAzimuthDeg) {
    double altitude = Math.toRadians(sun.altitudeDeg());
    double turn = Math.toRadians(sun.azimuthDeg() - wallAzimuthDeg);
    return new SunPatch(
        Math.cos(altitude) * Math.sin(turn),
        Math.cos(altitude) * Math.cos(turn),
        Math.sin(altitude));
  }

  /** Whether the sun is above the horizon and before the wall. */
  boolean shinesOnWall() {
    return up > 0 && out > 0;
  }

  /** Where the ray to the sun meets the wall, to the right of the point, m. */
  double hitXM(double distanceM) {
    return distanceM * right / out;
  }

  /** Where the ray to the sun meets the wall, above the point, m. */
  double hitZM(double distanceM) {
    return distanceM * up / out;
  }

  /** Whether the point is lit through the opening, clear of both faces of the reveal. */
  boolean lights(Opening opening) {
    return shinesOnWall()
        && opening.clear().contains(hitXM(opening.distanceM()), hitZM(opening.distanceM()));
  }
}
