package sallet.cost;

/** Electric energy of lamps, pumps, fans and heaters. */
public final class Electricity {
  private static final double J_PER_KWH = 3.6e6;

  private Electricity() {}

  /** Energy of a device, kWh. */
  public static double kwh(double watts, double hours) {
    return watts * hours / 1000;
  }

  /**
   * Lamp energy for a kilogram of fresh leaf, kWh/kg: 1 / (3.6 η f LUE).
   *
   * @param efficacyUmolPerJ photons per joule of the lamp, µmol/J
   * @param onLeaves share of its photons that land on leaves, 0 to 1
   * @param gramsPerMol fresh leaf grown by a mole of them, g/mol; 20 to 30 is usual
   */
  public static double lampKwhPerKg(double efficacyUmolPerJ, double onLeaves, double gramsPerMol) {
    double gramsPerJ = efficacyUmolPerJ * 1e-6 * onLeaves * gramsPerMol;
    return 1000 / gramsPerJ / J_PER_KWH;
  }

  /** Energy for a kilogram from the energy of some grams, kWh/kg. */
  public static double kwhPerKg(double kwh, double kilograms) {
    return kwh / kilograms;
  }
}
