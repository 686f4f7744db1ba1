package sallet.plan.rehearse;

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

/** The household that is rehearsed: 18 pots of 225 cm² behind a south window, with a lamp. */
final class SmallBench {
  /** A season begins in autumn. */
  static final LocalDate START = LocalDate.of(2026, 9, 26);

  private static final double PITCH_M = 0.15;

  private static final List<String> CROPS =
      List.of(
          "loose-leaf lettuce, green",
          "butterhead lettuce",
          "mizuna",
          "Swiss chard",
          "pak choi",
          "salad rocket",
          "loose-leaf lettuce, red",
          "kale (leaf)");

  private SmallBench() {}

  /** Two people who are away for twelve days and two bowls. */
  static Household of(double bowlGrams) {
    return new Household(
        new Eaters(2, bowlGrams, 3, List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY)),
        List.of(new Absence(START.plusDays(143), START.plusDays(154), 2)),
        new CropWishes(CROPS, List.of()),
        new Place(45.9, 7.5, 10, ZoneId.of("Europe/Paris"), new WeatherSource.Nearest()),
        new Room(
            3,
            2.4,
            2.4,
            0,
            new Room.Reflectance(0.3, 0.6, 0.8),
            0.2,
            new AirClimate(Collections.nCopies(12, 19.0), Collections.nCopies(12, 14.0), 55, 450),
            List.of(
                new Window(Wall.SOUTH, 0.6, 1.8, 1.2, 0.9, 0.1, 2, Double.NaN, 0.8, 0.92, 1, 10))),
        new Bench(0.4, 0.3, 6 * PITCH_M, 3 * PITCH_M, 0.7, pots(), 0.12, 1.2, "coir"),
        Optional.of(new Lamp(0.85, 0.525, 0.9, 0.3, 60, 2.2, 0.5, LocalTime.of(6, 0), 16, 1)),
        new Nursery(40, 24, 16, 49, 150, LocalTime.of(6, 0), 16, 20, 18),
        new Reservoir(60));
  }

  private static List<Pot> pots() {
    List<Pot> pots = new ArrayList<>();
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 6; column++) {
        pots.add(
            new Pot(
                "" + (char) ('A' + row) + (column + 1),
                PITCH_M * (column + 0.5),
                PITCH_M * (row + 0.5)));
      }
    }
    return pots;
  }
}
