package sallet.water.medium;

/**
 * How much water a medium holds against a pull (van Genuchten 1980, m = 1 - 1/n).
 *
 * @param residual water that stays, m³/m³
 * @param saturated water that fills all pores, m³/m³
 * @param alphaPerCm inverse of the pull at which pores begin to empty, 1/cm
 * @param n how alike the pores are, above 1
 */
public record Retention(double residual, double saturated, double alphaPerCm, double n) {
  public Retention {
    if (!(residual >= 0 && residual < saturated && saturated <= 1 && alphaPerCm > 0 && n > 1)) {
      throw new IllegalArgumentException(
          "water kept must rise from residual to saturated and n be above 1, had %s, %s, %s, %s"
              .formatted(residual, saturated, alphaPerCm, n));
    }
  }

  /** Water held at so many centimetres above a free water level, m³/m³. */
  public double at(double headCm) {
    double pull = Math.pow(alphaPerCm * Math.max(0, headCm), n);
    return residual + (saturated - residual) / Math.pow(1 + pull, 1 - 1 / n);
  }
}
