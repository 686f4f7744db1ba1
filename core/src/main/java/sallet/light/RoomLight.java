package sallet.light;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Nursery;
import sallet.household.Place;
import sallet.weather.DaySpans;
import sallet.weather.OutdoorLight;
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
   * half-grown canopy. The household's own readings, if any, set the strength of windows and lamps.
   *
   * @param from first day
   * @param days number of days, 0 or more
   * @throws IllegalArgumentException when the place names an unknown city or the lamp hangs too low
   */
  public static HourlyLight atPots(Household household, LocalDate from, int days) {
    ZoneOffset clock = standardTime(household.place(), from);
    return atPots(household, PlaceClimate.light(household.place(), clock), from, days);
  }

  /** The same under another sky, such as a chance one. */
  public static HourlyLight atPots(
      Household household, OutdoorLight outdoors, LocalDate from, int days) {
    List<Spot> spots = Spot.ofPots(household.bench());
    LightFactors factors = Calibration.of(household).factors();
    double[][] daylight = new double[spots.size()][days * 24];
    double[] photoperiod = new double[days];
    DaySpans lampsOn =
        household.lamps().stream().map(LampLight::on).reduce(DaySpans.NONE, DaySpans::or);
    if (household.room().hasDaylight()) {
      double scale = UMOL_PER_J * factors.window().value();
      fillDaylight(new RoomDaylight(household, spots), outdoors, from, scale, daylight);
      ZoneOffset clock = standardTime(household.place(), from);
      for (int day = 0; day < days; day++) {
        photoperiod[day] = Sun.up(household.place(), from.plusDays(day), clock).or(lampsOn).hours();
      }
    } else {
      Arrays.fill(photoperiod, lampsOn.hours());
    }
    double[][] lamp = lampLight(household, spots, days, factors.lamp().value());
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
    double[] hours = new double[days * 24];
    addDaily(hours, nursery.ppfdUmol(), on);
    return new HourlyLight(from, new double[1][days * 24], new double[][] {hours}, photoperiod);
  }

  /** The time zone's standard time, without summer time, in which hours are counted. */
  public static ZoneOffset standardTime(Place place, LocalDate day) {
    return place
        .timeZone()
        .getRules()
        .getStandardOffset(day.atStartOfDay(ZoneOffset.UTC).toInstant());
  }

  private static void fillDaylight(
      RoomDaylight room,
      OutdoorLight outdoors,
      LocalDate from,
      double umolPerJ,
      double[][] daylightUmol) {
    int days = daylightUmol.length == 0 ? 0 : daylightUmol[0].length / 24;
    for (int day = 0; day < days; day++) {
      LocalDate date = from.plusDays(day);
      for (SkyMoment moment : outdoors.of(date)) {
        double[] wm2 = room.atWm2(date, moment);
        int hour = day * 24 + (int) moment.hour();
        for (int i = 0; i < wm2.length; i++) {
          daylightUmol[i][hour] += wm2[i] * umolPerJ * moment.lastsHours();
        }
      }
    }
  }

  private static double[][] lampLight(
      Household household, List<Spot> spots, int days, double factor) {
    List<Lamp> lamps = household.lamps();
    RoomLamps lights = new RoomLamps(household.room(), household.bench(), lamps);
    double[][] umol = new double[spots.size()][days * 24];
    for (int l = 0; l < lamps.size(); l++) {
      DaySpans on = LampLight.on(lamps.get(l));
      for (int i = 0; i < spots.size(); i++) {
        addDaily(umol[i], factor * lights.ppfdUmol(l, spots.get(i)), on);
      }
    }
    return umol;
  }

  private static void addDaily(double[] hours, double ppfdUmol, DaySpans on) {
    for (int i = 0; i < hours.length; i++) {
      hours[i] += ppfdUmol * on.shareOfHour(i % 24);
    }
  }
}
