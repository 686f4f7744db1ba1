package sallet.light;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.household.AirClimate;
import sallet.household.Bench;
import sallet.household.CropWishes;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Nursery;
import sallet.household.Outlook;
import sallet.household.Place;
import sallet.household.Pot;
import sallet.household.Reservoir;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.WeatherSource;
import sallet.household.Window;

/** Invented households to try the light on. */
final class Households {
  /** A day without meaning, for rooms without trees and snow. */
  static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  static final Place CHRISTCHURCH =
      place(-43.53, 172.64, "Pacific/Auckland", new WeatherSource.Nearest());

  static final Lamp LAMP = new Lamp(1.0, 1.8, 0.9, 0.3, 120, 2.2, 0.5, LocalTime.of(6, 0), 16, 1);

  private Households() {}

  static Place place(double latitude, double longitude, String zone, WeatherSource weather) {
    return new Place(latitude, longitude, 20, ZoneId.of(zone), weather);
  }

  /** A double-glazed window without reveal, skyline or curtain. */
  static Window window(Wall wall, double from, double width, double height, double sill) {
    return new Window(wall, from, width, height, sill, 0.1, 2, Double.NaN, 0.8, 0.92, 1, 0);
  }

  static Window withSkyline(Window w, double skylineDeg) {
    return before(w, skylineDeg, w.outlook());
  }

  /** A window with something before it. */
  static Window before(Window w, double skylineDeg, Outlook outlook) {
    return new Window(
        w.wall(),
        w.fromM(),
        w.widthM(),
        w.heightM(),
        w.sillM(),
        w.revealM(),
        w.panes(),
        w.visibleTransmittance(),
        w.glassShare(),
        w.cleanliness(),
        w.curtain(),
        skylineDeg,
        outlook);
  }

  static Room room(double turnDeg, List<Window> windows) {
    return new Room(
        3.0,
        2.4,
        2.4,
        turnDeg,
        new Room.Reflectance(0.3, 0.6, 0.8),
        0.2,
        new AirClimate(Collections.nCopies(12, 19.0), Collections.nCopies(12, 14.0), 55, 450),
        windows);
  }

  /** The same room with walls that throw no light back. */
  static Room black(Room room) {
    return new Room(
        room.widthM(),
        room.depthM(),
        room.heightM(),
        room.turnDeg(),
        new Room.Reflectance(0, 0, 0),
        room.outdoorAlbedo(),
        room.air(),
        room.windows(),
        room.roofWindows());
  }

  /** A tray of rows by columns of pots, evenly spaced. */
  static Bench bench(double x, double y, int rows, int columns) {
    double width = 1.2;
    double depth = 0.6;
    List<Pot> pots =
        IntStream.range(0, rows * columns)
            .mapToObj(
                i ->
                    new Pot(
                        "P" + i,
                        width * (i % columns + 0.5) / columns,
                        depth * (Math.floorDiv(i, columns) + 0.5) / rows))
            .toList();
    return new Bench(x, y, width, depth, 0.7, pots, 0.12, 1.2, "coir");
  }

  static Household household(Place place, Room room, Bench bench, Optional<Lamp> lamp) {
    return new Household(
        new Eaters(2, 240, 3, List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY)),
        List.of(),
        new CropWishes(List.of(), List.of()),
        place,
        room,
        bench,
        lamp,
        new Nursery(40, 24, 9, 36, 150, LocalTime.of(6, 0), 16, 20, 18),
        new Reservoir(60));
  }
}
