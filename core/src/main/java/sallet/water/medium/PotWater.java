package sallet.water.medium;

/**
 * The water of one pot, mL.
 *
 * @param volumeMl volume of medium
 * @param fullMl water after a flood
 * @param easyMl how much of it roots get easily
 * @param depletion share of the easy water that may go before the next flood, 0.1 to 0.5
 * @param floorMl water the pot must never fall below
 * @param wiltMl water at which leaves wilt
 * @param airShare share of air after a flood has drained, with all pores wetted
 * @param weighed whether it rests on the grower's scales and not on a table
 */
public record PotWater(
    double volumeMl,
    double fullMl,
    double easyMl,
    double depletion,
    double floorMl,
    double wiltMl,
    double airShare,
    boolean weighed) {

  /** Least and most share of the easy water that may go before the next flood. Judgement. */
  public static final double LEAST_DEPLETION = 0.1;

  public static final double MOST_DEPLETION = 0.5;

  public PotWater {
    if (!(volumeMl > 0 && fullMl > wiltMl && easyMl > 0)) {
      throw new IllegalArgumentException(
          "a pot must hold more than it wilts at, held %.0f mL of %.0f mL, wilting at %.0f mL"
              .formatted(fullMl, volumeMl, wiltMl));
    }
  }

  /** From the table of media, flooded from below while still moist. */
  public static PotWater ofTable(Medium medium, PotShape shape) {
    double wet = medium.wetting() * shape.drainedContent(medium.retention());
    return of(medium, shape, wet, false);
  }

  /** The same after the medium has dried out once. */
  public static PotWater afterDrying(Medium medium, PotShape shape) {
    double wet = medium.wettingFromDry() * shape.drainedContent(medium.retention());
    return of(medium, shape, wet, false);
  }

  /**
   * From the grower's scales: content = (mass after flood and drain - mass of the dry filled pot) /
   * volume. It holds whatever the flood really brings back.
   *
   * @param heldMl water it holds after a flood
   */
  public static PotWater ofScales(Medium medium, PotShape shape, double heldMl) {
    return of(medium, shape, heldMl / shape.volumeMl(), true);
  }

  private static PotWater of(Medium medium, PotShape shape, double wet, boolean weighed) {
    double volume = shape.volumeMl();
    double wilt = Math.min(medium.retention().at(Medium.WILT_CM), 0.8 * wet);
    double hard = Math.min(medium.retention().at(Medium.EASY_CM), 0.9 * wet);
    double floor = Math.min(Math.max(medium.floorContent(), wilt), 0.9 * wet);
    return new PotWater(
        volume,
        volume * wet,
        volume * (wet - hard),
        medium.depletion(),
        volume * floor,
        volume * wilt,
        shape.airShare(medium.retention()),
        weighed);
  }

  /** The same pot with another share allowed to go. */
  public PotWater withDepletion(double share) {
    return new PotWater(volumeMl, fullMl, easyMl, share, floorMl, wiltMl, airShare, weighed);
  }

  /** Water that may go before the next flood, mL: never so much that the floor is passed. */
  public double allowedMl() {
    return Math.min(depletion * easyMl, fullMl - floorMl);
  }

  /** Water between full and wilting, mL. */
  public double lastingMl() {
    return fullMl - wiltMl;
  }
}
