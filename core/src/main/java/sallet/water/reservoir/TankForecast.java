package sallet.water.reservoir;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Level and salt of a reservoir that nobody tops up.
 *
 * @param tank the reservoir
 * @param startL level on the first morning, L
 * @param days one row a day
 */
public record TankForecast(Tank tank, double startL, List<Day> days) {
  /** Standard normal value that 10 % lie beyond. */
  private static final double TEN_PERCENT = 1.2815515655446004;

  /**
   * The evening of a day.
   *
   * @param date the day
   * @param useL water used on this day, median, L
   * @param levelL level, median, L; not below 0
   * @param lowL level that it stays above 9 times in 10, L
   * @param highL level that it stays below 9 times in 10, L
   * @param ecMsCm conductivity at the median level, mS/cm; NaN when nothing is left
   * @param lasts probability that floods are still whole
   */
  public record Day(
      LocalDate date,
      double useL,
      double levelL,
      double lowL,
      double highL,
      double ecMsCm,
      double lasts) {}

  public TankForecast {
    days = List.copyOf(days);
  }

  /**
   * The forecast.
   *
   * @param useL median use of each day, L
   * @param factorLogSd spread of the household's factor
   * @param startMsCm conductivity on the first morning
   * @param drunkMsCm what leaves with a litre of loss, as EC
   */
  public static TankForecast of(
      Tank tank,
      double startL,
      LocalDate from,
      List<Double> useL,
      double factorLogSd,
      double startMsCm,
      double drunkMsCm) {
    List<Day> days = new ArrayList<>();
    double used = 0;
    for (int i = 0; i < useL.size(); i++) {
      used += useL.get(i);
      Demand demand = Demand.of(used, factorLogSd);
      double spread = Math.exp(TEN_PERCENT * demand.logSd());
      double level = Math.max(0, startL - used);
      days.add(
          new Day(
              from.plusDays(i),
              useL.get(i),
              level,
              Math.max(0, startL - used * spread),
              Math.max(0, startL - used / spread),
              level < 0.02 * startL
                  ? Double.NaN
                  : Salinity.after(startMsCm, startL, level, drunkMsCm, 1),
              demand.lasts(tank.usableL(startL))));
    }
    return new TankForecast(tank, startL, days);
  }

  /** Whole days that floods stay whole with a probability; empty when longer than the forecast. */
  public OptionalInt daysLasting(double probability) {
    for (int i = 0; i < days.size(); i++) {
      if (days.get(i).lasts() < probability) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Water used up to the evening of a day, median, L. */
  public double usedL(int day) {
    return days.stream().limit(day + 1L).mapToDouble(Day::useL).sum();
  }
}
