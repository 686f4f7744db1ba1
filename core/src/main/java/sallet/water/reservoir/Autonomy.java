package sallet.water.reservoir;

/** How long a volume lasts. */
public final class Autonomy {
  private Autonomy() {}

  /**
   * Days for a use that grows by a constant share: ln(1 + r V / E) / r.
   *
   * @param perDayL use on the first day, L, above 0
   * @param growth r, 1/d, 0 or more
   */
  public static double days(double perDayL, double growth, double usableL) {
    return growth == 0 ? usableL / perDayL : Math.log1p(growth * usableL / perDayL) / growth;
  }
}
