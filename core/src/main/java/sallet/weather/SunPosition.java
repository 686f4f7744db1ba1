package sallet.weather;

/**
 * Where the sun stands.
 *
 * @param altitudeDeg above the horizon as it appears, refraction included, degrees
 * @param azimuthDeg clockwise from north, degrees
 */
public record SunPosition(double altitudeDeg, double azimuthDeg) {

  /** Sine of the altitude: the share of a beam that falls on the flat. */
  public double sinAltitude() {
    return Math.sin(Math.toRadians(altitudeDeg));
  }

  /**
   * Hour angle, radians, negative before noon: spherical triangle of pole, zenith and sun (exact).
   */
  public double hourAngleRad(double latitudeDeg) {
    double lat = Math.toRadians(latitudeDeg);
    double alt = Math.toRadians(altitudeDeg);
    double az = Math.toRadians(azimuthDeg);
    return Math.atan2(
        -Math.sin(az) * Math.cos(alt),
        Math.sin(alt) * Math.cos(lat) - Math.cos(alt) * Math.cos(az) * Math.sin(lat));
  }
}
