package sallet.weather;

import java.time.ZoneId;
import java.util.List;

/**
 * A built-in place with its mean sunshine.
 *
 * @param latitudeDeg north positive
 * @param longitudeDeg east positive
 * @param sunshineHours hours of bright sunshine of each month, January to December
 */
public record City(
    String country,
    String name,
    double latitudeDeg,
    double longitudeDeg,
    ZoneId timeZone,
    List<Double> sunshineHours) {
  /** Mean radius of the Earth, km. Source: IUGG mean radius. */
  private static final double EARTH_KM = 6371.0;

  public City {
    sunshineHours = List.copyOf(sunshineHours);
  }

  /** Great-circle distance to a point, km (haversine form). */
  public double distanceKm(double toLatitudeDeg, double toLongitudeDeg) {
    double a = Math.toRadians(latitudeDeg);
    double b = Math.toRadians(toLatitudeDeg);
    double sinLat = Math.sin((b - a) / 2);
    double sinLon = Math.sin(Math.toRadians(toLongitudeDeg - longitudeDeg) / 2);
    double h = sinLat * sinLat + Math.cos(a) * Math.cos(b) * sinLon * sinLon;
    return 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(h)));
  }
}
