package sallet.crop.forecast;

/**
 * What makes plants of one sowing and one forecast differ.
 *
 * @param vigour median of the household factor on assimilation
 * @param vigourCv its coefficient of variation: what is not known of this household
 * @param plantCv the same between plants of a batch
 * @param members plants that are grown
 * @param seed start of the dice
 */
public record Spread(double vigour, double vigourCv, double plantCv, int members, long seed) {
  /**
   * Before any weighing of the household's own: 0.85 and 0.2 (judgement); 0.1 between plants, which
   * gives a fresh mass that varies by about 0.15 (Van Henten 1994: 5 to 10 % of a mean of 20
   * plants; from memory 10 to 20 %).
   */
  public static final Spread PRIOR = new Spread(0.85, 0.2, 0.1, 200, 1);

  public Spread {
    if (!(vigour > 0 && vigourCv >= 0 && plantCv >= 0 && members >= 1)) {
      throw new IllegalArgumentException(
          "a spread needs a factor above 0, variations of 0 or more and a plant, had "
              + vigour
              + ", "
              + vigourCv
              + ", "
              + plantCv
              + ", "
              + members);
    }
  }

  /** Standard deviation of the logarithm of a log-normal quantity with this variation. */
  static double ofLogarithm(double cv) {
    return Math.sqrt(Math.log1p(cv * cv));
  }
}
