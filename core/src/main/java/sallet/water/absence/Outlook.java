package sallet.water.absence;

import java.util.List;
import sallet.water.flood.FloodSchedule;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.TankForecast;

/**
 * What becomes of a bench that is left alone.
 *
 * @param demand water it will use
 * @param usableL water there is for it, L
 * @param lasts probability that this is enough
 * @param returnMsCm conductivity on return, median, mS/cm; NaN when the reservoir runs out
 * @param returnHighMsCm the same when 95 % of the demands are lower; NaN when it then runs out
 * @param atRisk pots that wilt when one flood is missed
 * @param mostFragileHours time from a flood to wilting of the pot that wilts first, h
 * @param schedule floods on the days away
 * @param tank level and salt from day to day
 */
public record Outlook(
    Demand demand,
    double usableL,
    double lasts,
    double returnMsCm,
    double returnHighMsCm,
    List<String> atRisk,
    double mostFragileHours,
    FloodSchedule schedule,
    TankForecast tank) {
  /** Probability from which "safe" is said. */
  public static final double SAFE = 0.95;

  public Outlook {
    atRisk = List.copyOf(atRisk);
  }

  /** Whether the water lasts, at least 95 times in a hundred. */
  public boolean waterSafe() {
    return lasts >= SAFE;
  }

  /** Whether the salt stays below a limit. */
  public boolean saltSafe(double highestMsCm) {
    return Math.max(returnMsCm, returnHighMsCm) <= highestMsCm;
  }

  /** Whether it may be called safe: water, salt, and every pot outlives a missed flood. */
  public boolean safe(double highestMsCm) {
    return waterSafe() && saltSafe(highestMsCm) && atRisk.isEmpty();
  }

  /** Water missing for 95 times in a hundred, L; 0 when there is enough. */
  public double missingL() {
    return Math.max(0, demand.litresFor(SAFE) - usableL);
  }

  /** The same with water that is brought or connected, and what comes of it. */
  Outlook supplied(
      double moreL, double probability, double msCm, double highMsCm, TankForecast levels) {
    return new Outlook(
        demand,
        usableL + moreL,
        probability,
        msCm,
        highMsCm,
        atRisk,
        mostFragileHours,
        schedule,
        levels);
  }
}
