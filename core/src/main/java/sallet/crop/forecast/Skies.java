package sallet.crop.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.AirClimate;
import sallet.light.HourlyLight;

/**
 * The same places in several runs of weather: brighter and duller days about the mean one. A day's
 * daylight is 1 + 0.35 z times the mean, held within 0.2 and 1.8, with z normal and 0.3 correlated
 * with the day before. From memory: so daily clearness varies and persists in temperate climates.
 */
public final class Skies {
  private static final double SPREAD = 0.35;
  private static final double PERSISTENCE = 0.3;
  private static final double DULLEST = 0.2;

  private Skies() {}

  /**
   * The mean of some places under several skies.
   *
   * @param places indices of the places
   * @param count number of skies, 1 or more
   */
  public static List<PlaceDays> over(
      HourlyLight light, List<Integer> places, AirClimate air, int count, long seed) {
    List<PlaceDays> skies = new ArrayList<>();
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < count; i++) {
      double[] factors = factors(light.days(), random.split());
      skies.add(RoomDays.underSky(light, places, air, day -> factors[day]));
    }
    return List.copyOf(skies);
  }

  /** Factors on the daylight of consecutive days. */
  static double[] factors(int days, SplittableRandom random) {
    double[] factors = new double[days];
    double z = random.nextGaussian();
    for (int day = 0; day < days; day++) {
      factors[day] = Math.min(2 - DULLEST, Math.max(DULLEST, 1 + SPREAD * z));
      z = PERSISTENCE * z + Math.sqrt(1 - PERSISTENCE * PERSISTENCE) * random.nextGaussian();
    }
    return factors;
  }
}
