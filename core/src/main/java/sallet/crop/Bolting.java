package sallet.crop;

/**
 * When a crop runs to seed: degree days weighted by how far the day is longer than critical.
 *
 * @param halfSumCd B50, weighted degree days at which half the plants bolt, °C d
 * @param criticalPhotoperiodHours photoperiod around which days begin to count, h
 */
public record Bolting(double halfSumCd, double criticalPhotoperiodHours) {

  /** Share of the limit at which a plant should leave the bench. Judgement. */
  public static final double LEAVE_AT = 0.8;

  /** Weighted degree days one day adds, °C d. */
  public double dayCd(double boltingHeatCd, double photoperiodHours) {
    double weight =
        Math.min(1, Math.max(0, (photoperiodHours - criticalPhotoperiodHours) / 4 + 0.5));
    return boltingHeatCd * weight;
  }
}
