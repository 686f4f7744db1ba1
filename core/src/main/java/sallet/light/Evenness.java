package sallet.light;

import java.util.Arrays;
import java.util.List;

/**
 * How evenly light falls on a list of places.
 *
 * @param meanUmol mean PPFD, µmol/m²/s
 * @param minUmol least PPFD, µmol/m²/s
 * @param maxUmol greatest PPFD, µmol/m²/s
 * @param variation population standard deviation over the mean
 */
public record Evenness(double meanUmol, double minUmol, double maxUmol, double variation) {

  /** Of the PPFD at the places, at least one. */
  public static Evenness of(List<Double> ppfdUmol) {
    double[] values = ppfdUmol.stream().mapToDouble(Double::doubleValue).toArray();
    double mean = Arrays.stream(values).average().orElseThrow();
    double variance = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / values.length;
    return new Evenness(
        mean,
        Arrays.stream(values).min().orElseThrow(),
        Arrays.stream(values).max().orElseThrow(),
        mean == 0 ? 0 : Math.sqrt(variance) / mean);
  }

  /** Least over mean; above 0.7 is even (common practice). */
  public double minOverMean() {
    return meanUmol == 0 ? 1 : minUmol / meanUmol;
  }

  /**
   * Share of a lamp's photons that fall on an area.
   *
   * @param areaM2 area the places stand for, m²
   * @param ppfUmolPerS photons of the lamp, µmol/s
   */
  public double utilisation(double areaM2, double ppfUmolPerS) {
    return meanUmol * areaM2 / ppfUmolPerS;
  }
}
