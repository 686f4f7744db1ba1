package sallet.water.transpiration;

/**
 * The short form for when little is known: λE = A (1 - exp(-k LAI)) I + B LAI D. Form of Baille et
 * al. 1994; A and B fitted to {@link LeafBalance} at 18 to 24 °C, 40 to 80 %, 100 to 300 µmol/m²/s,
 * leaf area index 1 to 3; error 3.4 W/m², at worst 16 %.
 *
 * @param light A, share of light
 * @param deficitWm2Kpa B, W/m²/kPa
 * @param extinction k
 */
public record TwoTerm(double light, double deficitWm2Kpa, double extinction) {
  /** While there is light. */
  public static final TwoTerm DAY = new TwoTerm(0.576, 23.2, 0.64);

  /** In the dark. */
  public static final TwoTerm NIGHT = new TwoTerm(0, 20.6, 0.64);

  /** Heat that evaporates a gram, J. */
  private static final double LATENT_J_PER_G = 2450;

  /** Water from a square metre of ground, g/m²/h. */
  public double waterGM2H(double parWm2, double leafAreaIndex, double deficitKpa) {
    double watts =
        light * (1 - Math.exp(-extinction * leafAreaIndex)) * parWm2
            + deficitWm2Kpa * leafAreaIndex * deficitKpa;
    return 3600 * watts / LATENT_J_PER_G;
  }
}
