package sallet.air;

/**
 * Heat of a room as one lump. All of a lamp's power ends in the room; what evaporates water leaves
 * as vapour.
 *
 * @param lossWK heat lost through walls and windows (UA), W/K
 * @param volumeM3 air of the room, m³
 * @param changesPerHour how often an hour its air is changed
 */
public record RoomHeat(double lossWK, double volumeM3, double changesPerHour) {
  /** Heat that a cubic metre of air carries, Wh/m³/K. */
  private static final double AIR_WH_M3K = 0.335;

  /** Heat carried away for each kelvin, W/K. */
  public double conductanceWK() {
    return lossWK + AIR_WH_M3K * changesPerHour * volumeM3;
  }

  /** Indoor temperature once it has settled, °C. */
  public double settledC(double outdoorC, double watts) {
    return outdoorC + watts / conductanceWK();
  }

  /**
   * Indoor temperature after steps of equal length (implicit Euler on one node).
   *
   * @param startC temperature at the start
   * @param watts heat given off, the heat of evaporation taken off
   * @param capacityKjK heat the room stores, kJ/K; 110 to 165 for each m² of floor (from memory)
   */
  public double afterC(
      double startC, double outdoorC, double watts, double capacityKjK, double stepH, int steps) {
    double storeWK = capacityKjK / 3.6 / stepH;
    double indoorC = startC;
    for (int i = 0; i < steps; i++) {
      indoorC =
          (storeWK * indoorC + conductanceWK() * outdoorC + watts) / (storeWK + conductanceWK());
    }
    return indoorC;
  }

  /** Heat that evaporating water takes from the room, W. */
  public static double latentW(double gPerHour, double indoorC) {
    return gPerHour * Vapour.latentJPerG(indoorC) / 3600;
  }
}
