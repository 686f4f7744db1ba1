package sallet.water.home;

import java.time.LocalDate;
import java.util.List;
import sallet.air.HourlyAir;
import sallet.air.ReadAir;
import sallet.household.Household;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.LeafCover;
import sallet.water.transpiration.StandingPlant;
import sallet.water.transpiration.Surroundings;

/**
 * Light, air and leaves of a household's bench over some days.
 *
 * @param light light at the pots
 * @param air air of the room
 * @param cover leaves in the pots
 */
public record BenchDays(HourlyLight light, HourlyAir air, LeafCover cover) {

  /** With plants that grow by their model. */
  public static BenchDays of(
      Household household, List<StandingPlant> plants, LocalDate from, int days) {
    return of(household, RoomLight.atPots(household, from, days), plants);
  }

  /** The same in light that is known already. */
  public static BenchDays of(Household household, HourlyLight light, List<StandingPlant> plants) {
    return of(household, light, LeafCover.of(plants, light.from(), light.places(), light.days()));
  }

  /** The same with leaves that are known already. */
  public static BenchDays of(Household household, HourlyLight light, LeafCover cover) {
    LocalDate from = light.from();
    int days = light.days();
    return new BenchDays(
        light,
        ReadAir.of(
            HourlyAir.profile(household.room().air(), from, days, day -> lit(light, day)),
            household.watering().readings().air()),
        cover);
  }

  private static boolean[] lit(HourlyLight light, int day) {
    boolean[] lit = new boolean[24];
    for (int place = 0; place < light.places(); place++) {
      for (int h = 0; h < 24; h++) {
        lit[h] |= light.ppfdUmol(place, day, h) > 0;
      }
    }
    return lit;
  }

  /** Water used. */
  public HourlyUse use(Surroundings around) {
    return HourlyUse.of(light, air, cover, around);
  }
}
