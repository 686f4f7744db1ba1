package sallet.feed.solution;

import sallet.feed.ion.Ion;

/**
 * Solids that can fall out of a nutrient solution, and how near to it a solution is.
 *
 * <p>Saturation index SI = log10(ion activity product / solubility product): above 0 the solid can
 * form.
 */
public enum Mineral {
  /** CaSO4·2H2O (Langmuir and Melchior 1985; coefficients from memory, −4.58 at 25 °C). */
  GYPSUM("gypsum") {
    @Override
    public double logProduct(SolutionState s) {
      return s.logActivity(Ion.CALCIUM.name()) + s.logActivity(Ion.SULFATE.name());
    }

    @Override
    public double logSolubility(double temperatureC) {
      double k = temperatureC + Water.ZERO_CELSIUS_K;
      return 68.2401 - 3221.51 / k - 25.0627 * Math.log10(k);
    }
  },

  /** CaHPO4·2H2O, −6.59 at 25 °C (Gregory, Moreno and Brown 1970; from memory). */
  BRUSHITE("calcium phosphate") {
    @Override
    public double logProduct(SolutionState s) {
      return s.logActivity(Ion.CALCIUM.name()) + s.logActivity(Species.HYDROGEN_PHOSPHATE);
    }

    @Override
    public double logSolubility(double temperatureC) {
      return -6.59;
    }
  },

  /** CaCO3 (Plummer and Busenberg 1982): the scale of hard water. */
  CALCITE("lime scale") {
    @Override
    public double logProduct(SolutionState s) {
      return s.logActivity(Ion.CALCIUM.name()) + s.logActivity(Species.CARBONATE);
    }

    @Override
    public double logSolubility(double temperatureC) {
      return Carbonate.logCalcite(temperatureC);
    }
  };

  private final String name;

  Mineral(String name) {
    this.name = name;
  }

  /** log10 of the ion activity product. */
  public abstract double logProduct(SolutionState state);

  /** log10 of the solubility product. */
  public abstract double logSolubility(double temperatureC);

  /** The word a grower would use. */
  public String plainName() {
    return name;
  }

  /** Saturation index; minus infinity when an ion of the solid is absent. */
  public double saturationIndex(SolutionState state) {
    return logProduct(state) - logSolubility(state.temperatureC());
  }
}
