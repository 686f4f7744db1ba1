package sallet.feed.reservoir;

import sallet.feed.FeedFault;
import sallet.feed.UnsafeDose;

/**
 * What to pour to mend a wrong EC.
 *
 * @param stockMl of each stock, mL; 0 when water is to be added
 * @param waterL water to add, L; 0 when stock is to be added
 * @param strengthNow strength of the solution now, 1 being full
 * @param strengthWanted strength wanted
 */
public record EcCorrection(
    double stockMl, double waterL, double strengthNow, double strengthWanted) {
  private static final double HIGHEST_EC = 4;

  /**
   * The correction, on the salts' part of EC.
   *
   * @param litres volume now, L
   * @param readMsCm EC as read, 25 °C, mS/cm
   * @param wantedMsCm EC wanted
   * @param waterMsCm EC of the source water
   * @param fullMsCm EC of the full recipe without the water's part
   * @param stockFactor strength of the stocks
   */
  public static EcCorrection of(
      double litres,
      double readMsCm,
      double wantedMsCm,
      double waterMsCm,
      double fullMsCm,
      int stockFactor) {
    if (wantedMsCm > HIGHEST_EC) {
      throw new UnsafeDose("Refused: EC above %.0f mS/cm burns leaf crops".formatted(HIGHEST_EC));
    }
    if (!(wantedMsCm > waterMsCm)) {
      throw new FeedFault(
          "EC %.2f mS/cm cannot be reached: the water alone has %.2f"
              .formatted(wantedMsCm, waterMsCm));
    }
    double now = Strength.fromEc(Math.max(0, readMsCm - waterMsCm), fullMsCm);
    double wanted = Strength.fromEc(wantedMsCm - waterMsCm, fullMsCm);
    return now < wanted
        ? new EcCorrection(
            1000 * Strength.litresToAdd(litres, now, wanted, stockFactor), 0, now, wanted)
        : new EcCorrection(0, Strength.litresToAdd(litres, now, wanted, 0), now, wanted);
  }
}
