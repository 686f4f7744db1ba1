package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
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
import sallet.water.home.Learned;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.Tank;
import sallet.water.reservoir.TankForecast;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.LeafCover;
import sallet.water.transpiration.StandingPlant;

/**
 * Looks at scenes of one absence; light is reckoned once for each set of lamps, leaves once for
 * each set of plants.
 */
final class Watcher {
  private final LocalDate from;
  private final int days;
  private final Learned learned;
  private final Map<List<Lamp>, HourlyLight> light = new HashMap<>();
  private final IdentityHashMap<List<StandingPlant>, LeafCover> leaves = new IdentityHashMap<>();

  Watcher(LocalDate from, int days, Learned learned) {
    this.from = from;
    this.days = days;
    this.learned = learned;
  }

  Outlook look(Scene scene) {
    HomeBench bench = HomeBench.of(scene.household());
    BenchDays bdays = days(scene);
    BenchFloods floods = BenchFloods.of(bench, bdays, learned.factor(), days);
    FloodSchedule schedule = floods.schedule();
    HourlyUse use = floods.useBy(schedule);
    TankForecast tank = tank(bench, scene, use);
    double median = tank.usedL(days - 1);
    double before = scene.usedSinceL();
    Demand since = Demand.of(before + median, learned.factor().logSd());
    return new Outlook(
        Demand.of(median, learned.factor().logSd()),
        bench.tank().usableL(scene.levelL()),
        since.lasts(bench.tank().usableL(scene.levelL() + before)),
        returnMsCm(scene, median),
        returnMsCm(scene, since.litresFor(Outlook.SAFE) - before),
        atRisk(floods, bdays.cover(), schedule),
        mostFragileHours(floods, bdays.cover()),
        schedule,
        tank);
  }

  private BenchDays days(Scene scene) {
    HourlyLight at = light(scene);
    return BenchDays.of(
        scene.household(),
        at,
        leaves.computeIfAbsent(scene.plants(), p -> LeafCover.of(p, from, at.places(), days)));
  }

  HourlyLight light(Scene scene) {
    return light.computeIfAbsent(
        scene.household().lamps(), l -> RoomLight.atPots(scene.household(), from, days));
  }

  /** Water of each pot over the absence, at factor 1, mL. */
  List<Double> potsMl(Scene scene) {
    HomeBench bench = HomeBench.of(scene.household());
    HourlyUse use = days(scene).use(bench.around(0));
    return IntStream.range(0, use.pots())
        .mapToObj(pot -> IntStream.range(0, days).mapToDouble(day -> use.potDayMl(pot, day)).sum())
        .toList();
  }

  /** Level and salt on the days away, as unsure as the days since the level was sure make them. */
  private TankForecast tank(HomeBench bench, Scene scene, HourlyUse use) {
    List<Double> perDay = new ArrayList<>(scene.usedL());
    for (int day = 0; day < days; day++) {
      perDay.add(learned.factor().median() * use.dayL(day));
    }
    double used = scene.usedSinceL();
    double sureL = scene.levelL() + used;
    double salt = scene.levelL() * scene.msCm() + used * learned.uptake().msCm();
    int before = scene.usedL().size();
    return TankForecast.of(
            start(bench.tank(), sureL, sureL > 0 ? salt / sureL : scene.msCm()),
            from.minusDays(before),
            perDay)
        .after(before);
  }

  /** Level and salt of a tank that is filled up on some mornings. */
  TankForecast tank(Tank tank, Scene scene, List<Double> perDayL, List<Integer> filled) {
    double more = tank.fullL() - scene.household().reservoir().volumeL();
    return TankForecast.of(start(tank, scene.levelL() + more, scene.msCm()), from, perDayL, filled);
  }

  private TankForecast.Start start(Tank tank, double litres, double msCm) {
    return new TankForecast.Start(
        tank, litres, msCm, learned.factor().logSd(), learned.uptake().msCm());
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
