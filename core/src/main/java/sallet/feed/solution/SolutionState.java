package sallet.feed.solution;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;

/**
 * A solution at equilibrium.
 *
 * @param temperatureC temperature, °C
 * @param ph pH (activity scale)
 * @param ionicStrengthMol ionic strength of the speciated solution, mol/kg
 * @param totals what is dissolved, mmol/L, with the carbon that is really in solution
 * @param alkalinityMeq alkalinity of the speciated solution, meq/L
 * @param species all species by name; free ions go by the name of their {@link Ion}, protons by "H"
 * @param warnings what the grower must know about the limits of the model
 */
public record SolutionState(
    double temperatureC,
    double ph,
    double ionicStrengthMol,
    Composition totals,
    double alkalinityMeq,
    Map<String, Amount> species,
    List<String> warnings) {
  static final String PROTON = "H";

  /**
   * One species.
   *
   * @param mmol amount, mmol/L
   * @param charge charge number
   * @param lnActivity natural logarithm of the activity (mol/kg scale)
   */
  public record Amount(double mmol, int charge, double lnActivity) {}

  public SolutionState {
    species = Collections.unmodifiableMap(new LinkedHashMap<>(species));
    warnings = List.copyOf(warnings);
  }

  /** Amount of a species, mmol/L; 0 when it does not occur. */
  public double mmol(String name) {
    Amount found = species.get(name);
    return found == null ? 0 : found.mmol();
  }

  /** Amount of an ion that is free, not in a pair, mmol/L. */
  public double freeMmol(Ion ion) {
    return mmol(ion.name());
  }

  /** log10 of the activity of a species; minus infinity when it does not occur. */
  double logActivity(String name) {
    Amount found = species.get(name);
    return found == null ? Double.NEGATIVE_INFINITY : found.lnActivity() / Math.log(10);
  }

  /** Charge left over, meq/L: zero for a solution that can exist, whatever it holds. */
  public double chargeMeq() {
    return species.values().stream().mapToDouble(a -> a.charge() * a.mmol()).sum();
  }
}
