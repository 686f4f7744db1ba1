package sallet.feed.product;

/**
 * How much dissolves, g per litre of water.
 *
 * @param at10C at 10 °C
 * @param at20C at 20 °C
 * @param at30C at 30 °C
 */
public record Solubility(double at10C, double at20C, double at30C) {
  public Solubility {
    if (!(at10C > 0 && at20C > 0 && at30C > 0)) {
      throw new IllegalArgumentException("solubility must be above 0 g/L");
    }
  }

  /** The same amount in a heavier or lighter form. */
  Solubility times(double factor) {
    return new Solubility(factor * at10C, factor * at20C, factor * at30C);
  }

  /** At a temperature, straight lines between the three and beyond; never below a tenth. */
  public double gL(double temperatureC) {
    double slope = temperatureC < 20 ? at20C - at10C : at30C - at20C;
    return Math.max(at10C / 10, at20C + slope * (temperatureC - 20) / 10);
  }
}
