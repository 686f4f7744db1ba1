package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.household.PotSites;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;

/**
 * What the places of a household offer a plant, day by day, under the mean sky.
 *
 * @param nursery the seed shelf, cells and places alike
 * @param cellCm2 area of a sowing cell, cm²
 * @param placeCm2 area of a nursery place, cm²
 * @param pots the pots by name, in the order of the bench
 */
public record GrowingPlaces(
    PlaceDays nursery, double cellCm2, double placeCm2, Map<String, PotPlace> pots) {
  /** A leaf plant fills no more than a square of 30 cm, cm². Common practice. */
  private static final double WIDEST_PLANT_CM2 = 900;

  public GrowingPlaces {
    pots = Collections.unmodifiableMap(new LinkedHashMap<>(pots));
  }

  /**
   * A pot on the bench.
   *
   * @param days its light and air
   * @param siteCm2 area what grows in it may fill, cm²
   */
  public record PotPlace(PlaceDays days, double siteCm2) {}

  /** The places of a household over some days, 1 or more. */
  public static GrowingPlaces of(Household household, LocalDate from, int days) {
    HourlyLight bench = RoomLight.atPots(household, from, days);
    List<Double> sites = PotSites.siteCm2(household.bench());
    Map<String, PotPlace> pots = new LinkedHashMap<>();
    List<Pot> all = new ArrayList<>(household.bench().pots());
    for (int i = 0; i < all.size(); i++) {
      pots.put(
          all.get(i).name(),
          new PotPlace(
              RoomDays.atPlace(bench, i, household.room().air()),
              Math.min(sites.get(i), WIDEST_PLANT_CM2)));
    }
    return new GrowingPlaces(
        RoomDays.inNursery(
            RoomLight.inNursery(household, from, days),
            household.nursery(),
            household.room().air()),
        household.nursery().cellAreaCm2(),
        household.nursery().placeAreaCm2(),
        pots);
  }

  /** A pot by its name. */
  PotPlace pot(String name) {
    PotPlace pot = pots.get(name);
    if (pot == null) {
      throw new IllegalArgumentException("there is no pot " + name + " on the bench");
    }
    return pot;
  }
}
