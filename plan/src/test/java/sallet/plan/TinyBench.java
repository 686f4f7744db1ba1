package sallet.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.crop.PlantState;
import sallet.household.Eaters;
import sallet.household.Household;
import sallet.plan.linear.LinearSolver;

/**
 * A planning question small enough to be answered by trying everything: one to three pots in steady
 * light, one or two crops, a few weeks. Made from a seed; each part can be set otherwise.
 */
final class TinyBench {
  private static final LocalDate FROM = LocalDate.of(2026, 11, 28);

  private static final List<String> CROPS =
      List.of(
          "loose-leaf lettuce, green",
          "mizuna",
          "Swiss chard",
          "salad rocket",
          "pak choi",
          "crisphead lettuce",
          "basil");

  private final SplittableRandom random;
  private final List<Crop> crops = new ArrayList<>();
  private final Eaters eaters;
  private final int bowls;
  private final List<Double> potLight = new ArrayList<>();
  private final double nurseryG;
  private final double inHandG;
  private final LinearSolver solver;
  int pots;
  int cells;
  int places;
  private int standing;

  TinyBench(long seed) {
    random = new SplittableRandom(seed);
    for (int k = random.nextInt(1, 3); k > 0; k--) {
      Crop crop = Catalogue.builtIn().find(CROPS.get(random.nextInt(CROPS.size()))).orElseThrow();
      if (!crops.contains(crop)) {
        crops.add(crop);
      }
    }
    List<DayOfWeek> days =
        random.nextInt(3) > 0
            ? List.of(DayOfWeek.SATURDAY)
            : List.of(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY);
    eaters = new Eaters(2, random.nextInt(10, 160), random.nextInt(1, 3), days);
    bowls = days.size() == 1 ? random.nextInt(6, 9) : random.nextInt(5, 7);
    pots = random.nextInt(1, 4);
    potLight.add(random.nextDouble(10, 28));
    if (random.nextInt(3) == 0 && pots > 1) {
      potLight.add(random.nextDouble(6, 12));
    }
    cells = random.nextInt(1, 7);
    places = random.nextInt(1, 4);
    nurseryG = random.nextDouble(12, 22);
    inHandG = random.nextInt(4) == 0 ? random.nextDouble(0, 60) : 0;
    standing = random.nextInt(3);
    solver = random.nextInt(2) == 0 ? LinearSolver.NATIVE : LinearSolver.JAVA;
  }

  /** The same with so many groups of plants that stand. */
  TinyBench standing(int groups) {
    standing = groups;
    return this;
  }

  /** The question. */
  Instance instance() {
    Household bench = Households.bench(100, List.of(), List.of());
    Household household =
        new Household(
            eaters,
            List.of(),
            bench.crops(),
            bench.place(),
            bench.room(),
            bench.bench(),
            bench.lamp(),
            bench.nursery(),
            bench.reservoir());
    TaskCalendar calendar = new TaskCalendar(eaters, List.of(), FROM, bowls);
    Surroundings at = surroundings(calendar);
    Present present =
        new Present(plants(at), List.of(), Map.of(), Map.of(), Map.of(), List.of(), false);
    Instance asked =
        new Instance(
            household,
            crops,
            crops.size(),
            calendar,
            at,
            StandingPlants.of(present, crops, at, FROM),
            calendar.slots().stream().map(day -> 0).toList(),
            crops.stream().map(c -> inHandG).toList(),
            List.of(),
            0,
            crops.stream().map(c -> Question.VIGOUR).toList(),
            1.1,
            0,
            solver);
    return asked.reaching(Courses.all(asked));
  }

  private Surroundings surroundings(TaskCalendar calendar) {
    List<Surroundings.Group> groups = new ArrayList<>();
    for (int g = 0; g < potLight.size(); g++) {
      int share = potLight.size() == 1 ? pots : g == 0 ? pots - 1 : 1;
      String row = "" + (char) ('A' + g);
      groups.add(
          new Surroundings.Group(
              IntStream.rangeClosed(1, share).mapToObj(i -> row + i).toList(),
              steady(potLight.get(g), calendar),
              225,
              potLight.get(g) / 2));
    }
    return new Surroundings(steady(nurseryG, calendar), 16, 49, 19, cells, places, groups);
  }

  private static PlaceDays steady(double assimilateG, TaskCalendar calendar) {
    int days = calendar.days() + 120;
    return new PlaceDays(
        FROM.minusDays(120),
        filled(days, assimilateG),
        filled(days, assimilateG / 2),
        filled(days, 19),
        filled(days, 12),
        filled(days, 14));
  }

  private static double[] filled(int days, double value) {
    double[] all = new double[days];
    Arrays.fill(all, value);
    return all;
  }

  private List<Present.Plants> plants(Surroundings at) {
    SplittableRandom own = new SplittableRandom(31 + random.split().nextInt(1000));
    List<Present.Plants> all = new ArrayList<>();
    List<String> pots = new ArrayList<>(at.groups().get(0).pots());
    for (int s = 0; s < standing; s++) {
      Crop crop = crops.get(own.nextInt(crops.size()));
      boolean onBench = !pots.isEmpty() && own.nextInt(3) > 0;
      int age = onBench ? own.nextInt(20, 50) : own.nextInt(3, 20);
      double shootG = onBench ? own.nextDouble(0.5, 8) : own.nextDouble(0.02, 0.3);
      all.add(
          new Present.Plants(
              "batch " + s,
              crop.name(),
              1,
              FROM.minusDays(age + 5),
              FROM.minusDays(age),
              Optional.of(FROM.minusDays(age - 2)),
              onBench ? Optional.of(FROM.minusDays(3)) : Optional.empty(),
              onBench ? List.of(pots.remove(0)) : List.of(),
              0,
              own.nextDouble(0.5, 1.2),
              new PlantState(
                  shootG, 0.14 * shootG, 0.08 * shootG, 300 * shootG, own.nextDouble(5, 20)),
              own.nextInt(3) == 0 ? Optional.of(FROM.minusDays(2)) : Optional.empty()));
    }
    return all;
  }
}
