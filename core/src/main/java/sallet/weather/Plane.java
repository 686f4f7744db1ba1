package sallet.weather;

/**
 * A flat face.
 *
 * @param tiltDeg 0 lying face up, 90 standing
 * @param azimuthDeg where it looks, clockwise from north
 */
public record Plane(double tiltDeg, double azimuthDeg) {

  /** Cosine of the angle between the face's normal and the sun, negative behind it. */
  public double cosIncidence(SunPosition sun) {
    double tilt = Math.toRadians(tiltDeg);
    double altitude = Math.toRadians(sun.altitudeDeg());
    return Math.sin(altitude) * Math.cos(tilt)
        + Math.cos(altitude)
            * Math.sin(tilt)
            * Math.cos(Math.toRadians(sun.azimuthDeg() - azimuthDeg));
  }

  /** Share of an even sky it sees. */
  public double skyShare() {
    return (1 + Math.cos(Math.toRadians(tiltDeg))) / 2;
  }

  /** Share of a level ground it sees. */
  public double groundShare() {
    return (1 - Math.cos(Math.toRadians(tiltDeg))) / 2;
  }
}
