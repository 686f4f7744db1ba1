package sallet.feed.solution;

import java.util.Map;
import java.util.Optional;

/**
 * Activity coefficients of ions.
 *
 * <p>log10 γ = −A z² √I / (1 + B å √I) + b I with the ion size å and slope b of Truesdell and Jones
 * (1974, J. Res. US Geol. Survey 2:233), sizes of the other ions after Kielland (1937, J. Am. Chem.
 * Soc. 59:1675); ions without a size follow Davies (1962, Ion Association), log10 γ = −A z²
 * (√I/(1+√I) − 0.3 I); neutral species log10 γ = 0.1 I. Sizes from memory. I is the ionic strength,
 * mol/kg. Good to about I = 0.5 with calcium and sulfate present; beyond that indicative, and I is
 * held at 2.
 */
final class Activity {
  /** Ionic strength up to which the model is good, mol/kg. */
  static final double GOOD_TO = 0.5;

  private static final double HELD_AT = 2;
  private static final double DAVIES_SLOPE = 0.3;
  private static final double NEUTRAL_SLOPE = 0.1;

  /**
   * Size and slope of an ion.
   *
   * @param angstrom distance of closest approach, 1e-10 m
   * @param slope salting-out slope, kg/mol
   */
  record Size(double angstrom, double slope) {}

  private static final Map<String, Size> SIZES =
      Map.ofEntries(
          Map.entry("CALCIUM", new Size(5.0, 0.165)),
          Map.entry("MAGNESIUM", new Size(5.5, 0.20)),
          Map.entry("SODIUM", new Size(4.0, 0.075)),
          Map.entry("POTASSIUM", new Size(3.5, 0.015)),
          Map.entry("AMMONIUM", new Size(2.5, 0)),
          Map.entry("CHLORIDE", new Size(3.5, 0.015)),
          Map.entry("NITRATE", new Size(3.0, 0)),
          Map.entry("SULFATE", new Size(5.0, -0.04)),
          Map.entry("PHOSPHATE", new Size(5.4, 0)),
          Map.entry(Species.HYDROGEN_PHOSPHATE, new Size(5.0, 0)),
          Map.entry(Species.PHOSPHATE, new Size(4.0, 0)),
          Map.entry(Species.BICARBONATE, new Size(5.4, 0)),
          Map.entry(Species.CARBONATE, new Size(5.4, 0)),
          Map.entry("CaH2PO4", new Size(5.4, 0)),
          Map.entry("MgH2PO4", new Size(5.4, 0)),
          Map.entry("CaPO4", new Size(5.4, 0)),
          Map.entry("CaHCO3", new Size(6.0, 0)),
          Map.entry("MgHCO3", new Size(4.0, 0)),
          Map.entry("KSO4", new Size(5.4, 0)),
          Map.entry("NaSO4", new Size(5.4, 0)),
          Map.entry(Species.HYDROXIDE, new Size(3.5, 0)),
          Map.entry(SolutionState.PROTON, new Size(9.0, 0)));

  private final double debyeHuckelA;
  private final double debyeHuckelB;

  Activity(double temperatureC) {
    debyeHuckelA = Water.debyeHuckelSlope(temperatureC);
    debyeHuckelB = Water.debyeHuckelSize(temperatureC);
  }

  /** Size of a species, nothing when it follows Davies. */
  static Optional<Size> size(String species) {
    return Optional.ofNullable(SIZES.get(species));
  }

  /** ln γ of a species. */
  double lnGamma(Optional<Size> size, int charge, double ionicStrength) {
    double strength = Math.min(ionicStrength, HELD_AT);
    double root = Math.sqrt(strength);
    if (charge == 0) {
      return Math.log(10) * NEUTRAL_SLOPE * strength;
    }
    double log10 =
        size.isEmpty()
            ? -debyeHuckelA * charge * charge * daviesTerm(strength)
            : -debyeHuckelA
                    * charge
                    * charge
                    * root
                    / (1 + debyeHuckelB * size.get().angstrom() * root)
                + size.get().slope() * strength;
    return Math.log(10) * log10;
  }

  private static double daviesTerm(double ionicStrength) {
    double root = Math.sqrt(ionicStrength);
    return root / (1 + root) - DAVIES_SLOPE * ionicStrength;
  }

  /**
   * Σ m (φ − 1), mol/kg: by how much the osmotic coefficient φ of the Davies equation (by Gibbs and
   * Duhem) changes the osmotic pressure of ions of total molality Σ m.
   */
  double osmoticExcess(double ionicStrength) {
    double strength = Math.min(ionicStrength, HELD_AT);
    double root = Math.sqrt(strength);
    double integral =
        strength - 2 * root + 2 * Math.log1p(root) - DAVIES_SLOPE / 2 * strength * strength;
    return -2 * Math.log(10) * debyeHuckelA * (strength * daviesTerm(strength) - integral);
  }
}
