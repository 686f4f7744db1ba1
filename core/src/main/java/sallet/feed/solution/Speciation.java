package sallet.feed.solution;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;

/**
 * Equilibrium of a solution at one temperature: pairs of ions, weak acids and bases, activities.
 *
 * <p>Valid 0 to 60 °C and to ionic strength 0.5 mol/kg; beyond, up to tank stocks, the state
 * carries a warning.
 */
public final class Speciation {
  private static final double COLDEST_C = 0;
  private static final double WARMEST_C = 60;
  private static final int MOST_ROUNDS = 200;
  private static final int CALM_ROUNDS = 20;
  private static final double LN10 = Math.log(10);

  private final double temperatureC;
  private final Activity activity;
  private final List<Double> lnFormation;

  private Speciation(double temperatureC) {
    this.temperatureC = temperatureC;
    this.activity = new Activity(temperatureC);
    this.lnFormation =
        Species.TABLE.stream().map(s -> LN10 * s.logK().applyAsDouble(temperatureC)).toList();
  }

  /** The model at a temperature of 0 to 60 °C. */
  public static Speciation at(double temperatureC) {
    if (!(temperatureC >= COLDEST_C && temperatureC <= WARMEST_C)) {
      throw new FeedFault(
          "The solution temperature must be 0 to 60 °C, was %s °C".formatted(temperatureC));
    }
    return new Speciation(temperatureC);
  }

  /** Temperature of the model, °C. */
  public double temperatureC() {
    return temperatureC;
  }

  /** The state with the pH that charge balance asks for. */
  public SolutionState solve(Composition totals, Carbon carbon) {
    return new Run(totals, carbon, OptionalDouble.empty()).state();
  }

  /** The state at a measured pH, whatever acid or base it took to get there. */
  public SolutionState solveAtPh(Composition totals, Carbon carbon, double ph) {
    if (!(ph >= 0 && ph <= 14)) {
      throw new FeedFault("pH must be 0 to 14, was %s".formatted(ph));
    }
    return new Run(totals, carbon, OptionalDouble.of(ph)).state();
  }

  /**
   * The composition with the dissolved carbon that gives a measured alkalinity at a measured pH.
   *
   * @param alkalinityMeq measured alkalinity, meq/L
   */
  public Composition withCarbonFor(Composition totals, double alkalinityMeq, double ph) {
    double low = 0;
    double high = Math.max(1, 2 * alkalinityMeq);
    while (alkalinityAt(totals, high, ph) < alkalinityMeq) {
      low = high;
      high *= 4;
      if (high > 1e4) {
        throw new FeedFault(
            "An alkalinity of %s meq/L is not possible at pH %s".formatted(alkalinityMeq, ph));
      }
    }
    double missingLow = alkalinityAt(totals, low, ph) - alkalinityMeq;
    if (missingLow >= 0) {
      return totals.with(Ion.CARBON, low);
    }
    double missingHigh = alkalinityAt(totals, high, ph) - alkalinityMeq;
    for (int i = 0; i < 60 && high - low > 1e-12 * high; i++) {
      double middle = low - missingLow * (high - low) / (missingHigh - missingLow);
      double missing = alkalinityAt(totals, middle, ph) - alkalinityMeq;
      if (Math.abs(missing) < 1e-12 * (1 + alkalinityMeq)) {
        return totals.with(Ion.CARBON, middle);
      }
      if (missing < 0) {
        low = middle;
        missingLow = missing;
        missingHigh /= 2;
      } else {
        high = middle;
        missingHigh = missing;
        missingLow /= 2;
      }
    }
    return totals.with(Ion.CARBON, (low + high) / 2);
  }

  private double alkalinityAt(Composition totals, double carbonMmol, double ph) {
    return solveAtPh(totals.with(Ion.CARBON, carbonMmol), Carbon.CLOSED, ph).alkalinityMeq();
  }

  /** One solution being solved. Part 0 is the proton, the others are the reacting ions present. */
  private final class Run {
    private final Composition totals;
    private final List<Ion> reacting = new ArrayList<>();
    private final List<Ion> inert = new ArrayList<>();
    private final List<Integer> occurring = new ArrayList<>();
    private final MassBalance balance;
    private final List<Optional<Activity.Size>> partSizes = new ArrayList<>();
    private final double[] partGamma;
    private final double[] speciesGamma;
    private final double[] given;
    private final boolean[] fixed;
    private double ionicStrength;

    Run(Composition totals, Carbon carbon, OptionalDouble ph) {
      this.totals = totals;
      sort(carbon);
      int parts = 1 + reacting.size();
      double[] total = new double[parts];
      given = new double[parts];
      fixed = new boolean[parts];
      partGamma = new double[parts];
      speciesGamma = new double[occurring.size()];
      for (int i = 0; i < parts; i++) {
        partSizes.add(Activity.size(partName(i)));
      }
      total[0] = -totals.alkalinityMeq() / 1000;
      if (ph.isPresent()) {
        fixed[0] = true;
        given[0] = -LN10 * ph.getAsDouble();
      }
      for (int i = 1; i < parts; i++) {
        Ion ion = reacting.get(i - 1);
        total[i] = totals.mmol(ion) / 1000;
        if (ion == Ion.CARBON && carbon instanceof Carbon.Open open) {
          fixed[i] = true;
          given[i] = LN10 * (Carbonate.logHenry(temperatureC) + open.log10Atm());
        }
      }
      balance = new MassBalance(stoichiometry(parts), total, fixed);
      balance.lnFree[0] = LN10 * -6;
      for (int i = 1; i < parts; i++) {
        balance.lnFree[i] = Math.log(Math.max(total[i], 1e-12));
      }
      iterate();
    }

    private void sort(Carbon carbon) {
      for (Ion ion : Ion.values()) {
        boolean present =
            totals.mmol(ion) > 0 || (ion == Ion.CARBON && carbon instanceof Carbon.Open);
        if (present) {
          (Species.REACTING.contains(ion) ? reacting : inert).add(ion);
        }
      }
      for (int s = 0; s < Species.TABLE.size(); s++) {
        if (reacting.containsAll(Species.TABLE.get(s).ions())) {
          occurring.add(s);
        }
      }
    }

    private double[][] stoichiometry(int parts) {
      double[][] matrix = new double[occurring.size()][parts];
      for (int s = 0; s < matrix.length; s++) {
        Species species = Species.TABLE.get(occurring.get(s));
        matrix[s][0] = species.protons();
        for (Ion ion : species.ions()) {
          matrix[s][1 + reacting.indexOf(ion)] = 1;
        }
      }
      return matrix;
    }

    /**
     * Balances at fixed activity coefficients, in turn with the ionic strength they depend on; the
     * fixed point is found by secants, with plain steps where a secant leads astray.
     */
    private void iterate() {
      double last = 0;
      double lastChange = 0;
      for (int round = 0; round < MOST_ROUNDS; round++) {
        applyActivities();
        balance.solve();
        double change = strength() - ionicStrength;
        if (Math.abs(change) <= 1e-12 + 1e-10 * ionicStrength) {
          return;
        }
        double slope = (change - lastChange) / (ionicStrength - last);
        double secant = -change / slope;
        boolean astray =
            round == 0 || !(slope < -0.2) || !(ionicStrength + secant > 0) || round > CALM_ROUNDS;
        double step = astray ? (round > CALM_ROUNDS ? change / 3 : change) : secant;
        last = ionicStrength;
        lastChange = change;
        ionicStrength = Math.max(0, ionicStrength + step);
      }
      throw new IllegalStateException("ionic strength does not settle for " + totals);
    }

    private void applyActivities() {
      for (int i = 0; i < partGamma.length; i++) {
        partGamma[i] = activity.lnGamma(partSizes.get(i), partCharge(i), ionicStrength);
        if (fixed[i]) {
          balance.lnFree[i] = given[i] - partGamma[i];
        }
      }
      for (int s = 0; s < occurring.size(); s++) {
        Species species = Species.TABLE.get(occurring.get(s));
        speciesGamma[s] =
            activity.lnGamma(Species.SIZES.get(occurring.get(s)), species.charge(), ionicStrength);
        double ln = lnFormation.get(occurring.get(s)) - speciesGamma[s];
        ln += species.protons() * partGamma[0];
        for (Ion ion : species.ions()) {
          ln += partGamma[1 + reacting.indexOf(ion)];
        }
        balance.lnFormation[s] = ln;
      }
    }

    private String partName(int part) {
      return part == 0 ? SolutionState.PROTON : reacting.get(part - 1).name();
    }

    private int partCharge(int part) {
      return part == 0 ? 1 : reacting.get(part - 1).charge();
    }

    private double strength() {
      double sum = 0;
      for (int s = 0; s < occurring.size(); s++) {
        int z = Species.TABLE.get(occurring.get(s)).charge();
        sum += z * z * balance.amount[s];
      }
      for (int i = 0; i < given.length; i++) {
        int z = partCharge(i);
        sum += z * z * balance.amount[occurring.size() + i];
      }
      for (Ion ion : inert) {
        sum += ion.charge() * ion.charge() * totals.mmol(ion) / 1000;
      }
      return sum / 2;
    }

    SolutionState state() {
      Map<String, SolutionState.Amount> species = new LinkedHashMap<>();
      double protons = 0;
      double carbon = 0;
      for (int s = 0; s < occurring.size(); s++) {
        Species one = Species.TABLE.get(occurring.get(s));
        double mol = balance.amount[s];
        species.put(one.name(), amount(mol, one.charge(), speciesGamma[s]));
        protons += one.protons() * mol;
        carbon += one.ions().contains(Ion.CARBON) ? mol : 0;
      }
      for (int i = 0; i < given.length; i++) {
        double mol = balance.amount[occurring.size() + i];
        species.put(partName(i), amount(mol, partCharge(i), partGamma[i]));
      }
      for (Ion ion : inert) {
        double lnGamma = activity.lnGamma(Activity.size(ion.name()), ion.charge(), ionicStrength);
        species.put(ion.name(), amount(totals.mmol(ion) / 1000, ion.charge(), lnGamma));
      }
      protons += balance.amount[occurring.size()];
      int carbonPart = reacting.indexOf(Ion.CARBON);
      carbon += carbonPart < 0 ? 0 : balance.amount[occurring.size() + 1 + carbonPart];
      return new SolutionState(
          temperatureC,
          -(balance.lnFree[0] + partGamma[0]) / LN10,
          ionicStrength,
          totals.with(Ion.CARBON, 1000 * carbon),
          -1000 * protons,
          species,
          warnings());
    }

    private SolutionState.Amount amount(double mol, int charge, double lnGamma) {
      return new SolutionState.Amount(1000 * mol, charge, Math.log(mol) + lnGamma);
    }

    private List<String> warnings() {
      return ionicStrength <= Activity.GOOD_TO
          ? List.of()
          : List.of(
              "Ionic strength %.2f mol/kg is beyond the 0.5 the activity model is good for: a tank stock, take pH and saturation as rough"
                  .formatted(ionicStrength));
    }
  }
}
