package sallet.water.transpiration;

/**
 * Heat balance of a wet or leafy surface made linear in how much warmer than the air it is: what
 * radiation brings leaves as warmth and as vapour (the combination equation of Penman and Monteith;
 * Monteith 1965).
 *
 * @param netWm2 radiation taken in at air temperature, W/m²
 * @param warmthWm2K warmth given off for each kelvin above the air, W/m²/K
 * @param vapourWm2 heat of evaporation at air temperature, W/m²
 * @param vapourWm2K by how much it grows for each kelvin, W/m²/K
 */
public record PenmanMonteith(
    double netWm2, double warmthWm2K, double vapourWm2, double vapourWm2K) {

  /** How much warmer than the air the surface becomes, K; below 0 when it is cooler. */
  public double surfaceMinusAirK() {
    return (netWm2 - vapourWm2) / (warmthWm2K + vapourWm2K);
  }

  /** Heat of evaporation, W/m². */
  public double latentWm2() {
    return vapourWm2 + vapourWm2K * surfaceMinusAirK();
  }
}
