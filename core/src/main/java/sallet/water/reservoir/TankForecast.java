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
   * What is known when the forecast is made.
   *
   * @param tank the reservoir
   * @param startL level on the first morning, L
   * @param startMsCm conductivity then, mS/cm
   * @param factorLogSd spread of the household's factor
   * @param drunkMsCm what leaves with a litre of loss, as EC
   */
  public record Start(
      Tank tank, double startL, double startMsCm, double factorLogSd, double drunkMsCm) {}

  /** The forecast from the median use of each day, L; nobody tops up. */
  public static TankForecast of(Start start, LocalDate from, List<Double> useL) {
    return of(start, from, useL, List.of());
  }

  /**
   * The same when it is filled to the brim with plain water on some mornings, counted from the
   * first.
   */
  public static TankForecast of(
      Start start, LocalDate from, List<Double> useL, List<Integer> filled) {
    List<Day> days = new ArrayList<>();
    Start since = start;
    double used = 0;
    for (int i = 0; i < useL.size(); i++) {
      if (filled.contains(i) && used > 0) {
        since = refilled(since, days.get(i - 1), used);
        used = 0;
      }
      used += useL.get(i);
      days.add(evening(since, from.plusDays(i), useL.get(i), used));
    }
    return new TankForecast(start.tank(), start.startL(), days);
  }

  private static Start refilled(Start s, Day evening, double used) {
    double poured = s.tank().fullL() - Math.max(0, s.startL() - used);
    double left = s.tank().fullL() - poured;
    double msCm = left > 0 ? Salinity.mixed(evening.ecMsCm(), left, 0, poured) : 0;
    return new Start(s.tank(), s.tank().fullL(), msCm, s.factorLogSd(), s.drunkMsCm());
  }

  private static Day evening(Start s, LocalDate date, double useL, double used) {
    Demand demand = Demand.of(used, s.factorLogSd());
    double spread = Math.exp(TEN_PERCENT * demand.logSd());
    double level = Math.max(0, s.startL() - used);
    return new Day(
        date,
        useL,
        level,
        Math.max(0, s.startL() - used * spread),
        Math.max(0, s.startL() - used / spread),
        level < 0.02 * s.startL()
            ? Double.NaN
            : Salinity.after(s.startMsCm(), s.startL(), level, s.drunkMsCm(), 1),
        demand.lasts(s.tank().usableL(s.startL())));
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

  /** The same told from a later day on, as unsure as it is by then. */
  public TankForecast after(int past) {
    return past == 0
        ? this
        : new TankForecast(tank, days.get(past - 1).levelL(), days.subList(past, days.size()));
  }

  /** Water used up to the evening of a day, median, L. */
  public double usedL(int day) {
    return days.stream().limit(day + 1L).mapToDouble(Day::useL).sum();
  }
}
