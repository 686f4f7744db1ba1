package sallet.water.learn;

/**
 * What leaves the reservoir with a litre of loss, as EC: what plants drink times the share of the
 * loss that went through them.
 *
 * @param msCm most likely, mS/cm
 * @param sd standard deviation, mS/cm
 * @param readings how many balances have taught it
 */
public record Uptake(double msCm, double sd, int readings) {
  /** Error of one EC reading, mS/cm. Judgement: a household meter. */
  private static final double METER_MS_CM = 0.05;

  /**
   * Before any reading: 0.5 to 1.0 mS/cm, from 1.7 to 3.3 g of dry mass made per litre with about 3
   * meq of each charge a gram (after Langenfeld et al. 2022, Sustainability 14:10204; tissue from
   * memory).
   */
  public static Uptake prior() {
    return new Uptake(0.75, 0.25, 0);
  }

  /** Error of a balance of salt: that of two EC readings, over the loss, mS/cm. */
  public static double errorMsCm(double firstL, double lastL, double lossL) {
    return METER_MS_CM * Math.hypot(firstL, lastL) / lossL;
  }

  /**
   * After a balance of salt between two readings: the mean of both, weighed by how sure each is.
   *
   * @param drunkMsCm salt gone over water gone, as EC
   * @param firstL volume at the first reading, L
   * @param lastL volume at the last, L
   * @param lossL water gone between them, L
   */
  public Uptake after(double drunkMsCm, double firstL, double lastL, double lossL) {
    double error = errorMsCm(firstL, lastL, lossL);
    double old = 1 / (sd * sd);
    double fresh = 1 / (error * error);
    double mean = (msCm * old + drunkMsCm * fresh) / (old + fresh);
    return new Uptake(Math.max(0, mean), Math.sqrt(1 / (old + fresh)), readings + 1);
  }
}
