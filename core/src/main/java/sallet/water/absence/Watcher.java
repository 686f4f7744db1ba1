package sallet.water.absence;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sallet.household.Lamp;
import sallet.light.HourlyLight;
import sallet.light.RoomLight;
import sallet.water.flood.FloodSchedule;
import sallet.water.flood.PotDay;
import sallet.water.home.BenchDays;
import sallet.water.home.BenchFloods;
import sallet.water.home.HomeBench;
import sallet.water.home.HomeWater;
import sallet.water.home.Learned;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.Tank;
import sallet.water.reservoir.TankForecast;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.LeafCover;

/** Looks at scenes of one absence; light is reckoned once for each set of lamps. */
final class Watcher {
  private static final double FIRST_GUESS_FLOODS = 4;

  private final LocalDate from;
  private final int days;
  private final Learned learned;
  private final Map<List<Lamp>, HourlyLight> light = new HashMap<>();

  Watcher(LocalDate from, int days, Learned learned) {
    this.from = from;
    this.days = days;
    this.learned = learned;
  }

  Outlook look(Scene scene) {
    HomeBench bench = HomeBench.of(scene.household());
    HourlyLight at = light(scene);
    BenchDays bdays = BenchDays.of(scene.household(), at, scene.plants());
    double safe = learned.factor().quantile(HomeWater.SAFE);
    HourlyUse first = bdays.use(bench.around(FIRST_GUESS_FLOODS));
    FloodSchedule schedule = new BenchFloods(bench, first, safe, 0, days).schedule();
    HourlyUse use = bdays.use(bench.around(schedule.floodsPerDay()));
    BenchFloods floods = new BenchFloods(bench, use, safe, 0, days);
    TankForecast tank = tank(bench, scene, use);
    double median = tank.usedL(days - 1);
    Demand demand = Demand.of(median, learned.factor().logSd());
    double usable = bench.tank().usableL(scene.levelL());
    return new Outlook(
        demand,
        usable,
        demand.lasts(usable),
        returnMsCm(scene, median),
        returnMsCm(scene, demand.litresFor(Outlook.SAFE)),
        atRisk(floods, bdays.cover(), schedule),
        mostFragileHours(floods, bdays.cover()),
        schedule,
        tank);
  }

  HourlyLight light(Scene scene) {
    return light.computeIfAbsent(
        scene.household().lamps(), l -> RoomLight.atPots(scene.household(), from, days));
  }

  /** Water of each pot over the absence, at factor 1, mL. */
  List<Double> potsMl(Scene scene) {
    HomeBench bench = HomeBench.of(scene.household());
    HourlyUse use =
        BenchDays.of(scene.household(), light(scene), scene.plants())
            .use(bench.around(FIRST_GUESS_FLOODS));
    return IntStream.range(0, use.pots())
        .mapToObj(pot -> IntStream.range(0, days).mapToDouble(day -> use.potDayMl(pot, day)).sum())
        .toList();
  }

  private TankForecast tank(HomeBench bench, Scene scene, HourlyUse use) {
    List<Double> perDay =
        IntStream.range(0, days)
            .mapToObj(day -> learned.factor().median() * use.dayL(day))
            .toList();
    return tank(bench.tank(), scene, perDay, List.of());
  }

  /** Level and salt of a tank that is filled up on some mornings. */
  TankForecast tank(Tank tank, Scene scene, List<Double> perDayL, List<Integer> filled) {
    return TankForecast.of(
        new TankForecast.Start(
            tank,
            scene.levelL() + tank.fullL() - scene.household().reservoir().volumeL(),
            scene.msCm(),
            learned.factor().logSd(),
            learned.uptake().msCm()),
        from,
        perDayL,
        filled);
  }

  private double returnMsCm(Scene scene, double usedL) {
    return new SaltBooks(scene.levelL(), 0, 0, usedL, learned.uptake().msCm())
        .returnMsCm(scene.msCm());
  }

  private List<String> atRisk(BenchFloods floods, LeafCover cover, FloodSchedule schedule) {
    HomeBench bench = floods.bench();
    return IntStream.range(0, bench.size())
        .filter(pot -> stands(cover, pot))
        .filter(
            pot ->
                schedule.unserved().contains(bench.name(pot))
                    || !outlivesMissedFlood(floods.untilWilting(pot), schedule))
        .mapToObj(bench::name)
        .toList();
  }

  private static boolean outlivesMissedFlood(PotDay pot, FloodSchedule schedule) {
    if (schedule.everyMinutes().isPresent()) {
      return pot.shortestMinutes() >= 2 * schedule.everyMinutes().getAsInt();
    }
    return schedule.startMinutes().stream()
        .allMatch(start -> pot.lastsMinutes(start) >= schedule.minutesToNextButOne(start));
  }

  private double mostFragileHours(BenchFloods floods, LeafCover cover) {
    return IntStream.range(0, floods.bench().size())
        .filter(pot -> stands(cover, pot))
        .mapToDouble(pot -> floods.untilWilting(pot).shortestMinutes() / 60)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private boolean stands(LeafCover cover, int pot) {
    return IntStream.range(0, days).anyMatch(day -> cover.leafCm2(pot, day) > 0);
  }
}
