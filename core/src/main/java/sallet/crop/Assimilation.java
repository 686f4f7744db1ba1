package sallet.crop;

/**
 * Daily assimilation of light-catching leaf from the hours of a day.
 *
 * <p>Gross canopy photosynthesis of Van Henten (1994) Agricultural Systems 45:55-72, for leaf that
 * catches all light, with the conductance to carbon dioxide raised by a layer factor (several lit
 * leaf layers above each other).
 *
 * <p>Range: 0 to 40 °C, 0 to 1000 µmol/m²/s, up to 2000 ppm. Outside 5 to 40 °C the carboxylation
 * conductance is zero and nothing is gained.
 */
public final class Assimilation {
  private static final double CH2O_PER_CO2 = 30.0 / 44.0;
  private static final double SECONDS_PER_HOUR = 3600;

  /** µmol of photosynthetically active light per joule; sunlight and white lamps. */
  private static final double UMOL_PER_JOULE = 4.57;

  /** Light use efficiency at very high carbon dioxide, g CO2 per J. */
  private static final double EFFICIENCY_G_PER_J = 17e-6;

  /** Density of carbon dioxide, g/m³ per ppm. */
  private static final double CO2_G_PER_M3_PPM = 1.83e-3;

  private static final double BOUNDARY_LAYER_M_PER_S = 0.007;
  private static final double STOMATA_M_PER_S = 0.005;

  /** Carbon dioxide outdoors, ppm: what every room has at least. From memory, of the 2020s. */
  private static final double OUTDOOR_CO2_PPM = 420;

  /** Share of what a room has more than outdoors that growth is reckoned with. Judgement. */
  private static final double ROOM_SURPLUS_SHARE = 0.5;

  private Assimilation() {}

  /**
   * Carbon dioxide to reckon with in a room whose air holds so much while there is light, ppm: half
   * of what it has more than outdoors. Sources disagree on the gain: 20 % of head mass from 350 to
   * 800 ppm (Hicklenton, in Van Henten 1994), about 55 % from ordinary air to 1600 ppm (from
   * memory), which is what the equations give; and a room is aired and not stirred. To be replaced
   * by the household's own weighings.
   */
  public static double roomCo2Ppm(double measuredPpm) {
    return measuredPpm <= OUTDOOR_CO2_PPM
        ? measuredPpm
        : OUTDOOR_CO2_PPM + ROOM_SURPLUS_SHARE * (measuredPpm - OUTDOOR_CO2_PPM);
  }

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
    if (ppfdUmol.length != 24 || temperatureC.length != 24) {
      throw new IllegalArgumentException(
          "a day needs 24 hours of light and temperature, had "
              + ppfdUmol.length
              + " and "
              + temperatureC.length);
    }
    double sum = 0;
    for (int h = 0; h < 24; h++) {
      sum += grossCo2(ppfdUmol[h], temperatureC[h], co2Ppm, layerFactor);
    }
    return CH2O_PER_CO2 * SECONDS_PER_HOUR * sum;
  }

  /**
   * Gross uptake of carbon dioxide by leaf that catches all light, g CO2/m²/s: Fmax of Van Henten
   * (1994) with the layer factor on the conductance.
   */
  static double grossCo2(double ppfdUmol, double temperatureC, double co2Ppm, double layerFactor) {
    double carboxylation = carboxylationMPerS(temperatureC);
    if (ppfdUmol <= 0 || carboxylation <= 0) {
      return 0;
    }
    double compensationPpm = 40 * Math.pow(2, (temperatureC - 20) / 10);
    double surplusPpm = co2Ppm - compensationPpm;
    if (surplusPpm <= 0) {
      return 0;
    }
    double efficiency = EFFICIENCY_G_PER_J * surplusPpm / (co2Ppm + 2 * compensationPpm);
    double conductance =
        layerFactor / (1 / BOUNDARY_LAYER_M_PER_S + 1 / STOMATA_M_PER_S + 1 / carboxylation);
    double byLight = efficiency * ppfdUmol / UMOL_PER_JOULE;
    double byCo2 = conductance * CO2_G_PER_M3_PPM * surplusPpm;
    return byLight * byCo2 / (byLight + byCo2);
  }

  /** Carboxylation conductance, m/s; best at 22.5 °C, zero at 5 and 40 °C. */
  private static double carboxylationMPerS(double temperatureC) {
    return (-1.32e-5 * temperatureC + 5.94e-4) * temperatureC - 2.64e-3;
  }
}
