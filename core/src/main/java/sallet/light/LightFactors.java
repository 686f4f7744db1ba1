package sallet.light;

/**
 * What the household's own readings make of the reckoned light.
 *
 * @param window for daylight
 * @param lamp for lamp light
 */
public record LightFactors(Factor window, Factor lamp) {

  /**
   * A multiplier that is surely above 0.
   *
   * @param value most likely
   * @param spread it lies within value / spread and value × spread two times in three; 1 or more
   * @param readings how many readings it rests on
   */
  public record Factor(double value, double spread, int readings) {}
}
