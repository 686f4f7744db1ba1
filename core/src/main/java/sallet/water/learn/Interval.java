package sallet.water.learn;

/**
 * Two readings of the reservoir and what was computed between them.
 *
 * @param startL water at the start, what was poured in then with it, L
 * @param endL water at the end, L
 * @param computedL loss computed at factor 1, L
 * @param days time between them, d
 */
public record Interval(double startL, double endL, double computedL, double days) {
  /** Error of one reading of the level, L. Judgement: a ruler in a household tub. */
  private static final double LEVEL_L = 0.4;

  /** Measured loss, L. */
  public double lossL() {
    return startL - endL;
  }

  /** Whether it can teach anything: a loss well above the error of the ruler. */
  public boolean teaches() {
    return computedL > 0 && lossL() > 2 * LEVEL_L;
  }

  /** Measured over computed loss. */
  public double ratio() {
    return lossL() / computedL;
  }

  /** Spread of the logarithm of that share: the interval's own and the ruler's. */
  public double logSd() {
    return Math.hypot(UseFactor.READING_LOG_SD, LEVEL_L * Math.sqrt(2) / lossL());
  }
}
