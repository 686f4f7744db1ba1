package sallet.weather;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Every day of the year from twelve monthly means.
 *
 * <p>The clearness (light on the ground over light outside the air) runs straight from the middle
 * of one month to the middle of the next; its twelve values are set so that each month's mean light
 * comes out as given, as far as the bounds of clearness allow. The light of a day is its clearness
 * times what reaches the top of the air over this latitude on that very day.
 */
public final class MonthlyClimate implements Climate {
  /** A year without a leap day, for the means. */
  private static final int YEAR = 2023;

  /** Mean length of the months, days. */
  private static final double[] MONTH_DAYS = {31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  /** Light outside the air below which a month is dark and has no clearness, MJ/m²/d. Judgement. */
  private static final double DARK_MEGA_JOULES = 0.1;

  /** Bounds of a month's mean clearness; measured monthly means lie within. Judgement. */
  static final double DULLEST = 0.1;

  static final double CLEAREST = 0.85;

  private final double latitudeDeg;
  private final double[] clearness;

  private MonthlyClimate(double latitudeDeg, double[] monthClearness) {
    this.latitudeDeg = latitudeDeg;
    this.clearness = filled(monthClearness);
    keepMonthlyMeans();
  }

  /**
   * From mean daily global irradiation on the flat.
   *
   * @param megaJoules of each month, MJ per m² and day
   */
  public static MonthlyClimate ofIrradiation(double latitudeDeg, List<Double> megaJoules) {
    return new MonthlyClimate(latitudeDeg, irradiationClearness(latitudeDeg, megaJoules));
  }

  /**
   * From hours of bright sunshine, by Ångström's equation. The share of the day length that is
   * sunny is carried from the place of measurement to the latitude wanted.
   *
   * @param latitudeDeg the latitude wanted
   * @param measuredLatitudeDeg where the hours were measured
   * @param sunshineHours of each whole month
   */
  public static MonthlyClimate ofSunshine(
      double latitudeDeg, double measuredLatitudeDeg, List<Double> sunshineHours) {
    return new MonthlyClimate(
        latitudeDeg, sunshineClearness(latitudeDeg, measuredLatitudeDeg, sunshineHours));
  }

  /**
   * From sunshine measured elsewhere, with some months known at the place itself.
   *
   * @param own hours of bright sunshine at the latitude wanted, for some months
   */
  public static MonthlyClimate ofSunshine(
      double latitudeDeg,
      double measuredLatitudeDeg,
      List<Double> sunshineHours,
      Map<Month, Double> own) {
    double[] clearness = sunshineClearness(latitudeDeg, measuredLatitudeDeg, sunshineHours);
    List<Double> all =
        IntStream.range(0, 12).mapToObj(m -> own.getOrDefault(Month.of(m + 1), 0.0)).toList();
    double[] better = sunshineClearness(latitudeDeg, latitudeDeg, all);
    own.keySet().forEach(m -> clearness[m.getValue() - 1] = better[m.getValue() - 1]);
    return new MonthlyClimate(latitudeDeg, clearness);
  }

  /**
   * From one share of the light above the air all year.
   *
   * @param clearness 0.1 to 0.85; the nearer end is taken outside
   */
  public static MonthlyClimate ofClearness(double latitudeDeg, double clearness) {
    double[] months = new double[12];
    for (int m = 0; m < 12; m++) {
      months[m] = isDark(latitudeDeg, m) ? Double.NaN : clearness;
    }
    return new MonthlyClimate(latitudeDeg, months);
  }

  private static double[] sunshineClearness(
      double latitudeDeg, double measuredLatitudeDeg, List<Double> sunshineHours) {
    double[] clearness = new double[12];
    for (int m = 0; m < 12; m++) {
      double dayLength =
          meanOfMonth(m, day -> DailyRadiation.dayLengthHours(measuredLatitudeDeg, day));
      clearness[m] =
          isDark(latitudeDeg, m) || isDark(measuredLatitudeDeg, m)
              ? Double.NaN
              : DailyRadiation.clearnessFromSunshine(
                  sunshineHours.get(m) / MONTH_DAYS[m] / dayLength);
    }
    return clearness;
  }

  /** Clearness of each month as the irradiation has it, unbounded; NaN in dark months. */
  static double[] irradiationClearness(double latitudeDeg, List<Double> megaJoules) {
    double[] clearness = new double[12];
    for (int m = 0; m < 12; m++) {
      clearness[m] =
          isDark(latitudeDeg, m) ? Double.NaN : megaJoules.get(m) / meanOutsideAir(latitudeDeg, m);
    }
    return clearness;
  }

  @Override
  public double globalMegaJoules(LocalDate day) {
    return clearness(day) * DailyRadiation.outsideAirMegaJoules(latitudeDeg, day.getDayOfYear());
  }

  /** Light on the ground over light outside the air on a day. */
  double clearness(LocalDate day) {
    int month = day.getMonthValue() - 1;
    double middle = middle(YearMonth.from(day));
    double past = day.getDayOfMonth() - middle;
    int other = Math.floorMod(past < 0 ? month - 1 : month + 1, 12);
    YearMonth neighbour = YearMonth.from(day).plusMonths(past < 0 ? -1 : 1);
    double gap = (day.lengthOfMonth() + neighbour.lengthOfMonth()) / 2.0;
    double weight = Math.abs(past) / gap;
    return (1 - weight) * clearness[month] + weight * clearness[other];
  }

  private static double middle(YearMonth month) {
    return (month.lengthOfMonth() + 1) / 2.0;
  }

  /** Bounded values, with the dark months set between their neighbours. */
  private static double[] filled(double[] given) {
    double[] filled = new double[12];
    for (int m = 0; m < 12; m++) {
      filled[m] =
          Double.isNaN(given[m])
              ? (nextKnown(given, m, -1) + nextKnown(given, m, 1)) / 2
              : given[m];
      filled[m] = bounded(filled[m]);
    }
    return filled;
  }

  private static double bounded(double clearness) {
    return Math.max(DULLEST, Math.min(CLEAREST, clearness));
  }

  private static double nextKnown(double[] values, int from, int step) {
    return IntStream.rangeClosed(1, 12)
        .map(i -> Math.floorMod(from + i * step, 12))
        .mapToDouble(i -> values[i])
        .filter(v -> !Double.isNaN(v))
        .findFirst()
        .orElse(DULLEST);
  }

  /** Shifts the mid-month values until the monthly means are those of the values given. */
  private void keepMonthlyMeans() {
    double[] target = clearness.clone();
    for (int round = 0; round < 10; round++) {
      for (int m = 0; m < 12; m++) {
        double outside = meanOutsideAir(latitudeDeg, m);
        if (outside > DARK_MEGA_JOULES) {
          double mean = meanOfMonth(m, day -> globalMegaJoules(LocalDate.ofYearDay(YEAR, day)));
          clearness[m] = bounded(clearness[m] * target[m] * outside / mean);
        }
      }
    }
  }

  private static boolean isDark(double latitudeDeg, int month) {
    return meanOutsideAir(latitudeDeg, month) <= DARK_MEGA_JOULES;
  }

  private static double meanOutsideAir(double latitudeDeg, int month) {
    return meanOfMonth(month, day -> DailyRadiation.outsideAirMegaJoules(latitudeDeg, day));
  }

  private static double meanOfMonth(int month, IntToDoubleFunction ofDay) {
    YearMonth yearMonth = YearMonth.of(YEAR, month + 1);
    int first = yearMonth.atDay(1).getDayOfYear();
    return IntStream.range(first, first + yearMonth.lengthOfMonth())
        .mapToDouble(ofDay)
        .average()
        .orElseThrow();
  }
}
