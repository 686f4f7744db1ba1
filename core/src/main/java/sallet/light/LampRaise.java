package sallet.light;

import java.util.ArrayList;
import java.util.List;
import sallet.household.Household;
import sallet.household.Lamp;

/**
 * A day on which the lamps must go up because the leaves have come too near.
 *
 * @param day days after the plants came to the bench
 * @param leavesM height of the leaves above the pots then, m
 * @param toAboveBenchM new height of the shining face above the tray surface, m
 */
public record LampRaise(int day, double leavesM, double toAboveBenchM) {
  /** How much a lamp goes up at a time, m. Common practice. */
  private static final double STEP_M = 0.05;

  /**
   * How leaves rise on the bench: evenly from the first to the last day. Judgement for loose-leaf
   * crops: 3 cm to 18 cm in 35 days.
   *
   * @param startM above the pots' rims on the first day, m
   * @param endM on the last day, m
   * @param days between them
   */
  public record Canopy(double startM, double endM, int days) {
    public static final Canopy LOOSE_LEAF = new Canopy(0.03, 0.18, 35);

    double onDay(int day) {
      return startM + (endM - startM) * Math.min(day, days) / days;
    }
  }

  /**
   * Nearest the leaves of a household may come to its lamps, m: half the shorter side of the widest
   * one (common practice) and far enough that no leaf gets more than a limit.
   */
  public static double leastDistanceM(Household household, double mostUmol) {
    double half =
        household.lamps().stream()
            .mapToDouble(lamp -> Math.min(lamp.lengthM(), lamp.widthM()) / 2)
            .max()
            .orElse(0);
    double pots = household.bench().canopyHeightM() - household.bench().heightM();
    double far =
        LampHeight.falling(
            distance -> LampHeight.at(household, pots + distance).brightestUmol(),
            mostUmol,
            0.01,
            5);
    return Math.max(Math.max(half, far), LampHeight.LEAST_CLEARANCE_M);
  }

  /**
   * When and how far the lamps go up while one batch grows. Lamps that hang high enough stay.
   *
   * @param mostUmol most light on any leaf, µmol/m²/s
   */
  public static List<LampRaise> of(Household household, Canopy canopy, double mostUmol) {
    List<LampRaise> raises = new ArrayList<>();
    if (household.lamps().isEmpty()) {
      return raises;
    }
    double height =
        household.lamps().stream().mapToDouble(Lamp::heightAboveBenchM).min().orElseThrow();
    double least = leastDistanceM(household, mostUmol);
    for (int day = 0; day <= canopy.days(); day++) {
      double leaves = canopy.onDay(day);
      double top = household.bench().potHeightM() + leaves;
      if (height - top < least - 1e-9) {
        double steps = Math.ceil((top + least - height) / STEP_M - 1e-9);
        height += STEP_M * steps;
        raises.add(new LampRaise(day, leaves, height));
      }
    }
    return raises;
  }
}
