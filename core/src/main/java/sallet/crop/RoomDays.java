package sallet.crop;

import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import sallet.air.RoomAir;
import sallet.household.AirClimate;
import sallet.household.Nursery;
import sallet.light.HourlyLight;

/**
 * Reduces the hours of a place to what a plant feels of each day.
 *
 * <p>Hours with light anywhere on the bench have the day temperature of their month, dark hours the
 * night temperature. Carbon dioxide is taken as given.
 */
public final class RoomDays {
  /** Temperature from which an hour leads towards seed, °C. */
  private static final double BOLTING_BASE_C = 5;

  /** Temperature above which an hour leads there no faster, °C. */
  private static final double BOLTING_TOP_C = 30;

  private RoomDays() {}

  /** The days of one place. */
  public static PlaceDays atPlace(HourlyLight light, int place, AirClimate air) {
    return mean(light, List.of(place), air);
  }

  /**
   * The days of the mean of several places at nearly equal light: assimilation is worked out at
   * each place and then averaged.
   */
  public static PlaceDays mean(HourlyLight light, List<Integer> places, AirClimate air) {
    return underSky(light, places, air, day -> 1);
  }

  /**
   * The same in brighter or duller weather.
   *
   * @param sky factor on the daylight of each day, counted from the first; lamp light stays
   */
  public static PlaceDays underSky(
      HourlyLight light, List<Integer> places, AirClimate air, IntToDoubleFunction sky) {
    if (places.isEmpty()) {
      throw new IllegalArgumentException("a mean needs at least one place");
    }
    int days = light.days();
    double[] assimilateG = new double[days];
    double[] dliMol = new double[days];
    double[] meanC = new double[days];
    double[] photoperiodHours = new double[days];
    double[] boltingHeatCd = new double[days];
    for (int day = 0; day < days; day++) {
      double[] hoursC = RoomAir.hoursC(air, light.from().plusDays(day), lit(light, day));
      for (int place : places) {
        double[] ppfdUmol = hoursUmol(light, place, day, sky.applyAsDouble(day));
        assimilateG[day] +=
            Assimilation.dailyG(ppfdUmol, hoursC, air.co2Ppm(), PlantParameters.LAYER_FACTOR)
                / places.size();
        dliMol[day] +=
            (light.daylightDliMol(place, day) * sky.applyAsDouble(day)
                    + light.lampDliMol(place, day))
                / places.size();
      }
      meanC[day] = meanC(hoursC);
      photoperiodHours[day] = light.photoperiodHours(day);
      boltingHeatCd[day] = boltingHeatCd(hoursC);
    }
    return new PlaceDays(light.from(), assimilateG, dliMol, meanC, photoperiodHours, boltingHeatCd);
  }

  /**
   * The days on the nursery shelf, which has its own day and night temperature and shares the
   * room's carbon dioxide.
   *
   * @param light light on the shelf, one place
   */
  public static PlaceDays inNursery(HourlyLight light, Nursery nursery, AirClimate room) {
    AirClimate shelf =
        new AirClimate(
            Collections.nCopies(12, nursery.dayC()),
            Collections.nCopies(12, nursery.nightC()),
            room.humidityPercent(),
            room.co2Ppm());
    return atPlace(light, 0, shelf);
  }

  /** Degree days above 5 °C with each hour capped at 30 °C, °C d. */
  static double boltingHeatCd(double[] hoursC) {
    double sum = 0;
    for (double c : hoursC) {
      sum += Math.max(0, Math.min(c, BOLTING_TOP_C) - BOLTING_BASE_C);
    }
    return sum / hoursC.length;
  }

  static double meanC(double[] hoursC) {
    double sum = 0;
    for (double c : hoursC) {
      sum += c;
    }
    return sum / hoursC.length;
  }

  private static double[] hoursUmol(HourlyLight light, int place, int day, double sky) {
    double[] hours = new double[24];
    for (int h = 0; h < 24; h++) {
      double daylight = light.daylightUmol(place, day, h);
      hours[h] = light.ppfdUmol(place, day, h) + (sky - 1) * daylight;
    }
    return hours;
  }

  /** For each hour whether any place has light. */
  private static boolean[] lit(HourlyLight light, int day) {
    boolean[] lit = new boolean[24];
    for (int place = 0; place < light.places(); place++) {
      for (int h = 0; h < 24; h++) {
        lit[h] |= light.ppfdUmol(place, day, h) > 0;
      }
    }
    return lit;
  }
}
