package sallet.app.file;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.crop.Assimilation;
import sallet.crop.Servings;
import sallet.household.Absence;
import sallet.household.AirClimate;
import sallet.household.Bench;
import sallet.household.CropWishes;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.household.Nursery;
import sallet.household.Place;
import sallet.household.Reservoir;
import sallet.household.RoofWindow;
import sallet.household.Room;
import sallet.household.Tariff;
import sallet.household.Wall;
import sallet.household.WeatherSource;
import sallet.household.WeatherYear;
import sallet.household.Window;
import sallet.light.NurseryLight;
import sallet.units.Quantity;
import sallet.weather.WeatherFile;

/** Makes the household of a file's values. Where a value is faulty the record holds NaN. */
final class HouseholdBuilder {
  private static final List<DayOfWeek> USUAL_TASK_DAYS =
      List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY);

  private final Values values;
  private final Faults faults;
  private final Attachments attachments;

  HouseholdBuilder(Values values, Faults faults, Attachments attachments) {
    this.values = values;
    this.faults = faults;
    this.attachments = attachments;
  }

  /**
   * The household.
   *
   * @param crops wishes by catalogue name
   * @param city name of the built-in place, when the file names one
   */
  Household household(CropWishes crops, Optional<String> city) {
    Room room = room();
    Bench bench = new BenchBuilder(values, room).bench();
    return new Household(
        eaters(),
        absences(),
        crops,
        place(city),
        room,
        bench,
        new LampBuilder(values, faults, attachments, bench).lamps(),
        nursery(),
        new Reservoir(values.base("reservoir.volume")),
        new ShelfBuilder(values).shelf(),
        List.of(),
        new WateringBuilder(values, bench).watering(),
        tariff());
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
    Optional<WeatherYear> file = attachments.read("place.weather.file", WeatherFile::read);
    if (file.isPresent()) {
      return new WeatherSource.Hourly(file.get());
    }
    Optional<String> sky = values.get("place.weather.sky", String.class);
    if (sky.isPresent()) {
      return new WeatherSource.SkyClass(clearness(sky.get()));
    }
    WeatherSource place = months(city);
    Map<Month, Double> own = new EnumMap<>(Month.class);
    for (int i = 0; i < values.count("place.weather.months"); i++) {
      String at = "place.weather.months[" + i + "].";
      double hours = values.base(at + "sunshine");
      values
          .get(at + "month", Integer.class)
          .filter(month -> !Double.isNaN(hours))
          .ifPresent(month -> own.put(Month.of(month), hours));
    }
    return own.isEmpty() ? place : new WeatherSource.Corrected(place, own);
  }

  /**
   * Share of the light above the air, for people with nothing else. Source: monthly means of twelve
   * weather files, 0.30 to 0.64.
   */
  private static double clearness(String sky) {
    return switch (sky) {
      case "dull" -> 0.35;
      case "mixed" -> 0.45;
      case "fair" -> 0.55;
      default -> 0.65;
    };
  }

  private WeatherSource months(Optional<String> city) {
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
        values.monthly("room.outdoorAlbedo").stream().map(percent -> percent / 100).toList(),
        new AirClimate(
            values.monthly("room.air.day"),
            values.monthly("room.air.night"),
            values.monthly("room.air.humidity"),
            Assimilation.roomCo2Ppm(values.base("room.air.co2"))),
        IntStream.range(0, values.count("room.windows"))
            .mapToObj(i -> window("room.windows[" + i + "].", width, depth))
            .toList(),
        IntStream.range(0, values.count("room.roofWindows"))
            .mapToObj(i -> roofWindow("room.roofWindows[" + i + "]."))
            .toList());
  }

  private RoofWindow roofWindow(String at) {
    return new RoofWindow(
        values.base(at + "x"),
        values.base(at + "y"),
        values.base(values.written(at + "height") ? at + "height" : "room.size.height"),
        values.base(at + "width"),
        values.base(at + "length"),
        values.base(at + "slope"),
        values
            .get(at + "faces", String.class)
            .map(word -> Wall.valueOf(word.toUpperCase(Locale.ROOT)))
            .orElse(Wall.NORTH),
        values.base(at + "shaft"),
        new RoofWindow.Glass(
            values.whole(at + "panes"),
            values.share(at + "transmittance"),
            values.share(at + "glassShare"),
            values.share(at + "cleanliness"),
            values.share(at + "curtain")));
  }

  private Optional<Tariff> tariff() {
    return values.written("tariff")
        ? Optional.of(
            new Tariff(
                values.number("tariff.day"),
                values.number("tariff.night"),
                values.clock("tariff.nightFrom"),
                values.clock("tariff.nightTo")))
        : Optional.empty();
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
        values.base(at + "skyline"),
        new OutlookBuilder(values, at).outlook());
  }

  private Optional<Nursery.ShelfLamp> shelfLamp() {
    String at = "nursery.lamp.";
    if (!values.written("nursery.lamp")) {
      return Optional.empty();
    }
    if (values.written("nursery.light")) {
      faults.add(
          "nursery.lamp",
          values.line("nursery.lamp"),
          "stands beside nursery.light; write one of the two");
    }
    return values.sound("nursery.lamp")
        ? Optional.of(
            new Nursery.ShelfLamp(
                values.base(at + "shelf.length"),
                values.base(at + "shelf.width"),
                values.base(at + "size.length"),
                values.base(at + "size.width"),
                values.base(at + "light"),
                values.base(at + "height")))
        : Optional.empty();
  }

  private Nursery nursery() {
    int cells = values.whole("nursery.cells");
    Optional<Nursery.ShelfLamp> shelf = shelfLamp();
    return new Nursery(
        cells,
        values.whole("nursery.places"),
        values.base("nursery.cellArea"),
        values.base("nursery.placeArea"),
        shelf
            .map(lamp -> NurseryLight.of(lamp, cells).evenness().meanUmol())
            .orElseGet(() -> values.base("nursery.light")),
        values.clock("nursery.on"),
        values.base("nursery.hours"),
        values.base("nursery.day"),
        values.base("nursery.night"),
        shelf);
  }
}
