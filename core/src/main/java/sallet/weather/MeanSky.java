package sallet.weather;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import sallet.household.Place;

/**
 * The course of sun and sky through a mean day of a climate.
 *
 * <p>The day's light is split into sun and sky (Erbs, monthly form), both are spread over the day
 * (Collares-Pereira and Rabl; Liu and Jordan) and scaled so that the sum over the day is kept; the
 * sky's part never exceeds the whole.
 */
public final class MeanSky {
  /** Moments reckoned in an hour: a patch of sun crosses a pot within the hour. */
  public static final int MOMENTS_PER_HOUR = 4;

  /** Sine of the altitude below which the sun's beam is counted with the sky: 1.7 degrees. */
  private static final double LOWEST_SINE = 0.03;

  /** Most light of a dull sky, against a clear one with its sun. Judgement, after Erbs' split. */
  private static final double BRIGHTEST_DULL_SHARE = 0.5;

  private MeanSky() {}

  /**
   * The lit moments of a day: for each quarter of an hour a sunny and a dull one, sharing its time.
   *
   * @param clock the standard time the day is counted in
   */
  public static List<SkyMoment> of(Place place, Climate climate, LocalDate day, ZoneOffset clock) {
    return of(place, day, clock, climate.globalMegaJoules(day), DiffuseFraction::erbsMonthly);
  }

  /**
   * The same for one day whose light is known.
   *
   * @param split share of sky light by clearness and sunset angle in degrees
   */
  static List<SkyMoment> of(
      Place place, LocalDate day, ZoneOffset clock, double megaJoules, DoubleBinaryOperator split) {
    double latitude = place.latitudeDeg();
    double sunset = DailyRadiation.sunsetAngleRad(latitude, day.getDayOfYear());
    double outside = DailyRadiation.outsideAirMegaJoules(latitude, day.getDayOfYear());
    if (sunset == 0 || outside <= 0) {
      return List.of();
    }
    double diffuseShare = split.applyAsDouble(megaJoules / outside, Math.toDegrees(sunset));
    List<Moment> moments = moments(place, day, clock, sunset);
    double globalSum = moments.stream().mapToDouble(Moment::globalShape).sum();
    double diffuseSum = moments.stream().mapToDouble(Moment::diffuseShape).sum();
    double normal = Sun.normalWm2(day.getDayOfYear());
    double meanWm2 = 1e6 * megaJoules * MOMENTS_PER_HOUR / 3600;
    List<SkyMoment> sky = new ArrayList<>();
    for (Moment m : moments) {
      double global = meanWm2 * m.globalShape / globalSum;
      double diffuse = Math.min(global, meanWm2 * diffuseShare * m.diffuseShape / diffuseSum);
      sky.addAll(sunnyAndDull(m, global, diffuse, normal, place.elevationM()));
    }
    return sky;
  }

  private record Moment(double hour, SunPosition sun, double globalShape, double diffuseShape) {}

  private static List<Moment> moments(
      Place place, LocalDate day, ZoneOffset clock, double sunsetAngleRad) {
    DaySpans up = Sun.up(place, day, clock);
    long midnight = day.atStartOfDay().toEpochSecond(clock);
    List<Moment> moments = new ArrayList<>();
    for (int q = 0; q < 24 * MOMENTS_PER_HOUR; q++) {
      double hour = (q + 0.5) / MOMENTS_PER_HOUR;
      if (up.contains(hour)) {
        SunPosition sun = Sun.at(Instant.ofEpochSecond(midnight + Math.round(hour * 3600)), place);
        double angle = sun.hourAngleRad(place.latitudeDeg());
        double global = HourShape.global(angle, sunsetAngleRad);
        if (global > 0) {
          moments.add(new Moment(hour, sun, global, HourShape.diffuse(angle, sunsetAngleRad)));
        }
      }
    }
    return moments;
  }

  /**
   * A mean sky never stands over a house: it is sunny for a part of the time and dull for the rest.
   * The sunny part is the mean beam over that of a clear sky; the dull sky has what the clear one
   * leaves of the mean diffuse light. Sums of sun and sky are kept.
   */
  private static List<SkyMoment> sunnyAndDull(
      Moment moment, double globalWm2, double diffuseWm2, double outsideWm2, double elevationM) {
    double lasts = 1.0 / MOMENTS_PER_HOUR;
    double sine = moment.sun.sinAltitude();
    if (sine <= LOWEST_SINE || globalWm2 <= diffuseWm2) {
      return List.of(dull(moment, lasts, globalWm2, outsideWm2));
    }
    ClearSky clear = ClearSky.of(moment.sun, outsideWm2, elevationM);
    double meanBeam = (globalWm2 - diffuseWm2) / sine;
    double sunny = Math.min(1, meanBeam / clear.beamWm2());
    double brightest = Math.max(diffuseWm2, BRIGHTEST_DULL_SHARE * clear.globalWm2());
    double left = diffuseWm2 - sunny * Math.min(diffuseWm2, clear.diffuseWm2());
    double dullWm2 = sunny < 1 ? Math.min(brightest, left / (1 - sunny)) : 0;
    double clearWm2 = (diffuseWm2 - (1 - sunny) * dullWm2) / sunny;
    double beam = Math.min(outsideWm2, meanBeam / sunny);
    return List.of(
        new SkyMoment(
            moment.hour,
            lasts * sunny,
            moment.sun,
            clearWm2 + beam * sine,
            clearWm2,
            beam,
            outsideWm2),
        dull(moment, lasts * (1 - sunny), dullWm2, outsideWm2));
  }

  private static SkyMoment dull(Moment moment, double lastsHours, double wm2, double outsideWm2) {
    return new SkyMoment(moment.hour, lastsHours, moment.sun, wm2, wm2, 0, outsideWm2);
  }
}
