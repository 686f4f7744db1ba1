package sallet.crop;

/** Daily assimilation of light-catching leaf from the hours of a day. */
public final class Assimilation {
  private Assimilation() {}

  /**
   * Carbohydrate gained in a day by a unit of light-catching leaf area, g CH2O per m², at
   * assimilation factor 1.
   *
   * @param ppfdUmol 24 hourly means, µmol/m²/s
   * @param temperatureC 24 hourly means, °C
   * @param co2Ppm carbon dioxide, ppm
   * @param layerFactor gsc, see {@link PlantParameters}
   */
  public static double dailyG(
      double[] ppfdUmol, double[] temperatureC, double co2Ppm, double layerFactor) {
    throw new UnsupportedOperationException("not built yet");
  }
}
