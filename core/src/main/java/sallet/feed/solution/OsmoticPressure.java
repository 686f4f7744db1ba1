package sallet.feed.solution;

/**
 * Osmotic pressure, the pull of the solution against the roots.
 *
 * <p>π = R T ρ φ Σ m, with the osmotic coefficient φ that belongs to the Davies equation by Gibbs
 * and Duhem. Valid like the activities, to I = 0.5 mol/kg.
 */
public final class OsmoticPressure {
  private OsmoticPressure() {}

  /** Osmotic pressure, kPa. */
  public static double kPa(SolutionState state) {
    double t = state.temperatureC();
    double solutesMol =
        state.species().values().stream().mapToDouble(SolutionState.Amount::mmol).sum() / 1000;
    double effectiveMol = solutesMol + new Activity(t).osmoticExcess(state.ionicStrengthMol());
    return Water.GAS_CONSTANT
        * (t + Water.ZERO_CELSIUS_K)
        * Water.densityGmL(t)
        * Math.max(0, effectiveMol);
  }

  /** Osmotic coefficient of all solutes together, 1 for an ideal solution. */
  public static double coefficient(SolutionState state) {
    double solutesMol =
        state.species().values().stream().mapToDouble(SolutionState.Amount::mmol).sum() / 1000;
    return 1
        + new Activity(state.temperatureC()).osmoticExcess(state.ionicStrengthMol()) / solutesMol;
  }
}
