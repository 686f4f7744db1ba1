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

  public Bolting {
    if (!(halfSumCd > 0)) {
      throw new IllegalArgumentException("bolting sum must be above 0 °C d, was " + halfSumCd);
    }
    if (!(criticalPhotoperiodHours >= 0 && criticalPhotoperiodHours <= 24)) {
      throw new IllegalArgumentException(
          "critical photoperiod must be 0 to 24 h, was " + criticalPhotoperiodHours);
    }
  }

  /** Weighted degree days one day adds, °C d. */
  public double dayCd(double boltingHeatCd, double photoperiodHours) {
    double weight =
        Math.min(1, Math.max(0, (photoperiodHours - criticalPhotoperiodHours) / 4 + 0.5));
    return boltingHeatCd * weight;
  }

  /**
   * Share of plants that have bolted when the weighted sum from emergence has reached a value. An
   * index for ranking and warning; its steepness is judgement.
   */
  public double boltedShare(double sumCd) {
    return 1 / (1 + Math.exp(-8 * (sumCd / halfSumCd - 1)));
  }
}
