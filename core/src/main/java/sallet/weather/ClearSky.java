package sallet.weather;

/**
 * Light under a clear sky. Source: Ineichen and Perez 2002, with the Linke turbidity of temperate
 * lowlands.
 *
 * @param globalWm2 on the flat, W/m²
 * @param diffuseWm2 on the flat from the sky, W/m²
 * @param beamWm2 on a face turned to the sun, W/m²
 */
public record ClearSky(double globalWm2, double diffuseWm2, double beamWm2) {
  /** Linke turbidity: 2 clean and cold, 3 temperate, 4 to 5 warm and humid (from memory). */
  static final double TURBIDITY = 3;

  /**
   * Under a sun above the horizon.
   *
   * @param outsideWm2 on a face turned to the sun outside the air, W/m²
   * @param elevationM above the sea, m
   */
  public static ClearSky of(SunPosition sun, double outsideWm2, double elevationM) {
    double mass =
        PerezSky.airMass(sun.altitudeDeg()) * Sun.pressureHPa(elevationM) / Sun.SEA_LEVEL_HPA;
    return of(sun.sinAltitude(), mass, outsideWm2, elevationM);
  }

  /** Under a sun whose way through the air is known, 1 straight up at the level of the sea. */
  static ClearSky of(double sine, double mass, double outsideWm2, double elevationM) {
    double f1 = Math.exp(-elevationM / 8000);
    double f2 = Math.exp(-elevationM / 1250);
    double scale = 5.09e-5 * elevationM + 0.868;
    double decay = 3.92e-5 * elevationM + 0.0387;
    double global =
        scale * outsideWm2 * sine * Math.exp(-decay * mass * (f1 + f2 * (TURBIDITY - 1)));
    double direct = (0.664 + 0.163 / f1) * outsideWm2 * Math.exp(-0.09 * mass * (TURBIDITY - 1));
    double share = (0.1 - 0.2 * Math.exp(-TURBIDITY)) / (0.1 + 0.882 / f1);
    double beam = Math.min(direct, global * (1 - share) / sine);
    return new ClearSky(global, global - beam * sine, beam);
  }
}
