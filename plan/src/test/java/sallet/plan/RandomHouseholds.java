package sallet.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
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
import sallet.plan.linear.LinearSolver;

/**
 * Invented households, each made from a seed: the same seed always gives the same household. Some
 * are hopeless on purpose: too dark, too cold, away too long or without a crop to sow.
 */
public final class RandomHouseholds {
  private static final LocalDate NEW_YEAR = LocalDate.of(2027, 1, 1);

  private final SplittableRandom random;
  private final Catalogue catalogue;
  private final Size size;

  private RandomHouseholds(SplittableRandom random, Catalogue catalogue, Size size) {
    this.random = random;
    this.catalogue = catalogue;
    this.size = size;
  }

  /**
   * A household and what is to be planned for it.
   *
   * @param seed seed it was made from
   * @param from first day of the plan
   * @param bowls number of bowls
   * @param margin factor on demand
   */
  public record Wish(long seed, Household household, LocalDate from, int bowls, double margin) {
    /** The question to the planner from a bench as it stands. */
    Planner.Request request(
        Catalogue catalogue, Present present, Effort effort, LinearSolver solver) {
      return new Planner.Request(
          household, catalogue, from, bowls, margin, present, effort, solver);
    }

    /** The question to the planner from an empty bench. */
    public Planner.Request request(Catalogue catalogue, Effort effort) {
      return new Planner.Request(household, catalogue, from, bowls, margin, effort);
    }
  }

  /** How large the households are: least and most of everything. */
  private record Size(
      Range pots, Range crops, Range bowls, Range cells, Range places, Range bowlGrams) {}

  private record Range(int least, int most) {}

  private static final Size SMALL =
      new Size(
          new Range(1, 8),
          new Range(1, 4),
          new Range(1, 8),
          new Range(1, 12),
          new Range(1, 10),
          new Range(30, 300));

  private static final Size FULL =
      new Size(
          new Range(18, 40),
          new Range(6, 10),
          new Range(26, 52),
          new Range(30, 60),
          new Range(18, 36),
          new Range(200, 600));

  /** A household with at most 8 pots, 4 crops, 8 bowls, 12 cells and 10 nursery places. */
  public static Wish small(long seed, Catalogue catalogue) {
    return new RandomHouseholds(new SplittableRandom(seed), catalogue, SMALL).wish(seed);
  }

  /** A household with 18 to 40 pots, 6 to 10 crops and 26 to 52 bowls. */
  public static Wish fullSize(long seed, Catalogue catalogue) {
    return new RandomHouseholds(new SplittableRandom(seed), catalogue, FULL).wish(seed);
  }

  private Wish wish(long seed) {
    LocalDate from = NEW_YEAR.plusDays(whole(0, 364));
    int bowls = chance(0.9) ? size.bowls().most() - whole(0, 2) : in(size.bowls());
    int people = whole(1, 4);
    Room room = room();
    Bench bench = bench(room);
    Household household =
        new Household(
            new Eaters(people, in(size.bowlGrams()), whole(1, 4), taskDays()),
            absences(from, bowls, people),
            crops(),
            place(),
            room,
            bench,
            chance(0.7) ? Optional.of(lamp(bench)) : Optional.empty(),
            nursery(),
            new Reservoir(60));
    return new Wish(seed, household, from, bowls, real(0.8, 1.4));
  }

  private List<DayOfWeek> taskDays() {
    return shuffled(List.of(DayOfWeek.values())).subList(0, whole(1, 3));
  }

  private List<Absence> absences(LocalDate from, int bowls, int people) {
    return IntStream.range(0, whole(0, 2))
        .mapToObj(
            i -> {
              LocalDate away = from.plusDays(whole(0, 7 * bowls));
              int who = chance(0.5) ? people : whole(1, people);
              return new Absence(
                  away, away.plusDays(chance(0.7) ? whole(0, 9) : whole(0, 30)), who);
            })
        .toList();
  }

  private CropWishes crops() {
    List<String> names =
        shuffled(catalogue.all().stream().filter(Crop::plannable).map(Crop::name).toList());
    List<String> want = names.subList(0, in(size.crops()));
    return new CropWishes(want, chance(0.06) ? List.of(want.get(0)) : List.of());
  }

  private Place place() {
    double longitudeDeg = real(-180, 180);
    ZoneOffset zone = ZoneOffset.ofHours((int) Math.round(longitudeDeg / 15));
    return new Place(real(-60, 65), longitudeDeg, real(0, 1000), zone, new WeatherSource.Nearest());
  }

  private Room room() {
    double widthM = real(2, 5);
    double depthM = real(2, 4);
    double heightM = real(2.2, 2.8);
    List<Window> windows =
        shuffled(List.of(Wall.values())).subList(0, whole(0, 3)).stream()
            .map(wall -> window(wall, isAlongX(wall) ? widthM : depthM))
            .toList();
    return new Room(
        widthM,
        depthM,
        heightM,
        real(0, 360),
        new Room.Reflectance(real(0.1, 0.4), real(0.3, 0.7), real(0.5, 0.8)),
        real(0.1, 0.3),
        air(),
        windows);
  }

  private static boolean isAlongX(Wall wall) {
    return wall == Wall.NORTH || wall == Wall.SOUTH;
  }

  private Window window(Wall wall, double wallM) {
    double widthM = real(0.4, wallM - 0.2);
    return new Window(
        wall,
        real(0, wallM - widthM),
        widthM,
        real(0.4, 1.2),
        real(0.3, 0.9),
        real(0, 0.25),
        whole(1, 3),
        chance(0.5) ? Double.NaN : real(0.3, 0.8),
        real(0.6, 0.9),
        real(0.8, 1),
        chance(0.7) ? 1 : real(0.2, 0.9),
        chance(0.5) ? 0 : real(0, 40));
  }

  private AirClimate air() {
    double day = chance(0.7) ? real(17, 25) : real(8, 28);
    double fall = real(0, 6);
    if (chance(0.7)) {
      return new AirClimate(
          Collections.nCopies(12, day), Collections.nCopies(12, day - fall), 55, 450);
    }
    List<Double> days = IntStream.range(0, 12).mapToObj(month -> real(8, 28)).toList();
    return new AirClimate(days, days.stream().map(c -> c - fall).toList(), 55, 450);
  }

  private Bench bench(Room room) {
    double widthM = real(0.5, 1.5);
    double depthM = real(0.3, 0.8);
    return new Bench(
        real(0, room.widthM() - widthM),
        real(0, room.depthM() - depthM),
        widthM,
        depthM,
        real(0.4, 0.9),
        chance(0.5) ? grid(widthM, depthM) : scattered(widthM, depthM),
        0.12,
        1.2,
        "coir");
  }

  private List<Pot> grid(double widthM, double depthM) {
    int pots = in(size.pots());
    int rows = Math.max(1, (int) Math.sqrt(pots / 2.0));
    int columns = pots / rows;
    List<Pot> grid = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        grid.add(
            new Pot(
                (char) ('A' + row) + "" + (column + 1),
                (column + 0.5) * widthM / columns,
                (row + 0.5) * depthM / rows));
      }
    }
    return grid;
  }

  /** Pots on spots of a grid of 10 x 10, so that no two stand in one place. */
  private List<Pot> scattered(double widthM, double depthM) {
    List<Integer> spots =
        shuffled(IntStream.range(0, 100).boxed().toList()).subList(0, in(size.pots()));
    return IntStream.range(0, spots.size())
        .mapToObj(
            i ->
                new Pot(
                    "P" + (i + 1),
                    (spots.get(i) % 10 + 0.5) * widthM / 10,
                    (spots.get(i) / 10 + 0.5) * depthM / 10))
        .toList();
  }

  private Lamp lamp(Bench bench) {
    return new Lamp(
        bench.xM() + real(0, bench.widthM()),
        bench.yM() + real(0, bench.depthM()),
        real(0.2, 1.2),
        real(0.1, 0.4),
        real(30, 250),
        real(1.5, 2.8),
        real(0.3, 0.7),
        LocalTime.of(whole(0, 23), chance(0.7) ? 0 : 30),
        chance(0.8) ? whole(10, 20) : real(0, 24),
        chance(0.7) ? 1 : real(0.2, 1));
  }

  private Nursery nursery() {
    double dayC = chance(0.8) ? real(17, 25) : real(5, 32);
    return new Nursery(
        in(size.cells()),
        in(size.places()),
        real(9, 30),
        real(36, 100),
        chance(0.05) ? 0 : real(50, 250),
        LocalTime.of(whole(0, 23), 0),
        chance(0.7) ? whole(10, 18) : real(4, 24),
        dayC,
        dayC - real(0, 6));
  }

  private int in(Range range) {
    return whole(range.least(), range.most());
  }

  /** A whole number, both ends included. */
  private int whole(int least, int most) {
    return random.nextInt(least, most + 1);
  }

  private double real(double from, double to) {
    return random.nextDouble(from, to);
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  private <T> List<T> shuffled(List<T> list) {
    List<T> copy = new ArrayList<>(list);
    for (int i = copy.size() - 1; i > 0; i--) {
      Collections.swap(copy, i, random.nextInt(i + 1));
    }
    return copy;
  }
}
