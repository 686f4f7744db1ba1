package sallet.water.learn;

/**
 * Two readings of the reservoir and what was computed between them.
 *
 * @param startL water at the start, what was poured in then with it, L
 * @param endL water at the end, L
 * @param computedL loss computed at factor 1, L
 * @param days time between them, d
 * @param goesOn whether it starts at the reading at which the one before it ends
 */
public record Interval(double startL, double endL, double computedL, double days, boolean goesOn) {
  /** Error of one reading of the level, L. Judgement: a ruler in a household tub. */
  static final double LEVEL_L = 0.4;

  /** Measured over computed use outside which no reading is believed. Judgement. */
  public static final double LEAST_RATIO = 0.2;

  public static final double MOST_RATIO = 4;

  /**
   * A loss computed below this is drowned by the ruler, unless this much is measured, L. Judgement.
   */
  private static final double LEAST_L = 2;

  private static final double SURE_L = 3;

  /** Measured loss, L. */
  public double lossL() {
    return startL - endL;
  }

  /** Whether it can teach anything: a loss well above the error of the ruler. */
  public boolean teaches() {
    return computedL > 0 && lossL() > 2 * LEVEL_L;
  }

  /** Whether the ruler's error could hide the loss: the next reading will tell more. */
  public boolean tooShort() {
    boolean rose = lossL() < -2 * LEVEL_L;
    boolean fewLitres = computedL < LEAST_L && lossL() < SURE_L;
    boolean withinRuler = lossL() <= 2 * LEVEL_L && LEAST_RATIO * computedL <= 2 * LEVEL_L;
    return !rose && (fewLitres || withinRuler);
  }

  /** Whether it teaches and may be true. */
  public boolean believable() {
    return teaches() && ratio() >= LEAST_RATIO && ratio() <= MOST_RATIO;
  }

  /** Measured over computed loss. */
  public double ratio() {
    return lossL() / computedL;
  }

  /**
   * Spread of the logarithm of that share: the interval's own and the ruler's.
   *
   * @param factor the household's factor, as far as it is known: the ruler's error is set against
   *     the loss it makes likely, so that a loss read too small is not thought less sure
   */
  public double logSd(double factor) {
    return Math.hypot(UseFactor.READING_LOG_SD, Math.sqrt(2) * rulerLogSd(factor));
  }

  /** Spread that the ruler's error at one of its ends gives the logarithm of that share. */
  double rulerLogSd(double factor) {
    return LEVEL_L / (factor * computedL);
  }
}
