package sallet.app.file;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.crop.Servings;
import sallet.household.Absence;
import sallet.household.AirClimate;
import sallet.household.CropWishes;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.household.Nursery;
import sallet.household.Place;
import sallet.household.Reservoir;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.WeatherSource;
import sallet.household.Window;
import sallet.units.Quantity;

/** Makes the household of a file's values. Where a value is faulty the record holds NaN. */
final class HouseholdBuilder {
  private static final List<DayOfWeek> USUAL_TASK_DAYS =
      List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY);

  private final Values values;

  HouseholdBuilder(Values values) {
    this.values = values;
  }

  /**
   * The household.
   *
   * @param crops wishes by catalogue name
   * @param city name of the built-in place, when the file names one
   */
  Household household(CropWishes crops, Optional<String> city) {
    Room room = room();
    BenchBuilder bench = new BenchBuilder(values, room);
    return new Household(
        eaters(),
        absences(),
        crops,
        place(city),
        room,
        bench.bench(),
        bench.lamp(),
        nursery(),
        new Reservoir(values.base("reservoir.volume")),
        new ShelfBuilder(values).shelf());
  }

  private Eaters eaters() {
    int people = values.whole("household.people");
    List<DayOfWeek> days = values.list("household.taskDays", DayOfWeek.class);
    double bowl =
        people
            * values.number("household.saladsPerWeek")
            * values
                .get("household.cupsPerSalad", Double.class)
                .map(Servings::gramsOfCups)
                .orElseGet(() -> values.number("household.gramsPerSalad"));
    return new Eaters(
        people,
        values.get("household.bowlGrams", Double.class).orElse(bowl),
        values.whole("household.kinds"),
        days.isEmpty() ? USUAL_TASK_DAYS : days);
  }

  private List<Absence> absences() {
    List<Absence> absences = new ArrayList<>();
    for (int i = 0; i < values.count("absences"); i++) {
      String at = "absences[" + i + "]";
      Optional<LocalDate> from = values.get(at + ".from", LocalDate.class);
      Optional<LocalDate> to = values.get(at + ".to", LocalDate.class);
      int people =
          values
              .get(at + ".people", Integer.class)
              .orElseGet(() -> values.whole("household.people"));
      if (from.isPresent() && to.isPresent()) {
        absences.add(new Absence(from.get(), to.get(), people));
      }
    }
    return absences;
  }

  private Place place(Optional<String> city) {
    return new Place(
        values.number("place.latitude"),
        values.number("place.longitude"),
        values.base("place.elevation"),
        values.get("place.timeZone", ZoneId.class).orElse(ZoneOffset.UTC),
        weather(city));
  }

  private WeatherSource weather(Optional<String> city) {
    List<Quantity> irradiation = values.list("place.weather.irradiation", Quantity.class);
    List<Quantity> sunshine = values.list("place.weather.sunshine", Quantity.class);
    if (city.isPresent()) {
      return new WeatherSource.BuiltIn(city.get());
    }
    if (irradiation.size() == 12) {
      return new WeatherSource.MonthlyIrradiation(
          irradiation.stream().map(Quantity::inBase).toList());
    }
    if (sunshine.size() == 12) {
      return new WeatherSource.MonthlySunshine(sunshine.stream().map(Quantity::inBase).toList());
    }
    return new WeatherSource.Nearest();
  }

  private Room room() {
    double width = values.base("room.size.width");
    double depth = values.base("room.size.depth");
    return new Room(
        width,
        depth,
        values.base("room.size.height"),
        values.base("room.turn"),
        new Room.Reflectance(
            values.share("room.reflectance.floor"),
            values.share("room.reflectance.walls"),
            values.share("room.reflectance.ceiling")),
        values.share("room.outdoorAlbedo"),
        new AirClimate(
            values.monthly("room.air.day"),
            values.monthly("room.air.night"),
            values.base("room.air.humidity"),
            values.base("room.air.co2")),
        IntStream.range(0, values.count("room.windows"))
            .mapToObj(i -> window("room.windows[" + i + "].", width, depth))
            .toList());
  }

  private Window window(String at, double roomWidth, double roomDepth) {
    Optional<Wall> wall = WindowChecks.wall(values, at);
    double length = wall.map(w -> WindowChecks.length(w, roomWidth, roomDepth)).orElse(Double.NaN);
    double width = values.base(at + "width");
    double from =
        values.written(at + "from") ? values.base(at + "from") : Math.max(0, (length - width) / 2);
    return new Window(
        wall.orElse(Wall.NORTH),
        from,
        width,
        values.base(at + "height"),
        values.base(at + "sill"),
        values.base(at + "reveal"),
        values.whole(at + "panes"),
        values.share(at + "transmittance"),
        values.share(at + "glassShare"),
        values.share(at + "cleanliness"),
        values.share(at + "curtain"),
        values.base(at + "skyline"));
  }

  private Nursery nursery() {
    return new Nursery(
        values.whole("nursery.cells"),
        values.whole("nursery.places"),
        values.base("nursery.cellArea"),
        values.base("nursery.placeArea"),
        values.base("nursery.light"),
        values.clock("nursery.on"),
        values.base("nursery.hours"),
        values.base("nursery.day"),
        values.base("nursery.night"));
  }
}
