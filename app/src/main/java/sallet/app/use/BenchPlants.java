package sallet.app.use;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.crop.Stay;
import sallet.crop.forecast.Spread;
import sallet.household.Household;
import sallet.household.PotSites;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;
import sallet.plan.Sowing;
import sallet.plan.SowingPlan;
import sallet.water.transpiration.StandingPlant;

/** The plants of a sowing plan, each in its own pot's light. */
final class BenchPlants {
  /** A leaf plant fills no more than a square of 30 cm, cm². Common practice. */
  private static final double WIDEST_PLANT_CM2 = 900;

  private final Household household;
  private final Catalogue catalogue;
  private final HourlyLight light;
  private final PlaceDays nursery;
  private final List<Double> sitesCm2;
  private final Map<Integer, PlaceDays> places = new HashMap<>();

  private BenchPlants(Household household, Catalogue catalogue, LocalDate from, int days) {
    this.household = household;
    this.catalogue = catalogue;
    this.light = RoomLight.atPots(household, from, days);
    this.nursery =
        RoomDays.inNursery(
            RoomLight.inNursery(household, from, days),
            household.nursery(),
            household.room().air());
    this.sitesCm2 =
        PotSites.siteCm2(household.bench()).stream()
            .map(site -> Math.min(site, WIDEST_PLANT_CM2))
            .toList();
  }

  /**
   * All plants of a plan that reach the bench.
   *
   * @param until first day that need not be known any more
   */
  static List<StandingPlant> of(
      SowingPlan plan, Household household, Catalogue catalogue, LocalDate until) {
    LocalDate last =
        plan.sowings().stream()
            .flatMap(s -> s.courses().stream())
            .map(Sowing.Course::end)
            .max(LocalDate::compareTo)
            .filter(until::isBefore)
            .orElse(until);
    int days = (int) ChronoUnit.DAYS.between(plan.from(), last) + 1;
    BenchPlants bench = new BenchPlants(household, catalogue, plan.from(), days);
    List<StandingPlant> plants = new ArrayList<>();
    for (Sowing sowing : plan.sowings()) {
      for (Sowing.Course course : sowing.courses()) {
        course.pots().forEach(pot -> plants.add(bench.plant(sowing, course, pot)));
      }
    }
    return plants;
  }

  private StandingPlant plant(Sowing sowing, Sowing.Course course, String potName) {
    Crop crop = catalogue.find(sowing.crop()).orElseThrow();
    int pot = indexOf(potName);
    PlaceDays place =
        places.computeIfAbsent(pot, p -> RoomDays.atPlace(light, p, household.room().air()));
    List<Stay> stays = new ArrayList<>();
    stays.add(new Stay(sowing.date(), nursery, household.nursery().cellAreaCm2()));
    if (course.throughNursery()) {
      stays.add(new Stay(course.toNursery(), nursery, household.nursery().placeAreaCm2()));
    }
    stays.add(new Stay(course.toBench(), place, sitesCm2.get(pot)));
    List<StandingPlant.Pick> picks =
        course.picks().stream()
            .filter(pick -> pick.share() > 0 && pick.share() < 1)
            .map(pick -> new StandingPlant.Pick(pick.date(), pick.share()))
            .toList();
    return new StandingPlant(
        pot,
        crop,
        Spread.PRIOR.vigour(),
        sowing.emergence(),
        stays,
        picks,
        course.toBench(),
        course.end());
  }

  private int indexOf(String name) {
    return IntStream.range(0, household.bench().pots().size())
        .filter(i -> household.bench().pots().get(i).name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
