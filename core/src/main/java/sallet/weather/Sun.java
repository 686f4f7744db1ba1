package sallet.weather;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;
import sallet.household.Place;

/** The sun's place in the sky, its rising and setting, and its strength outside the air. */
public final class Sun {
  /**
   * Terrestrial less universal time, s: about 69 in the 2020s (common practice; a second moves the
   * sun by 0.0001 degrees).
   */
  static final double DELTA_T_S = 69;

  /**
   * Air temperature taken for refraction, °C. Judgement; 10 °C change it by 0.02 degrees at most.
   */
  private static final double AIR_C = 10;

  /** Mean strength outside the air, W/m². Source: the constant that goes with the series below. */
  private static final double SOLAR_CONSTANT_WM2 = 1366.1;

  static final double SEA_LEVEL_HPA = 1013.25;

  private Sun() {}

  /**
   * Apparent position by the fast algorithm of Grena (2012), number 3: within 0.01 degrees from
   * 2010 to 2110.
   */
  public static SunPosition at(Instant when, Place place) {
    SolarPosition sun =
        Grena3.calculateSolarPosition(
            when.atZone(ZoneOffset.UTC),
            place.latitudeDeg(),
            place.longitudeDeg(),
            DELTA_T_S,
            pressureHPa(place.elevationM()),
            AIR_C);
    return new SunPosition(90 - sun.zenithAngle(), sun.azimuth());
  }

  /**
   * Apparent position by the algorithm of Reda and Andreas (2008): within 0.0003 degrees from -2000
   * to 6000.
   */
  public static SunPosition precisely(
      Instant when, Place place, double deltaTS, double pressureHPa, double airC) {
    SolarPosition sun =
        SPA.calculateSolarPosition(
            when.atZone(ZoneOffset.UTC),
            place.latitudeDeg(),
            place.longitudeDeg(),
            place.elevationM(),
            deltaTS,
            pressureHPa,
            airC);
    return new SunPosition(90 - sun.zenithAngle(), sun.azimuth());
  }

  /**
   * The stretches of a day with the sun's upper edge above the level horizon. A stretch that runs
   * past midnight (light nights, or a clock far from the sun's) is put at both ends of the same
   * day: the rise of the next day is at nearly the same time.
   *
   * @param clock the standard time the day is counted in
   */
  public static DaySpans up(Place place, LocalDate day, ZoneOffset clock) {
    SunriseResult events = riseAndSet(place, day, clock);
    if (events instanceof SunriseResult.RegularDay regular) {
      double rise = hourOf(regular.sunrise());
      double hours = hourOf(regular.sunset()) - rise;
      return DaySpans.daily(rise, hours < 0 ? hours + 24 : hours);
    }
    return events instanceof SunriseResult.AllDay ? DaySpans.ALL_DAY : DaySpans.NONE;
  }

  /** Rise, transit and set by the algorithm of Reda and Andreas (2008). */
  static SunriseResult riseAndSet(Place place, LocalDate day, ZoneOffset clock) {
    return SPA.calculateSunriseTransitSet(
        day.atTime(12, 0).atZone(clock), place.latitudeDeg(), place.longitudeDeg(), DELTA_T_S);
  }

  /**
   * Strength on a plane facing the sun outside the air, W/m². Source: Spencer 1971, the Earth's
   * distance as a Fourier series.
   */
  public static double normalWm2(int dayOfYear) {
    double b = 2 * Math.PI * (dayOfYear - 1) / 365;
    return SOLAR_CONSTANT_WM2
        * (1.00011
            + 0.034221 * Math.cos(b)
            + 0.00128 * Math.sin(b)
            + 0.000719 * Math.cos(2 * b)
            + 0.000077 * Math.sin(2 * b));
  }

  /** Mean air pressure at an elevation, hPa. Source: ISO 2533 standard atmosphere, below 11 km. */
  static double pressureHPa(double elevationM) {
    return SEA_LEVEL_HPA * Math.pow(1 - 2.25577e-5 * elevationM, 5.25588);
  }

  private static double hourOf(ZonedDateTime time) {
    return time.toLocalTime().toNanoOfDay() / 3.6e12;
  }
}
