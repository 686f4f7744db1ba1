package sallet.water.reservoir;

/**
 * What to pour in.
 *
 * @param litres how much, L
 * @param msCm conductivity of what is poured in; 0 for plain water
 * @param endsMsCm conductivity afterwards
 */
public record TopUp(double litres, double msCm, double endsMsCm) {
  /** Below this salts are not worth mixing. Judgement. */
  private static final double PLAIN_MS_CM = 0.15;

  /** To fill from a level, so that the wanted conductivity comes back; plain water at the least. */
  public static TopUp of(double levelL, double msCm, double fullL, double wantedMsCm) {
    double litres = fullL - levelL;
    if (litres <= 0) {
      return new TopUp(0, 0, msCm);
    }
    double needed = (wantedMsCm * fullL - msCm * levelL) / litres;
    double poured = needed < PLAIN_MS_CM ? 0 : needed;
    return new TopUp(litres, poured, Salinity.mixed(msCm, levelL, poured, litres));
  }
}
