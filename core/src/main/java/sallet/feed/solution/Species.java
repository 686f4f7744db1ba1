package sallet.feed.solution;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import sallet.feed.ion.Ion;

/**
 * A species formed from counted ions and protons.
 *
 * @param name as printed
 * @param charge charge number
 * @param ions the counted ions it is made of, one of each
 * @param protons protons taken up (positive) or given off (negative) against the counted ions
 * @param logK log10 of the formation constant from the counted ions, by temperature in °C
 */
record Species(String name, int charge, List<Ion> ions, int protons, DoubleUnaryOperator logK) {

  static final String HYDROXIDE = "OH";
  static final String BICARBONATE = "HCO3";
  static final String CARBONATE = "CO3";
  static final String HYDROGEN_PHOSPHATE = "HPO4";
  static final String PHOSPHATE = "PO4";

  /** Formation of H2PO4 from PO4 at 25 °C: log10 K and heat. */
  private static final double LOG_H2PO4 = 19.553;

  private static final double HEAT_H2PO4 = -18.91;

  /**
   * The species of nutrient solutions. Constants of pairs and protonated forms as commonly
   * tabulated from PO4, CO3 and SO4: values of a public-domain geochemistry data base (Parkhurst
   * and Appelo 2013, USGS Techniques and Methods 6-A43); most heats from memory, rounded. Citric
   * acid: pK 3.13, 4.76, 6.40 (memory), its metal pairs left out. Potassium sulfate is fitted: 1.05
   * instead of the tabulated 0.85, with which gypsum beside potassium salts dissolves 7 % less than
   * an independent code finds, with 1.05 less than 4 % (docs/models/feed.md).
   */
  static final List<Species> TABLE =
      List.of(
          new Species(HYDROXIDE, -1, List.of(), -1, Carbonate::logWater),
          new Species(BICARBONATE, -1, List.of(Ion.CARBON), -1, Carbonate::logK1),
          new Species(CARBONATE, -2, List.of(Ion.CARBON), -2, Species::logCo3),
          new Species("NH3", 0, List.of(Ion.AMMONIUM), -1, heat(-9.252, 52.2)),
          phosphate(HYDROGEN_PHOSPHATE, -2, List.of(), 1, 12.346, -14.77),
          phosphate(PHOSPHATE, -3, List.of(), 0, 0, 0),
          phosphate("H3PO4", 0, List.of(), 3, 21.721, -10.1),
          phosphate("CaHPO4", 0, List.of(Ion.CALCIUM), 1, 15.085, -0.97),
          phosphate("CaH2PO4", 1, List.of(Ion.CALCIUM), 2, 20.961, -4.71),
          phosphate("CaPO4", -1, List.of(Ion.CALCIUM), 0, 6.459, 13),
          phosphate("MgHPO4", 0, List.of(Ion.MAGNESIUM), 1, 15.216, -0.97),
          phosphate("MgH2PO4", 1, List.of(Ion.MAGNESIUM), 2, 21.066, -4.71),
          carbonate("CaHCO3", 1, Ion.CALCIUM, 1, 11.435, 3),
          carbonate("CaCO3", 0, Ion.CALCIUM, 0, 3.224, 14.8),
          carbonate("MgHCO3", 1, Ion.MAGNESIUM, 1, 11.399, 3),
          carbonate("MgCO3", 0, Ion.MAGNESIUM, 0, 2.98, 11.35),
          carbonate("NaHCO3", 0, Ion.SODIUM, 1, 10.079, 0),
          sulfate("HSO4", -1, List.of(), 1, 1.988, 16.1),
          sulfate("CaSO4", 0, List.of(Ion.CALCIUM), 0, 2.25, 5.5),
          sulfate("MgSO4", 0, List.of(Ion.MAGNESIUM), 0, 2.37, 19.0),
          sulfate("KSO4", -1, List.of(Ion.POTASSIUM), 0, 1.05, 9.4),
          sulfate("NaSO4", -1, List.of(Ion.SODIUM), 0, 0.7, 4.7),
          sulfate("NH4SO4", -1, List.of(Ion.AMMONIUM), 0, 1.11, 0),
          citrate("H2-citrate", -1, -3.13),
          citrate("H-citrate", -2, -3.13 - 4.76),
          citrate("citrate", -3, -3.13 - 4.76 - 6.40));

  /** Ion sizes of {@link #TABLE}, in its order. */
  static final List<Optional<Activity.Size>> SIZES =
      TABLE.stream().map(s -> Activity.size(s.name())).toList();

  /** The ions that take part in any reaction. */
  static final Set<Ion> REACTING =
      TABLE.stream().flatMap(s -> s.ions().stream()).collect(Collectors.toUnmodifiableSet());

  Species {
    ions = List.copyOf(ions);
  }

  /** Given from PO4 and protons, kept from H2PO4. */
  private static Species phosphate(
      String name, int charge, List<Ion> cation, int protons, double logK, double heatKj) {
    return new Species(
        name,
        charge,
        with(cation, Ion.PHOSPHATE),
        protons - 2,
        heat(logK - LOG_H2PO4, heatKj - HEAT_H2PO4));
  }

  /** Given from CO3 and protons, kept from CO2. */
  private static Species carbonate(
      String name, int charge, Ion cation, int protons, double logK, double heatKj) {
    DoubleUnaryOperator fromCo3 = heat(logK, heatKj);
    return new Species(
        name,
        charge,
        List.of(cation, Ion.CARBON),
        protons - 2,
        t -> fromCo3.applyAsDouble(t) + logCo3(t));
  }

  private static Species sulfate(
      String name, int charge, List<Ion> cation, int protons, double logK, double heatKj) {
    return new Species(name, charge, with(cation, Ion.SULFATE), protons, heat(logK, heatKj));
  }

  private static Species citrate(String name, int charge, double logK) {
    return new Species(name, charge, List.of(Ion.CITRATE), charge, heat(logK, 0));
  }

  private static List<Ion> with(List<Ion> cation, Ion anion) {
    return cation.isEmpty() ? List.of(anion) : List.of(cation.get(0), anion);
  }

  private static double logCo3(double temperatureC) {
    return Carbonate.logK1(temperatureC) + Carbonate.logK2(temperatureC);
  }

  /** log10 K at a temperature from its value at 25 °C and the heat of reaction (van 't Hoff). */
  private static DoubleUnaryOperator heat(double logK25, double heatKj) {
    double reference = 1 / (25 + Water.ZERO_CELSIUS_K);
    double slope = heatKj * 1000 / (Math.log(10) * Water.GAS_CONSTANT);
    return t -> logK25 - slope * (1 / (t + Water.ZERO_CELSIUS_K) - reference);
  }
}
