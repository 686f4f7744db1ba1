package sallet.feed.reservoir;

import sallet.feed.FeedFault;

/**
 * How one concentration drifts while plants drink: mass balances with uptake in proportion to the
 * water drunk. Concentrations in any one unit.
 */
public final class Drift {
  private Drift() {}

  /**
   * After topping up every day to the same volume: C0 + (c_top − c_up) W / V, not below 0.
   *
   * @param waterL water drunk and replaced, L
   */
  public static double keptFull(
      double start, double topUp, double uptake, double waterL, double volumeL) {
    return Math.max(0, start + (topUp - uptake) * waterL / volumeL);
  }

  /** Without topping up: (C0 V0 − c_up W) / (V0 − W), not below 0. */
  public static double notRefilled(double start, double uptake, double waterL, double volumeL) {
    if (!(waterL < volumeL)) {
      throw new FeedFault(
          "The plants would drink %.1f L, the reservoir holds %.1f L".formatted(waterL, volumeL));
    }
    return Math.max(0, (start * volumeL - uptake * waterL) / (volumeL - waterL));
  }

  /**
   * Where an ion that plants take up passively ends, kept full: c_top / α.
   *
   * @param passiveShare concentration drunk over concentration in the tank, above 0
   */
  public static double limit(double topUp, double passiveShare) {
    return topUp / passiveShare;
  }
}
