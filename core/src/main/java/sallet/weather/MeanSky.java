package sallet.weather;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
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

  private MeanSky() {}

  /**
   * The lit moments of a day, four an hour, each standing for its quarter of an hour.
   *
   * @param clock the standard time the day is counted in
   */
  public static List<SkyMoment> of(Place place, Climate climate, LocalDate day, ZoneOffset clock) {
    double latitude = place.latitudeDeg();
    double sunset = DailyRadiation.sunsetAngleRad(latitude, day.getDayOfYear());
    double outside = DailyRadiation.outsideAirMegaJoules(latitude, day.getDayOfYear());
    if (sunset == 0 || outside <= 0) {
      return List.of();
    }
    double dayJoules = 1e6 * climate.globalMegaJoules(day);
    double diffuseShare =
        DiffuseFraction.erbsMonthly(dayJoules / 1e6 / outside, Math.toDegrees(sunset));
    List<Moment> moments = moments(place, day, clock, sunset);
    double globalSum = moments.stream().mapToDouble(Moment::globalShape).sum();
    double diffuseSum = moments.stream().mapToDouble(Moment::diffuseShape).sum();
    double normal = Sun.normalWm2(day.getDayOfYear());
    double meanWm2 = dayJoules * MOMENTS_PER_HOUR / 3600;
    List<SkyMoment> sky = new ArrayList<>();
    for (Moment m : moments) {
      double global = meanWm2 * m.globalShape / globalSum;
      double diffuse = Math.min(global, meanWm2 * diffuseShare * m.diffuseShape / diffuseSum);
      sky.add(split(m, global, diffuse, normal));
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

  private static SkyMoment split(
      Moment moment, double globalWm2, double diffuseWm2, double outsideNormalWm2) {
    double sine = moment.sun.sinAltitude();
    double beam =
        sine > LOWEST_SINE ? Math.min(outsideNormalWm2, (globalWm2 - diffuseWm2) / sine) : 0;
    return new SkyMoment(
        moment.hour,
        moment.sun,
        globalWm2,
        globalWm2 - beam * Math.max(0, sine),
        beam,
        outsideNormalWm2);
  }
}
