package sallet.light;

import java.lang.management.ManagementFactory;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sallet.household.Household;
import sallet.household.Outlook;
import sallet.household.Place;
import sallet.household.Wall;
import sallet.household.WeatherSource;
import sallet.household.WeatherYear;
import sallet.household.Window;
import sallet.weather.ClearSky;
import sallet.weather.DiffuseFraction;
import sallet.weather.OutdoorLight;
import sallet.weather.PerezSky;
import sallet.weather.PlaceClimate;
import sallet.weather.Plane;
import sallet.weather.SkyMoment;
import sallet.weather.Sun;
import sallet.weather.SunPosition;
import sallet.weather.TiltedLight;

/**
 * Measures a year of light at 40 pots behind two windows, one with a horizon and a tree, from
 * monthly means and from a weather file: first run cold, then warm, and the share of each step.
 * Then a year of hours on one upright plane. Prints CPU milliseconds.
 */
final class RoomLightTiming {
  private static final LocalDate FROM = LocalDate.of(2027, 1, 1);
  private static final Place PLACE = Households.CHRISTCHURCH;
  private static final int RUNS = 10;

  private RoomLightTiming() {}

  private interface Work {
    double run();
  }

  public static void main(String[] args) {
    Household monthly = household(PLACE);
    measure("40 pots, monthly means", () -> year(monthly));
    Household hourly =
        household(
            new Place(
                PLACE.latitudeDeg(),
                PLACE.longitudeDeg(),
                PLACE.elevationM(),
                PLACE.timeZone(),
                new WeatherSource.Hourly(clearYear())));
    measure("40 pots, weather file", () -> year(hourly));
    ZoneOffset clock = ZoneOffset.ofHours(12);
    for (Household household : List.of(monthly, hourly)) {
      OutdoorLight light = PlaceClimate.light(household.place(), clock);
      measure("  sun and sky outdoors", () -> outdoors(light));
    }
    measure("  sky seen by each pot", () -> room(monthly).apertures().size());
    RoomDaylight room = room(monthly);
    List<List<SkyMoment>> days = days(PlaceClimate.light(PLACE, clock));
    measure("  sky parts", () -> parts(days));
    measure("  windows to pots (with sky parts)", () -> pots(room, days));
    measure("one upright plane, 8760 hours: sun (Grena), 3 skies", () -> plane(false));
    measure("one upright plane, 8760 hours: sun (Reda and Andreas), 3 skies", () -> plane(true));
  }

  /** Time of this thread on a core: other work on the machine lengthens it little. */
  private static long cpuNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void measure(String what, Work work) {
    double[] millis = new double[RUNS];
    double sum = 0;
    for (int i = 0; i < RUNS; i++) {
      long start = cpuNanos();
      sum += work.run();
      millis[i] = (cpuNanos() - start) / 1e6;
    }
    double first = millis[0];
    Arrays.sort(millis);
    System.out.printf(
        "%-64s first %6.1f, best %6.1f, median %6.1f ms (%.3g)%n",
        what, first, millis[0], millis[RUNS / 2], sum / RUNS);
  }

  private static Household household(Place place) {
    Window plain = Households.window(Wall.NORTH, 0.6, 1.8, 1.2, 0.9);
    Outlook outlook =
        new Outlook(
            List.of(
                new Outlook.Point(250, 8), new Outlook.Point(270, 15), new Outlook.Point(300, 5)),
            List.of(),
            List.of(
                new Outlook.Tree(
                    280, 310, 0, 40, 0.19, 0.5, MonthDay.of(10, 20), MonthDay.of(4, 15))),
            Optional.empty());
    Window w = Households.window(Wall.WEST, 0.5, 1.2, 1.2, 0.9);
    Window west = Households.before(w, 0, outlook);
    return Households.household(
        place,
        Households.room(0, List.of(plain, west)),
        Households.bench(0.4, 1.5, 5, 8),
        Optional.of(Households.LAMP));
  }

  private static double year(Household household) {
    return RoomLight.atPots(household, FROM, 365).dliMol(0, 0);
  }

  private static RoomDaylight room(Household household) {
    return new RoomDaylight(household, Spot.ofPots(household.bench()));
  }

  private static List<List<SkyMoment>> days(OutdoorLight light) {
    List<List<SkyMoment>> days = new ArrayList<>();
    for (int day = 0; day < 365; day++) {
      days.add(light.of(FROM.plusDays(day)));
    }
    return days;
  }

  private static double outdoors(OutdoorLight light) {
    return days(light).stream().mapToInt(List::size).sum();
  }

  private static double parts(List<List<SkyMoment>> days) {
    double sum = 0;
    for (List<SkyMoment> day : days) {
      for (SkyMoment moment : day) {
        sum += PerezSky.of(moment).evenWm2();
      }
    }
    return sum;
  }

  private static double pots(RoomDaylight room, List<List<SkyMoment>> days) {
    double sum = 0;
    for (int day = 0; day < days.size(); day++) {
      for (SkyMoment moment : days.get(day)) {
        sum += room.atWm2(FROM.plusDays(day), moment)[7];
      }
    }
    return sum;
  }

  /** A weather file's year under clear skies. */
  private static WeatherYear clearYear() {
    List<WeatherYear.Hour> hours = new ArrayList<>();
    for (int i = 0; i < 8760; i++) {
      LocalDate day = FROM.plusDays(i / 24);
      Instant at = FROM.atStartOfDay().plusMinutes(60L * i + 30).toInstant(ZoneOffset.ofHours(12));
      SunPosition sun = Sun.at(at, PLACE);
      ClearSky sky =
          sun.altitudeDeg() > 0
              ? ClearSky.of(sun, Sun.normalWm2(day.getDayOfYear()), 20)
              : new ClearSky(0, 0, 0);
      hours.add(
          new WeatherYear.Hour(
              day.getMonthValue(),
              day.getDayOfMonth(),
              i % 24 + 0.5,
              sky.globalWm2(),
              sky.diffuseWm2(),
              sky.beamWm2()));
    }
    return new WeatherYear(
        "clear", PLACE.latitudeDeg(), PLACE.longitudeDeg(), PLACE.elevationM(), 12, hours);
  }

  /** Position, clear sky, hourly split, Hay-Davies and Perez on a plane facing south. */
  private static double plane(boolean precisely) {
    Plane south = new Plane(90, 180);
    double sum = 0;
    for (int i = 0; i < 8760; i++) {
      Instant at = FROM.atStartOfDay().plusMinutes(60L * i + 30).toInstant(ZoneOffset.ofHours(12));
      SunPosition sun = precisely ? Sun.precisely(at, PLACE, 69, 1013, 10) : Sun.at(at, PLACE);
      if (sun.altitudeDeg() > 0) {
        double outside = Sun.normalWm2(i / 24 + 1);
        ClearSky clear = ClearSky.of(sun, outside, 20);
        double global = 0.7 * clear.globalWm2();
        double k = DiffuseFraction.clearness(global, outside, sun.sinAltitude());
        double diffuse = global * DiffuseFraction.erbsHourly(k);
        double beam = (global - diffuse) / Math.max(0.03, sun.sinAltitude());
        SkyMoment moment = new SkyMoment(12, 1, sun, global, diffuse, beam, outside);
        sum += TiltedLight.beamWm2(moment, south) + TiltedLight.groundWm2(moment, south, 0.2);
        sum += TiltedLight.hayDaviesWm2(moment, south);
        sum += PerezSky.of(moment).onWm2(south, sun);
      }
    }
    return sum;
  }
}
