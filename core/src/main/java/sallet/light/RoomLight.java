package sallet.light;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Nursery;
import sallet.household.Place;
import sallet.household.Pot;
import sallet.weather.Climate;
import sallet.weather.DaySpans;
import sallet.weather.MeanSky;
import sallet.weather.PlaceClimate;
import sallet.weather.SkyMoment;
import sallet.weather.Sun;

/** Light in a household's room. */
public final class RoomLight {
  /**
   * Photons from 400 to 700 nm per joule of daylight, µmol/J. Source: 2.04 to 2.06 by Meek and
   * others 1984, 2.018 by Faust and Logan 2018; good to 5 %, for sun and sky alike.
   */
  static final double UMOL_PER_J = 2.04;

  private RoomLight() {}

  /**
   * Light at every pot of the bench, in the order of the household's pots, at the height of a
   * half-grown canopy.
   *
   * @param from first day
   * @param days number of days, 0 or more
   * @throws IllegalArgumentException when the place names an unknown city or the lamp hangs too low
   */
  public static HourlyLight atPots(Household household, LocalDate from, int days) {
    List<Pot> pots = household.bench().pots();
    double[][] daylight = new double[pots.size()][days * 24];
    double[] photoperiod = new double[days];
    DaySpans lampOn = LampLight.on(household);
    if (household.room().windows().isEmpty()) {
      Arrays.fill(photoperiod, lampOn.hours());
    } else {
      fillDaylight(household, from, daylight);
      Place place = household.place();
      ZoneOffset clock = standardTime(place, from);
      for (int day = 0; day < days; day++) {
        photoperiod[day] = Sun.up(place, from.plusDays(day), clock).or(lampOn).hours();
      }
    }
    double[][] lamp = new double[pots.size()][];
    for (int i = 0; i < lamp.length; i++) {
      Pot pot = pots.get(i);
      double ppfd =
          household.lamp().map(l -> LampLight.ppfdUmol(l, household.bench(), pot)).orElse(0.0);
      lamp[i] = everyDay(ppfd, lampOn, days);
    }
    return new HourlyLight(from, daylight, lamp, photoperiod);
  }

  /** Light on the nursery shelf, one place: its own light, no daylight. */
  public static HourlyLight inNursery(Household household, LocalDate from, int days) {
    Nursery nursery = household.nursery();
    DaySpans on =
        nursery.ppfdUmol() > 0
            ? DaySpans.daily(nursery.on().toNanoOfDay() / 3.6e12, nursery.hours())
            : DaySpans.NONE;
    double[] photoperiod = new double[days];
    Arrays.fill(photoperiod, on.hours());
    return new HourlyLight(
        from,
        new double[1][days * 24],
        new double[][] {everyDay(nursery.ppfdUmol(), on, days)},
        photoperiod);
  }

  /** The time zone's standard time, without summer time, in which hours are counted. */
  static ZoneOffset standardTime(Place place, LocalDate day) {
    return place
        .timeZone()
        .getRules()
        .getStandardOffset(day.atStartOfDay(ZoneOffset.UTC).toInstant());
  }

  private static void fillDaylight(Household household, LocalDate from, double[][] daylightUmol) {
    Place place = household.place();
    Climate climate = PlaceClimate.of(place).climate();
    ZoneOffset clock = standardTime(place, from);
    RoomDaylight room = new RoomDaylight(household.room(), canopies(household.bench()));
    int days = daylightUmol[0].length / 24;
    for (int day = 0; day < days; day++) {
      for (SkyMoment moment : MeanSky.of(place, climate, from.plusDays(day), clock)) {
        double[] wm2 = room.atWm2(moment);
        int hour = day * 24 + (int) moment.hour();
        for (int i = 0; i < wm2.length; i++) {
          daylightUmol[i][hour] += wm2[i] * UMOL_PER_J * moment.lastsHours();
        }
      }
    }
  }

  private static List<RoomDaylight.Point> canopies(Bench bench) {
    return bench.pots().stream()
        .map(
            pot ->
                new RoomDaylight.Point(
                    bench.xM() + pot.xM(), bench.yM() + pot.yM(), bench.canopyHeightM()))
        .toList();
  }

  private static double[] everyDay(double ppfdUmol, DaySpans on, int days) {
    double[] hours = new double[days * 24];
    for (int i = 0; i < hours.length; i++) {
      hours[i] = ppfdUmol * on.shareOfHour(i % 24);
    }
    return hours;
  }
}
