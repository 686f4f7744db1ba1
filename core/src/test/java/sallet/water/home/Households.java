package sallet.water.home;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.crop.RoomDays;
import sallet.crop.Stay;
import sallet.household.AirClimate;
import sallet.household.Bench;
import sallet.household.CropWishes;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Nursery;
import sallet.household.Place;
import sallet.household.Pot;
import sallet.household.Reservoir;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.Watering;
import sallet.household.WeatherSource;
import sallet.household.Window;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;
import sallet.water.transpiration.StandingPlant;

/** An invented household with a lamp over twelve pots, and lettuce of one age in some of them. */
public final class Households {
  /** Day on which all is told. */
  public static final LocalDate DAY = LocalDate.of(2027, 2, 1);

  /** Day the lettuce came up. */
  private static final LocalDate UP = DAY.minusDays(30);

  private static final int POTS = 12;
  private static final int LIGHT_DAYS = 150;

  private Households() {}

  /** With a reservoir of that volume and air of that humidity. */
  public static Household of(double tankL, double humidity) {
    List<Pot> pots =
        IntStream.range(0, POTS)
            .mapToObj(i -> new Pot("P" + i, 0.1 + 0.2 * (i % 6), 0.15 + 0.3 * Math.floorDiv(i, 6)))
            .toList();
    Room room =
        new Room(
            3,
            2.4,
            2.4,
            0,
            new Room.Reflectance(0.3, 0.6, 0.8),
            0.2,
            new AirClimate(
                Collections.nCopies(12, 20.0), Collections.nCopies(12, 17.0), humidity, 450),
            List.of(new Window(Wall.SOUTH, 1, 1.2, 1.2, 0.9, 0.1, 2, Double.NaN, 0.8, 0.92, 1, 0)));
    return new Household(
        new Eaters(2, 480, 3, List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY)),
        List.of(),
        new CropWishes(List.of(), List.of()),
        new Place(48, 16, 200, ZoneId.of("Europe/Vienna"), new WeatherSource.Nearest()),
        room,
        new Bench(0.5, 0.3, 1.2, 0.6, 0.7, pots, 0.12, 1.2, "coir"),
        Optional.of(new Lamp(1.1, 0.6, 0.9, 0.3, 150, 2.4, 0.5, LocalTime.of(6, 0), 16, 1)),
        new Nursery(40, 24, 16, 49, 150, LocalTime.of(6, 0), 16, 20, 18),
        new Reservoir(tankL));
  }

  /** Lettuce of one age in the first pots, growing in their own light until long after. */
  public static List<StandingPlant> lettuce(Household household, int pots) {
    return lettuce(household, Collections.nCopies(pots, UP));
  }

  /**
   * Lettuce in the first pots, growing in their own light until long after.
   *
   * @param up the day each came up, at most 50 days before all is told
   */
  public static List<StandingPlant> lettuce(Household household, List<LocalDate> up) {
    LocalDate from = DAY.minusDays(55);
    PlaceDays nursery =
        RoomDays.inNursery(
            RoomLight.inNursery(household, from, LIGHT_DAYS),
            household.nursery(),
            household.room().air());
    Crop crop = Catalogue.builtIn().find("loose-leaf lettuce, green").orElseThrow();
    List<StandingPlant> plants = new ArrayList<>();
    HourlyLight light = RoomLight.atPots(household, from, LIGHT_DAYS);
    for (int pot = 0; pot < up.size(); pot++) {
      LocalDate day = up.get(pot);
      PlaceDays place = RoomDays.atPlace(light, pot, household.room().air());
      plants.add(
          new StandingPlant(
              pot,
              crop,
              0.85,
              day,
              List.of(
                  new Stay(day.minusDays(5), nursery, 16),
                  new Stay(day.plusDays(2), nursery, 49),
                  new Stay(day.plusDays(14), place, 600)),
              List.of(),
              day.plusDays(14),
              day.plusDays(100)));
    }
    return plants;
  }

  /** The usual watering with another pump. */
  public static Watering pumped(double flowLh, double headM, double liftM) {
    return pumped(Watering.CurvePoint.straight(flowLh, headM), liftM);
  }

  /** The usual watering with a pump of that curve. */
  public static Watering pumped(List<Watering.CurvePoint> curve, double liftM) {
    Watering w = Watering.usual();
    return new Watering(
        new Watering.Pump(curve, liftM, 15, OptionalDouble.empty(), 19),
        w.timer(),
        w.floodDepthM(),
        w.tank(),
        w.otherPots(),
        w.airing(),
        w.readings());
  }

  /** The usual watering with another depth, other pots and weighings. */
  public static Watering potted(
      double depthM, List<Watering.OtherPots> others, List<Watering.Weighing> weighings) {
    Watering w = Watering.usual();
    return new Watering(
        w.pump(),
        w.timer(),
        depthM,
        w.tank(),
        others,
        w.airing(),
        new Watering.Readings(weighings, List.of(), List.of()));
  }
}
