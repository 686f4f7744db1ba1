package sallet.app.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.crop.Catalogue;
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
import sallet.plan.BowlWeek;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;
import sallet.plan.SowingPlan;

/**
 * An invented household with a glazed porch in the south, and a plan of 20 weeks and 13 batches
 * written by hand: no planner made it. Week w has its bowl on 28 November 2026 plus w weeks.
 */
public final class PorchPlan {
  public static final LocalDate FROM = LocalDate.of(2026, 11, 28);
  static final int WEEKS = 20;
  private static final int ONE_AWAY = 15;
  private static final int ALL_AWAY = 18;

  private PorchPlan() {}

  public static Catalogue catalogue() {
    return Catalogue.builtIn();
  }

  public static Household household() {
    return household("A6");
  }

  /** The household with another name for its last front pot. */
  public static Household household(String lastFrontPot) {
    return household(new Bench(0.4, 1.6, 1.2, 0.6, 0.7, pots(lastFrontPot), 0.12, 1.2, "coir"));
  }

  /** The household with another bench. */
  public static Household household(Bench bench) {
    Nursery nursery = new Nursery(40, 24, 16, 49, 150, LocalTime.of(6, 0), 16, 20, 18);
    return new Household(
        new Eaters(2, 240, 3, List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY)),
        List.of(
            new Absence(bowl(ONE_AWAY).minusDays(2), bowl(ONE_AWAY).plusDays(1), 1),
            new Absence(bowl(ALL_AWAY).minusDays(5), bowl(ALL_AWAY).plusDays(2), 2)),
        new CropWishes(List.of(), List.of()),
        new Place(-45.9, 170.5, 2, ZoneId.of("Pacific/Auckland"), new WeatherSource.Nearest()),
        room(),
        bench,
        Optional.of(new Lamp(1.0, 1.9, 0.9, 0.3, 120, 2.2, 0.5, LocalTime.of(6, 0), 16, 1)),
        nursery,
        new Reservoir(60));
  }

  private static Room room() {
    return new Room(
        3,
        2.4,
        2.4,
        0,
        new Room.Reflectance(0.2, 0.6, 0.8),
        0.2,
        new AirClimate(Collections.nCopies(12, 19.0), Collections.nCopies(12, 14.0), 55, 450),
        List.of(new Window(Wall.NORTH, 0.4, 1.8, 1.2, 0.9, 0.1, 2, Double.NaN, 0.8, 0.9, 1, 5)));
  }

  private static List<Pot> pots(String lastFrontPot) {
    List<Pot> pots = new ArrayList<>();
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 6; column++) {
        String name = "ABC".charAt(row) + "" + (column + 1);
        pots.add(
            new Pot(name.equals("A6") ? lastFrontPot : name, 0.1 + 0.2 * column, 0.1 + 0.2 * row));
      }
    }
    return pots;
  }

  public static SowingPlan plan() {
    return plan("A6");
  }

  /** The plan as it is reported. */
  static PlanReport report() {
    return report(plan());
  }

  /** A plan for this household as it is reported. */
  static PlanReport report(SowingPlan plan) {
    return PlanReport.of(PlanAnswer.of(plan), household(), catalogue(), light());
  }

  /** The plan with another name for the last front pot. */
  public static SowingPlan plan(String lastFrontPot) {
    List<Sowing> sowings = sowings().stream().map(s -> renamed(s, lastFrontPot)).toList();
    return new SowingPlan(
        FROM,
        IntStream.range(0, WEEKS)
            .boxed()
            .flatMap(w -> Stream.of(bowl(w), bowl(w).plusDays(4)))
            .filter(day -> !day.isAfter(bowl(WEEKS - 1)))
            .toList(),
        1.15,
        weeks(sowings),
        List.of(),
        sowings,
        List.of(),
        new SowingPlan.Objective(1893, 1790, 146, 24, 31.4, 88, 74, 0),
        new SowingPlan.SolverReport(
            "good",
            7.9,
            List.of(
                "growth of 8 crops in 3 groups of pots",
                "28 rounds of the linear plan, 1733 lives",
                "integer step stopped at its time limit")),
        List.of(
            new SowingPlan.PotGroup("window", names('C', "A6"), 13.2, 400),
            new SowingPlan.PotGroup("middle", names('B', "A6"), 10.6, 400),
            new SowingPlan.PotGroup("front", names('A', lastFrontPot), 7.9, 400)),
        List.of(),
        List.of());
  }

  /** A plan in which nothing can be sown. */
  static SowingPlan empty() {
    return new SowingPlan(
        FROM,
        List.of(FROM),
        1,
        List.of(new BowlWeek(FROM, 240, false, 0, 0, List.of(), List.of())),
        List.of(),
        List.of(),
        List.of(),
        new SowingPlan.Objective(0, Double.NaN, 0, 0, 0, 0, 0, 0),
        new SowingPlan.SolverReport("empty", 0.1, List.of()),
        List.of(),
        List.of(),
        List.of());
  }

  private static List<String> names(char row, String lastFrontPot) {
    return IntStream.rangeClosed(1, 6)
        .mapToObj(column -> row == 'A' && column == 6 ? lastFrontPot : "" + row + column)
        .toList();
  }

  private static List<Sowing> sowings() {
    return List.of(
        sow("B01", "mizuna", 0, 6, 1, course(1, 3, "C1 C2 C3 C4", true, 4, 18, 24, 28, 40)),
        sow(
            "B02",
            "loose-leaf lettuce, green",
            0,
            4,
            1,
            course(1, 3, "C5 C6 B1", true, 5, 20, 26, 30, 32, 32, 90)),
        sow(
            "B03",
            "Swiss chard",
            0,
            4,
            1,
            course(2, 4, "B2 B3", true, 6, 22, 28, 32, 34, 34, 34, 32, 30, 70)),
        sow("B04", "salad rocket", 1, 3, 3, cleared(3, 4, "B4 B5", 10, 12, 6, 20, 24, 24)),
        sow(
            "B05",
            "butterhead lettuce",
            2,
            4,
            1,
            course(4, 5, "B6 A1", true, 8, 100),
            course(4, 5, "A2", true, 9, 115)),
        sow(
            "B06",
            "loose-leaf lettuce, red",
            4,
            4,
            1,
            course(5, 7, "C1 C2 C3", true, 8, 24, 28, 30, 30, 30, 80)),
        sow("B07", "mizuna", 5, 5, 1, course(6, 8, "C4 A3 A6", true, 9, 20, 26, 28, 40)),
        sow(
            "B08",
            "cos (romaine) lettuce",
            6,
            4,
            1,
            course(7, 10, "C5 C6 B1", true, 12, 30, 34, 36, 100)),
        sow("B09", "spinach", 7, 6, 3, course(9, 10, "B4 B5 B6", true, 11, 18, 22, 24, 30)),
        sow(
            "B10",
            "loose-leaf lettuce, green",
            9,
            4,
            1,
            course(10, 13, "C1 C2 C3", true, 14, 26, 28, 30, 30)),
        sow("B11", "Swiss chard", 10, 4, 1, cleared(12, 14, "B2 B3", 19, 8, 16, 24, 28)),
        sow(
            "B12",
            "butterhead lettuce",
            11,
            4,
            1,
            course(12, 14, "C4", true, 16, 105),
            course(12, 14, "A3 A6", true, 19, 120)),
        sow("B13", "mizuna", 12, 5, 1, course(13, 15, "B4 B5 B6", true, 16, 20, 26)));
  }

  private static Sowing renamed(Sowing s, String lastFrontPot) {
    List<Course> courses = s.courses().stream().map(c -> renamed(c, lastFrontPot)).toList();
    return new Sowing(s.batch(), s.date(), s.crop(), s.seeds(), s.cells(), s.emergence(), courses);
  }

  private static Course renamed(Course c, String lastFrontPot) {
    List<String> pots =
        c.pots().stream().map(pot -> pot.equals("A6") ? lastFrontPot : pot).toList();
    return new Course(
        c.plants(),
        c.toNursery(),
        c.toBench(),
        c.group(),
        pots,
        c.picks(),
        c.end(),
        c.lifted(),
        c.clearedGrams());
  }

  private static Sowing sow(
      String batch, String crop, int week, int cells, int seedsPerCell, Course... courses) {
    LocalDate date = bowl(week);
    return new Sowing(
        batch, date, crop, cells * seedsPerCell, cells, date.plusDays(5), List.of(courses));
  }

  /** Plants picked each week from a week on, each for the grams given; the last time lifted. */
  private static Course course(
      int nursery, int bench, String pots, boolean lifted, int firstPick, double... grams) {
    List<String> names = List.of(pots.split(" "));
    List<Pick> picks = new ArrayList<>();
    for (int i = 0; i < grams.length; i++) {
      boolean last = lifted && i == grams.length - 1;
      picks.add(new Pick(bowl(firstPick + i), last ? 1 : 0.4, grams[i]));
    }
    LocalDate end = bowl(firstPick + grams.length - 1);
    int group = "CBA".indexOf(pots.charAt(0));
    return new Course(
        names.size(), bowl(nursery), bowl(bench), group, names, picks, end, lifted, 0);
  }

  private static Course cleared(
      int nursery, int bench, String pots, int end, double wasted, int firstPick, double... grams) {
    Course c = course(nursery, bench, pots, false, firstPick, grams);
    return new Course(
        c.plants(),
        c.toNursery(),
        c.toBench(),
        c.group(),
        c.pots(),
        c.picks(),
        bowl(end),
        false,
        wasted);
  }

  static LocalDate bowl(int week) {
    return FROM.plusWeeks(week);
  }

  private static double demand(int week) {
    return week == ALL_AWAY ? 0 : week == ONE_AWAY ? 120 : 240;
  }

  /** Bowls filled from the picks of the day and what the day before left in the fridge. */
  private static List<BowlWeek> weeks(List<Sowing> sowings) {
    List<BowlWeek> weeks = new ArrayList<>();
    Map<String, Double> fridge = Map.of();
    for (int w = 0; w < WEEKS; w++) {
      Map<String, Double> fresh = picked(sowings, bowl(w));
      Map<String, Double> all = new LinkedHashMap<>(fridge);
      fresh.forEach((crop, grams) -> all.merge(crop, grams, Double::sum));
      double have = sum(all);
      double share = have <= 0 ? 0 : Math.min(1, demand(w) * 1.15 / have);
      List<BowlWeek.Kind> kinds = new ArrayList<>();
      all.forEach((crop, grams) -> kinds.add(new BowlWeek.Kind(crop, grams * share)));
      kinds.sort((a, b) -> Double.compare(b.grams(), a.grams()));
      List<String> full = w == 4 || w == 5 ? List.of("nursery", "window pots") : List.of();
      weeks.add(
          new BowlWeek(
              bowl(w),
              demand(w),
              w >= 4,
              sum(fresh),
              have * share,
              share == 0 ? List.of() : kinds,
              full));
      fridge = new LinkedHashMap<>();
      double carried = Math.min(1 - share, 0.5);
      for (Map.Entry<String, Double> e : fresh.entrySet()) {
        fridge.put(e.getKey(), e.getValue() * carried);
      }
    }
    return weeks;
  }

  private static Map<String, Double> picked(List<Sowing> sowings, LocalDate day) {
    Map<String, Double> grams = new LinkedHashMap<>();
    for (Sowing sowing : sowings) {
      for (Course course : sowing.courses()) {
        for (Pick pick : course.picks()) {
          if (pick.date().equals(day)) {
            grams.merge(sowing.crop(), pick.gramsPerPlant() * course.plants(), Double::sum);
          }
        }
      }
    }
    return grams;
  }

  private static double sum(Map<String, Double> grams) {
    return grams.values().stream().flatMapToDouble(DoubleStream::of).sum();
  }

  /** Light of each pot in each month: dims towards autumn and away from the window. */
  public static BenchLight light() {
    return light("A6");
  }

  /** Light with another name for the last front pot. */
  public static BenchLight light(String lastFrontPot) {
    List<BenchLight.Period> periods = new ArrayList<>();
    double[] monthFactor = {1.12, 1.15, 1.1, 1.0, 0.85, 0.7};
    LocalDate from = FROM;
    for (double factor : monthFactor) {
      LocalDate to = from.withDayOfMonth(from.lengthOfMonth());
      Map<String, Double> dli = new LinkedHashMap<>();
      for (Pot pot : pots(lastFrontPot)) {
        double edge = 1 - 0.5 * Math.abs(pot.xM() - 0.6);
        dli.put(pot.name(), factor * edge * (6.5 + 13 * pot.yM()));
      }
      periods.add(new BenchLight.Period(from, to, dli));
      from = to.plusDays(1);
    }
    return new BenchLight(periods);
  }
}
