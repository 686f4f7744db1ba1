package sallet.weather;

/** Light of sky, sun and ground on a face, beside the {@link PerezSky}. All W/m². */
public final class TiltedLight {
  private TiltedLight() {}

  /** Straight from the sun. */
  public static double beamWm2(SkyMoment moment, Plane plane) {
    return moment.beamWm2() * Math.max(0, plane.cosIncidence(moment.sun()));
  }

  /** From an evenly bright sky. */
  public static double evenSkyWm2(SkyMoment moment, Plane plane) {
    return moment.diffuseWm2() * plane.skyShare();
  }

  /**
   * From a sky that is even but for a bright part at the sun. Source: Hay and Davies 1980. To
   * compare with the Perez sky.
   */
  public static double hayDaviesWm2(SkyMoment moment, Plane plane) {
    double atSun = moment.beamWm2() / moment.outsideWm2();
    double ratio =
        Math.max(0, plane.cosIncidence(moment.sun()))
            / Math.max(0.01745, moment.sun().sinAltitude());
    return moment.diffuseWm2() * (atSun * ratio + (1 - atSun) * plane.skyShare());
  }

  /**
   * Thrown back by the ground.
   *
   * @param albedo share of light the ground throws back, 0 to 1
   */
  public static double groundWm2(SkyMoment moment, Plane plane, double albedo) {
    return moment.globalWm2() * albedo * plane.groundShare();
  }
}
