package sallet.crop;

/**
 * A stand of tomato, one day after the other, after the reduced model of Jones, Kenig and Vallejos
 * (1999) Transactions of the ASAE 42:255-265: nodes, leaf area, dry mass, fruit and ripe fruit per
 * m² of ground. The equations were taken from two public programs that cite the paper; the paper
 * itself was not seen.
 *
 * <p>Its timing is to be trusted; indoors its yields come out optimistic (see {@link TomatoPlan}).
 *
 * <p>Range: 9 to 35 °C, one light level in the lit hours of a day.
 */
public final class ReducedTomato {
  /** rho, plants per m². */
  public static final double PLANTS_PER_M2 = 3.1;

  /** E, dry mass gained by carbohydrate. */
  private static final double YIELD = 0.717;

  /** D, from µmol CO2/m²/s to g CH2O/m²/d. */
  private static final double GRAMS_PER_DAY = 2.593;

  /** tau, uptake of carbon dioxide by leaf, by ppm. */
  private static final double LEAF_UPTAKE = 0.0693;

  /** K, m and Q_e: extinction of light, share let through by leaf, light use efficiency. */
  private static final double EXTINCTION = 0.58;

  private static final double TRANSMISSION = 0.1;
  private static final double EFFICIENCY = 0.0645;

  /** N_m, largest number of nodes that appear in a day. */
  private static final double NODES_PER_DAY = 0.5;

  /** Leaf area index that is not exceeded: old leaves go as new ones come. */
  private static final double LARGEST_LEAF_INDEX = 4;

  /** N_FF, nodes at which the first fruit sets, and kappa_F, further nodes until it is ripe. */
  private static final double FIRST_FRUIT_NODES = 22;

  private static final double RIPENING_NODES = 5;

  private static final double[] NODE_C = {0, 9, 12, 28, 50};
  private static final double[] NODE_RATE = {0, 0, 0.55, 1, 0};
  private static final double[] LEAF_C = {0, 9, 12, 28, 35, 50};
  private static final double[] LEAF_RATE = {0, 0.67, 1, 1, 0, 0};
  private static final double[] ROOT_NODES = {1, 9, 12, 15, 21, 30};
  private static final double[] ROOT_SHARE = {0.2, 0.2, 0.15, 0.15, 0.10, 0.07};

  private ReducedTomato() {}

  /**
   * A day's surroundings.
   *
   * @param ppfdUmol light in the lit hours, µmol/m²/s
   * @param litHours hours with light, whole, 0 to 24
   * @param dayC temperature in the lit hours, °C
   * @param nightC temperature in the dark, °C
   * @param co2Ppm carbon dioxide, ppm
   */
  public record Day(double ppfdUmol, int litHours, double dayC, double nightC, double co2Ppm) {
    public Day {
      if (litHours < 0 || litHours > 24) {
        throw new IllegalArgumentException("a day has 0 to 24 lit hours, had " + litHours);
      }
    }

    /** Mean temperature of the 24 hours, °C. */
    public double meanC() {
      return (litHours * dayC + (24 - litHours) * nightC) / 24;
    }
  }

  /**
   * The stand at the end of a day; grams are dry, per m² of ground.
   *
   * @param nodes nodes on the main stem
   * @param leafIndex leaf area by ground area
   * @param dryGM2 dry mass above ground, g/m²
   * @param fruitGM2 of it fruit, ripe or not, g/m²
   * @param ripeGM2 of it ripe fruit, g/m²
   */
  public record Stand(
      double nodes, double leafIndex, double dryGM2, double fruitGM2, double ripeGM2) {
    /** A transplant of six nodes. */
    public static final Stand TRANSPLANT = new Stand(6, 0.006, 0.28, 0, 0);
  }

  /** The stand one day later. */
  public static Stand step(Stand s, Day day) {
    double nodes = NODES_PER_DAY * daily(day, NODE_C, NODE_RATE);
    double spare = YIELD * (gross(s, day) - upkeep(s, day));
    double grown = Math.max(0, spare * (1 - between(s.nodes(), ROOT_NODES, ROOT_SHARE)));
    double fruit = s.nodes() > FIRST_FRUIT_NODES ? grown * fruitShare(s, day) : 0;
    double ripe =
        s.nodes() > FIRST_FRUIT_NODES + RIPENING_NODES
            ? ripening(day.meanC()) * (s.fruitGM2() - s.ripeGM2())
            : 0;
    boolean open = s.leafIndex() < LARGEST_LEAF_INDEX;
    double leavesGone = open ? 0 : 2;
    double added =
        Math.min(
            grown - leavesGone * PLANTS_PER_M2 * nodes,
            fruit + (8 - leavesGone) * PLANTS_PER_M2 * nodes);
    return new Stand(
        s.nodes() + nodes,
        open
            ? Math.min(LARGEST_LEAF_INDEX, s.leafIndex() + leafAdded(s.nodes(), nodes))
            : s.leafIndex(),
        s.dryGM2() + added,
        s.fruitGM2() + fruit,
        s.ripeGM2() + ripe);
  }

  /** P_g, carbohydrate assimilated in a day, g CH2O/m². */
  static double gross(Stand s, Day day) {
    double uptake = LEAF_UPTAKE * day.co2Ppm();
    double lit = EFFICIENCY * EXTINCTION * day.ppfdUmol();
    double full = (1 - TRANSMISSION) * uptake;
    double layers = Math.log((full + lit) / (full + lit * Math.exp(-EXTINCTION * s.leafIndex())));
    return day.litHours()
        * GRAMS_PER_DAY
        / 24
        * uptake
        * between(day.dayC(), LEAF_C, LEAF_RATE)
        / EXTINCTION
        * layers;
  }

  /** R_m, upkeep of all that is not ripe fruit, g CH2O/m². */
  static double upkeep(Stand s, Day day) {
    double warmth =
        day.litHours() * Math.pow(1.4, (day.dayC() - 20) / 10)
            + (24 - day.litHours()) * Math.pow(1.4, (day.nightC() - 20) / 10);
    return (s.dryGM2() - s.ripeGM2()) * warmth * 0.016 / 24;
  }

  private static double leafAdded(double nodes, double added) {
    double x = Math.exp(0.169 * (nodes - 16));
    return PLANTS_PER_M2 * 0.038 * x / (1 + x) * added;
  }

  /** Share of growth that goes to fruit: more with age and warmth, less on hot days. */
  private static double fruitShare(Stand s, Day day) {
    double warm = clip(0.0625 * (day.meanC() - 8.5), 0, 1);
    double hot = clip(1 - 0.154 * (day.dayC() - 24.4), 0.09, 1);
    return 0.8 * warm * -Math.expm1(-0.135 * (s.nodes() - FIRST_FRUIT_NODES)) * hot;
  }

  /** Share of green fruit that ripens in a day. */
  private static double ripening(double meanC) {
    return meanC < 9 ? 0 : meanC > 28 ? 0.032 : 0.0017 * meanC - 0.015;
  }

  private static double daily(Day day, double[] at, double[] values) {
    return (day.litHours() * between(day.dayC(), at, values)
            + (24 - day.litHours()) * between(day.nightC(), at, values))
        / 24;
  }

  /** Straight lines between points, level beyond them. */
  private static double between(double x, double[] at, double[] values) {
    if (x <= at[0]) {
      return values[0];
    }
    for (int i = 1; i < at.length; i++) {
      if (x <= at[i]) {
        return values[i - 1] + (values[i] - values[i - 1]) * (x - at[i - 1]) / (at[i] - at[i - 1]);
      }
    }
    return values[values.length - 1];
  }

  private static double clip(double x, double low, double high) {
    return Math.min(high, Math.max(low, x));
  }
}
