package sallet.water.flood;

/**
 * One flood of the tray.
 *
 * @param trayM2 area of the tray, m²
 * @param pots number of pots on it
 * @param potM2 ground one pot covers, m²
 * @param depthM depth of water, m
 */
public record Flood(double trayM2, int pots, double potM2, double depthM) {
  private static final double GRAVITY = 9.80665;

  public Flood {
    if (!(trayM2 > 0 && depthM > 0 && potM2 >= 0 && pots * potM2 <= trayM2 * 1.0001)) {
      throw new IllegalArgumentException(
          "%d pots of %.4f m² do not fit on a tray of %.3f m²".formatted(pots, potM2, trayM2));
    }
  }

  /**
   * Water that stands on the tray, L, and what the wetted medium takes up while it does.
   *
   * @param saturated pores of the medium, m³/m³
   * @param before water in the medium before the flood, m³/m³
   */
  public double volumeL(double saturated, double before) {
    double potsM2 = pots * potM2;
    return 1000 * depthM * (trayM2 - potsM2 + potsM2 * Math.max(0, saturated - before));
  }

  /**
   * Minutes until an outlet has drained it: t = 2 A (√(h+z) - √z) / (C a √(2g)) (orifice).
   *
   * @param areaM2 area that gives off water, m²
   * @param depthM depth at the start, m
   * @param outletMm diameter of the outlet, mm
   * @param discharge coefficient of the outlet, 0.6 for a plain hole
   * @param dropM height of the tray's floor above the end of the outlet, m
   */
  public static double drainMinutes(
      double areaM2, double depthM, double outletMm, double discharge, double dropM) {
    double outletM2 = Math.PI * outletMm * outletMm / 4e6;
    double seconds =
        2
            * areaM2
            / (discharge * outletM2 * Math.sqrt(2 * GRAVITY))
            * (Math.sqrt(depthM + dropM) - Math.sqrt(dropM));
    return seconds / 60;
  }
}
