package sallet.water.caution;

/** Household chlorine bleach for an empty, scrubbed tray and reservoir. Never for a live one. */
public final class CleaningDose {
  /** Least and most available chlorine for cleaning, mg/L. Common practice in food handling. */
  public static final double LEAST_MG_L = 100;

  public static final double MOST_MG_L = 200;

  private CleaningDose() {}

  /**
   * Bleach to pour into the whole volume, mL: mg/L × L / (10 × % w/v).
   *
   * @param chlorineMgL available chlorine wanted, 100 to 200 mg/L
   * @param percentWv strength on the label, 1 to 15 % w/v
   */
  public static double bleachMl(double chlorineMgL, double totalL, double percentWv) {
    if (!(chlorineMgL >= LEAST_MG_L && chlorineMgL <= MOST_MG_L)) {
      throw new IllegalArgumentException(
          "cleaning takes 100 to 200 mg/L of chlorine, not %.0f mg/L".formatted(chlorineMgL));
    }
    if (!(percentWv >= 1 && percentWv <= 15)) {
      throw new IllegalArgumentException(
          "household bleach has 1 to 15 % of chlorine, not " + percentWv + " %");
    }
    return chlorineMgL * totalL / (10 * percentWv);
  }

  /** Available chlorine that a dose makes, mg/L. */
  public static double chlorineMgL(double bleachMl, double totalL, double percentWv) {
    return percentWv * 1e4 * bleachMl / (1000 * totalL);
  }
}
