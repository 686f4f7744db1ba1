package sallet.crop;

import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The two-state model of a stand of lettuce by Van Henten (1994) Agricultural Systems 45:55-72:
 * reserves and structure in g dry mass per m² of ground, driven by light, temperature and carbon
 * dioxide without time steps of its own.
 *
 * <p>It stands beside {@link PlantModel} as an independent opinion on a closed stand. It knows no
 * single plants, sites or fresh mass, spreads leaves evenly over the ground, and its one leaf layer
 * saturates early under lamps.
 *
 * @param rootShare share of the structure in the root: 0.15 in soil, 0.07 in water culture
 */
public record TwoStateLettuce(double rootShare) {
  /** In soil. Source: Van Henten 1994. */
  public static final TwoStateLettuce IN_SOIL = new TwoStateLettuce(0.15);

  /** In water culture: the value of later work by the same author, not seen in print. */
  public static final TwoStateLettuce IN_WATER = new TwoStateLettuce(0.07);

  private static final double CH2O_PER_CO2 = 30.0 / 44.0;

  /** c_beta, structure gained by reserve spent. */
  private static final double YIELD = 0.8;

  /** c_gr, largest relative growth at 20 °C, 1/s. */
  private static final double GROWTH_PER_S = 5.0e-6;

  /** Upkeep of shoot and root at 25 °C, g per g and s. */
  private static final double SHOOT_UPKEEP_PER_S = 3.47e-7;

  private static final double ROOT_UPKEEP_PER_S = 1.16e-7;

  /** c_K, extinction of light by leaf area. */
  private static final double EXTINCTION = 0.9;

  /** c_lar, leaf area by structure of the shoot, m²/g. */
  private static final double LEAF_M2_PER_G = 0.075;

  private static final double SECONDS_PER_HOUR = 3600;

  public TwoStateLettuce {
    if (!(rootShare >= 0 && rootShare < 1)) {
      throw new IllegalArgumentException(
          "root share must be 0 or more and below 1, was " + rootShare);
    }
  }

  /**
   * The stand at a moment.
   *
   * @param reserveGM2 X_n, non-structural dry mass, g/m²
   * @param structureGM2 X_s, structural dry mass, g/m²
   */
  public record State(double reserveGM2, double structureGM2) {
    /** Dry mass of the whole stand, g/m². */
    public double dryGM2() {
      return reserveGM2 + structureGM2;
    }
  }

  /**
   * Surroundings that stay the same for a while.
   *
   * @param hours how long, h
   * @param ppfdUmol light above the stand, µmol/m²/s
   * @param temperatureC temperature, °C
   * @param co2Ppm carbon dioxide, ppm
   */
  public record Spell(double hours, double ppfdUmol, double temperatureC, double co2Ppm) {}

  /**
   * Rates at a moment.
   *
   * @param closedCo2 F_max, uptake of a stand that catches all light, g CO2/m²/s
   * @param grossCo2 f_phot, uptake, g CO2/m²/s
   * @param growthPerS r, relative growth of the structure, 1/s
   * @param upkeepGM2S f_resp, upkeep, g CH2O/m²/s
   */
  record Rates(double closedCo2, double grossCo2, double growthPerS, double upkeepGM2S) {}

  /** Rates of a stand in given surroundings. */
  Rates rates(State state, Spell air) {
    double closed = Assimilation.grossCo2(air.ppfdUmol(), air.temperatureC(), air.co2Ppm(), 1);
    double leaf = LEAF_M2_PER_G * (1 - rootShare) * state.structureGM2();
    double growth =
        GROWTH_PER_S
            * state.reserveGM2()
            / (state.structureGM2() + state.reserveGM2())
            * Math.pow(1.6, (air.temperatureC() - 20) / 10);
    double upkeep =
        (SHOOT_UPKEEP_PER_S * (1 - rootShare) + ROOT_UPKEEP_PER_S * rootShare)
            * state.structureGM2()
            * Math.pow(2, (air.temperatureC() - 25) / 10);
    return new Rates(closed, -Math.expm1(-EXTINCTION * leaf) * closed, growth, upkeep);
  }

  /** The stand after spells of steady surroundings, one after the other. */
  public State after(State start, List<Spell> spells) {
    State state = start;
    for (Spell spell : spells) {
      state = after(state, spell);
    }
    return state;
  }

  /** The integrator starts anew at each spell, since rates jump where light is switched. */
  private State after(State start, Spell spell) {
    double end = spell.hours() * SECONDS_PER_HOUR;
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-6, Math.max(1, end), 1e-12, 1e-11);
    ODEState initial = new ODEState(0, new double[] {start.reserveGM2(), start.structureGM2()});
    double[] x = integrator.integrate(equations(spell), initial, end).getPrimaryState();
    return new State(x[0], x[1]);
  }

  private OrdinaryDifferentialEquation equations(Spell spell) {
    return new OrdinaryDifferentialEquation() {
      @Override
      public int getDimension() {
        return 2;
      }

      @Override
      public double[] computeDerivatives(double t, double[] x) {
        Rates rates = rates(new State(x[0], x[1]), spell);
        double growth = rates.growthPerS() * x[1];
        double reserve =
            CH2O_PER_CO2 * rates.grossCo2()
                - growth
                - rates.upkeepGM2S()
                - (1 - YIELD) / YIELD * growth;
        return new double[] {reserve, growth};
      }
    };
  }
}
