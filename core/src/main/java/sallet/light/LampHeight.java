package sallet.light;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import sallet.household.Household;
import sallet.household.Lamp;

/**
 * How high the lamps hang for a wanted light.
 *
 * @param aboveBenchM shining face above the tray surface, m
 * @param clearanceM shining face above the leaves, m
 * @param map light over the pots, all lamps on
 * @param utilisation share of the lamps' photons that fall on the tray, straight or thrown back
 * @param brightestUmol light at the leaves straight below a lamp's middle, µmol/m²/s
 */
public record LampHeight(
    double aboveBenchM, double clearanceM, Evenness map, double utilisation, double brightestUmol) {
  /** A lamp is not hung nearer to the leaves than this, m. Judgement. */
  static final double LEAST_CLEARANCE_M = 0.1;

  private static final double EXACT_M = 1e-5;

  /**
   * The height of all lamps together at which the pots' mean light is as wanted; empty when the
   * lamps are too weak even at the leaves or too strong even under the ceiling.
   *
   * @param meanUmol wanted mean over the pots while the lamps are on, µmol/m²/s
   */
  public static Optional<LampHeight> forMean(Household household, double meanUmol) {
    double leaves = household.bench().canopyHeightM() - household.bench().heightM();
    double lowest = leaves + LEAST_CLEARANCE_M;
    double highest = household.room().heightM() - household.bench().heightM();
    if (household.lamps().isEmpty() || highest <= lowest) {
      return Optional.empty();
    }
    DoubleUnaryOperator mean = height -> at(household, height).map.meanUmol();
    if (mean.applyAsDouble(lowest) < meanUmol || mean.applyAsDouble(highest) > meanUmol) {
      return Optional.empty();
    }
    return Optional.of(at(household, falling(mean, meanUmol, lowest, highest)));
  }

  /** The light with all lamps at a height above the tray surface. */
  public static LampHeight at(Household household, double aboveBenchM) {
    List<Lamp> lamps = household.lamps().stream().map(lamp -> lamp.atHeight(aboveBenchM)).toList();
    RoomLamps lights = new RoomLamps(household.room(), household.bench(), lamps);
    Evenness map =
        Evenness.of(Spot.ofPots(household.bench()).stream().map(lights::ppfdUmol).toList());
    double leaves = household.bench().canopyHeightM();
    double brightest =
        lamps.stream()
            .mapToDouble(lamp -> lights.ppfdUmol(new Spot(lamp.xM(), lamp.yM(), leaves)))
            .max()
            .orElse(0);
    double photons = lamps.stream().mapToDouble(Lamp::ppfUmolPerS).sum();
    double trayM2 = household.bench().widthM() * household.bench().depthM();
    return new LampHeight(
        aboveBenchM,
        aboveBenchM + household.bench().heightM() - leaves,
        map,
        photons == 0 ? 0 : map.utilisation(trayM2, photons),
        brightest);
  }

  /** Where a falling function has a value, by halving. */
  static double falling(DoubleUnaryOperator f, double value, double low, double high) {
    double a = low;
    double b = high;
    while (b - a > EXACT_M) {
      double middle = (a + b) / 2;
      if (f.applyAsDouble(middle) > value) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return (a + b) / 2;
  }
}
