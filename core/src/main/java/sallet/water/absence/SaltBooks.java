package sallet.water.absence;

/**
 * Salt of a reservoir over an absence: what is in it and in a second container, less what leaves
 * with the water.
 *
 * @param startL level to leave with, L
 * @param pouredL plain water poured in by visitors, L
 * @param connectedL solution of the same strength in a second container, L
 * @param usedL water used, L
 * @param drunkMsCm what leaves with a litre, as EC, mS/cm
 */
record SaltBooks(double startL, double pouredL, double connectedL, double usedL, double drunkMsCm) {
  /** The last tenth of a reservoir is not looked into. */
  private static final double LEAST_SHARE = 0.1;

  private double endL() {
    return startL + pouredL + connectedL - usedL;
  }

  private boolean runsOut() {
    return endL() < LEAST_SHARE * startL;
  }

  /** Conductivity on return, not below 0; NaN when it runs out. */
  double returnMsCm(double leaveMsCm) {
    return runsOut()
        ? Double.NaN
        : Math.max(0, (leaveMsCm * (startL + connectedL) - drunkMsCm * usedL) / endL());
  }

  /** Highest conductivity to leave with so that it returns at a limit; NaN when it runs out. */
  double highestLeaveMsCm(double limitMsCm) {
    return runsOut()
        ? Double.NaN
        : (limitMsCm * endL() + drunkMsCm * usedL) / (startL + connectedL);
  }
}
