package sallet.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import sallet.household.Absence;
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
import sallet.household.WeatherSource;
import sallet.household.Window;

/** Households for tests: one ordinary bench that tests change a part of. */
final class Households {
  private static final List<String> COMMON =
      List.of(
          "loose-leaf lettuce, green",
          "butterhead lettuce",
          "mizuna",
          "Swiss chard",
          "pak choi",
          "salad rocket",
          "loose-leaf lettuce, red",
          "kale (leaf)",
          "cos (romaine) lettuce",
          "basil");

  private Households() {}

  /** The bench that is timed: so many crops, an absence of twelve days with two bowls away. */
  static Household benchmark(double bowlGrams, int crops) {
    return bench(
        bowlGrams,
        COMMON.subList(0, crops),
        List.of(new Absence(START.plusDays(103), START.plusDays(114), 2)),
        0.15,
        60);
  }

  /** Eighteen pots under a lamp behind a north window in the south of New Zealand. */
  static Household bench(double bowlGrams, List<String> crops, List<Absence> absences) {
    return bench(bowlGrams, crops, absences, 0.2, 120);
  }

  /** The same with another distance between pots, m, and another power of the lamp, W. */
  static Household bench(
      double bowlGrams,
      List<String> crops,
      List<Absence> absences,
      double pitchM,
      double lampPowerW) {
    List<Pot> pots = new ArrayList<>();
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 6; column++) {
        pots.add(
            new Pot(
                "" + (char) ('A' + row) + (column + 1),
                pitchM * (column + 0.5),
                pitchM * (row + 0.5)));
      }
    }
    return new Household(
        new Eaters(2, bowlGrams, 3, List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY)),
        absences,
        new CropWishes(crops, List.of()),
        new Place(-45.9, 170.5, 10, ZoneId.of("Pacific/Auckland"), new WeatherSource.Nearest()),
        new Room(
            3,
            2.4,
            2.4,
            0,
            new Room.Reflectance(0.3, 0.6, 0.8),
            0.2,
            new AirClimate(Collections.nCopies(12, 19.0), Collections.nCopies(12, 14.0), 55, 450),
            List.of(
                new Window(Wall.NORTH, 0.6, 1.8, 1.2, 0.9, 0.1, 2, Double.NaN, 0.8, 0.92, 1, 10))),
        new Bench(0.4, 1.5, 6 * pitchM, 3 * pitchM, 0.7, pots, 0.12, 1.2, "coir"),
        Optional.of(new Lamp(1.0, 1.8, 0.9, 0.3, lampPowerW, 2.2, 0.5, LocalTime.of(6, 0), 16, 1)),
        new Nursery(40, 24, 16, 49, 150, LocalTime.of(6, 0), 16, 20, 18),
        new Reservoir(60));
  }

  static final LocalDate START = LocalDate.of(2026, 11, 25);
}
