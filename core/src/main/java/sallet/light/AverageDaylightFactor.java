package sallet.light;

/**
 * Mean light in a room against the flat outdoors under an overcast sky: a quick look at a window.
 * Above 5 percent a room looks bright, below 2 gloomy. Source: Crisp and Littlefair 1984.
 *
 * @param transmittance of the glass for diffuse light
 * @param windowM2 area of the openings, m²
 * @param passes share of light that passes frame, dirt and curtain
 * @param skyAngleDeg angle of sky seen from the window's middle in a vertical section, degrees
 * @param surfaceM2 all inner surfaces of the room, m²
 * @param reflectance mean of the surfaces, 0 to below 1
 */
public record AverageDaylightFactor(
    double transmittance,
    double windowM2,
    double passes,
    double skyAngleDeg,
    double surfaceM2,
    double reflectance) {

  /** Percent of the light outdoors. */
  public double percent() {
    return transmittance
        * windowM2
        * passes
        * skyAngleDeg
        / (surfaceM2 * (1 - reflectance * reflectance));
  }
}
