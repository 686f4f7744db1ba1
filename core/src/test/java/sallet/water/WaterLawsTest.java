package sallet.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sallet.air.MoistAir;
import sallet.air.RoomVapour;
import sallet.water.flood.FloodRun;
import sallet.water.flood.FloodSchedule;
import sallet.water.flood.FloodTimes;
import sallet.water.flood.PotDay;
import sallet.water.flood.Timer;
import sallet.water.medium.Medium;
import sallet.water.medium.PotShape;
import sallet.water.medium.PotWater;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.Salinity;
import sallet.water.transpiration.Canopy;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.LeafCover;
import sallet.water.transpiration.Surroundings;

/** What must hold for any bench. The seed is the name of the case. */
class WaterLawsTest {
  private static final int FILL_MINUTES = 4;

  static LongStream seeds() {
    return LongStream.range(0, 80);
  }

  /** A random bench of pots, each with its use for every hour of three days. */
  private record Bench(List<PotWater> pots, List<PotDay> days, FloodTimes.Light light) {
    static Bench of(long seed) {
      SplittableRandom dice = new SplittableRandom(seed);
      List<Medium> media = Medium.catalogue();
      int on = 15 * dice.nextInt(0, 96);
      int hours = dice.nextInt(8, 19);
      List<PotWater> pots = new ArrayList<>();
      List<PotDay> days = new ArrayList<>();
      for (int i = 0; i < dice.nextInt(1, 20); i++) {
        Medium medium = media.get(dice.nextInt(media.size()));
        PotShape shape = PotShape.straight(dice.nextDouble(0.3, 2), dice.nextDouble(7, 16));
        PotWater water = PotWater.ofTable(medium, shape);
        pots.add(water);
        double day = dice.nextDouble(0.5, 12);
        double night = day * dice.nextDouble(0.1, 0.6);
        days.add(
            new PotDay(
                "P" + i,
                water.allowedMl(),
                water.withDepletion(PotWater.MOST_DEPLETION).allowedMl(),
                IntStream.range(0, 24)
                    .mapToObj(h -> lit(h, on / 60, hours) ? day : night)
                    .toList()));
      }
      return new Bench(pots, days, new FloodTimes.Light(on, hours));
    }

    private static boolean lit(int hour, int on, int hours) {
      return Math.floorMod(hour - on, 24) < hours;
    }

    Bench thirstier(double factor) {
      List<PotDay> more =
          days.stream()
              .map(
                  day ->
                      new PotDay(
                          day.pot(),
                          day.allowedMl(),
                          day.mostMl(),
                          day.mlPerHour().stream().map(ml -> factor * ml).toList()))
              .toList();
      return new Bench(pots, more, light);
    }

    /** Starts at least 24 minutes apart, the day round. */
    static List<Integer> randomStarts(SplittableRandom dice, int number) {
      int spare = 24 * 60 - 24 * number;
      List<Integer> cuts =
          IntStream.range(0, number).mapToObj(i -> dice.nextInt(spare + 1)).sorted().toList();
      return IntStream.range(0, number).mapToObj(i -> cuts.get(i) + 24 * i).toList();
    }

    /** Whether every pot lasts, at its most, from each of these starts to the next. */
    boolean servedBy(List<Integer> starts) {
      return IntStream.range(0, starts.size())
          .allMatch(
              i -> {
                int next = i + 1 < starts.size() ? starts.get(i + 1) : starts.get(0) + 24 * 60;
                return days.stream()
                    .allMatch(
                        day ->
                            day.stretched(5 / 3.0).lastsMinutes(starts.get(i))
                                >= next - starts.get(i));
              });
    }

    FloodSchedule schedule(Timer timer) {
      return FloodTimes.of(days, light, timer, new FloodTimes.Length(13, 24));
    }

    FloodRun run(FloodSchedule schedule, FloodRun.Happens happens) {
      return FloodRun.of(
          pots,
          (pot, hour) -> days.get(pot).mlPerHour().get(hour % 24),
          72,
          schedule,
          FILL_MINUTES,
          happens);
    }
  }

  static List<Timer> timers() {
    return List.of(
        new Timer.Segments(15),
        new Timer.Segments(30),
        new Timer.Minutes(8),
        new Timer.Minutes(40),
        new Timer.Interval(5));
  }

  /**
   * Minute by minute over three days: a pot that is not named as too thirsty never falls below its
   * floor, nor by more than what may go and what it drinks while the tray fills.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void noPotFallsBelowItsFloor(long seed) {
    Bench bench = Bench.of(seed);
    for (Timer timer : timers()) {
      FloodSchedule schedule = bench.schedule(timer);
      FloodRun run = bench.run(schedule, flood -> true);
      for (int i = 0; i < bench.pots.size(); i++) {
        PotDay day = bench.days.get(i);
        if (!schedule.unserved().contains(day.pot())) {
          double whileFilling =
              day.mlPerHour().stream().mapToDouble(x -> x).max().orElse(0) * FILL_MINUTES / 60;
          double gone = bench.pots.get(i).fullMl() - run.lowestMl(i);
          assertThat(gone)
              .as("pot %s with %s and %s", day, timer, schedule)
              .isLessThanOrEqualTo(
                  day.stretched(schedule.stretch()).allowedMl() + whileFilling + 1e-6);
          assertThat(run.lowestMl(i)).isGreaterThanOrEqualTo(bench.pots.get(i).floorMl() - 1e-6);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theTimerCanDoWhatItIsTold(long seed) {
    Bench bench = Bench.of(seed);
    for (Timer timer : timers()) {
      FloodSchedule schedule = bench.schedule(timer);
      assertThat(schedule.floodsPerDay()).isBetween(0.99, (double) timer.mostStarts());
      assertThat(schedule.onMinutes() % timer.gridMinutes()).isZero();
      assertThat(schedule.onMinutes()).isGreaterThanOrEqualTo(13);
      List<Integer> starts = schedule.startMinutes();
      for (int i = 0; i < starts.size(); i++) {
        assertThat(starts.get(i)).isBetween(0, 24 * 60 - 1);
        int next = i + 1 < starts.size() ? starts.get(i + 1) : starts.get(0) + 24 * 60;
        if (schedule.everyMinutes().isEmpty()) {
          assertThat(starts.get(i) % timer.gridMinutes()).isZero();
          assertThat(next - starts.get(i)).as("%s", schedule).isGreaterThanOrEqualTo(24);
        }
      }
    }
  }

  /**
   * Named are exactly those pots that a timer with starts enough cannot serve: at their most they
   * last, from some minute on, less than from one flood to the next that it can do.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void onlyPotsTheTimerCannotServeAreLeftOut(long seed) {
    Bench bench = Bench.of(seed);
    SplittableRandom dice = new SplittableRandom(seed);
    double thirst = dice.nextDouble(1, 12);
    Bench dry = bench.thirstier(thirst);
    List<String> tooFast =
        dry.days.stream()
            .filter(day -> shortest(day.stretched(5 / 3.0)) < 24)
            .map(PotDay::pot)
            .toList();
    assertThat(dry.schedule(new Timer.Minutes(60)).unserved()).isEqualTo(tooFast);
  }

  private static double shortest(PotDay day) {
    return IntStream.range(0, 24 * 60).mapToDouble(day::lastsMinutes).min().orElseThrow();
  }

  /** Some of those benches are too dry, and some are not. */
  @Test
  void thirstMakesPotsTooFast() {
    List<Boolean> served =
        seeds()
            .mapToObj(Bench::of)
            .map(bench -> bench.thirstier(8).schedule(new Timer.Minutes(60)).unserved().isEmpty())
            .toList();
    assertThat(served).contains(true, false);
  }

  /**
   * The timer with few starts does what it can: where any random schedule of so many starts serves
   * all pots, none is named; and a thirstier bench is never served better.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void aBenchThatAnyScheduleServesIsServed(long seed) {
    Bench usual = Bench.of(seed);
    SplittableRandom dice = new SplittableRandom(seed);
    int most = dice.nextInt(2, 9);
    Timer timer = new Timer.Minutes(most);
    boolean served = true;
    for (double thirst = 0.5; thirst < 60; thirst *= 1.3) {
      Bench bench = usual.thirstier(thirst);
      boolean found = bench.schedule(timer).unserved().isEmpty();
      assertThat(served || !found).as("thirst %s", thirst).isTrue();
      served = found;
      for (int i = 0; i < 200 && !found; i++) {
        assertThat(bench.servedBy(Bench.randomStarts(dice, most))).isFalse();
      }
    }
    assertThat(served).isFalse();
  }

  /** What the reservoir gave is what the air got and what the pots hold more than before. */
  @ParameterizedTest
  @MethodSource("seeds")
  void waterIsConservedOverAnySchedule(long seed) {
    Bench bench = Bench.of(seed);
    SplittableRandom dice = new SplittableRandom(seed);
    List<Boolean> happens = IntStream.range(0, 500).mapToObj(i -> dice.nextInt(3) > 0).toList();
    FloodRun run = bench.run(bench.schedule(new Timer.Segments(15)), happens::get);
    double before = bench.pots.stream().mapToDouble(PotWater::fullMl).sum();
    double after = IntStream.range(0, bench.pots.size()).mapToDouble(run::endMl).sum();
    assertThat(run.takenMl()).isCloseTo(run.usedMl() + after - before, within(1e-6));
    assertThat(run.floods()).isPositive();
    assertThat(run.usedMl()).isPositive();
  }

  /** Salt in the tank and salt drunk are the salt there was. */
  @ParameterizedTest
  @MethodSource("seeds")
  void saltIsConserved(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    double full = dice.nextDouble(20, 100);
    double end = full * dice.nextDouble(0.3, 0.95);
    double start = dice.nextDouble(0.8, 2.5);
    double drunk = dice.nextDouble(0.2, 0.9);
    double ec = Salinity.after(start, full, end, drunk, 1);
    assertThat(ec * end + drunk * (full - end)).isCloseTo(start * full, within(1e-9));
    assertThat(Salinity.drunkMsCm(start, full, ec, end)).isCloseTo(drunk, within(1e-9));
    assertThat(Salinity.highestStart(ec, full, end, drunk, 1)).isCloseTo(start, within(1e-9));
    double topped = Salinity.mixed(ec, end, 0.1, full - end);
    assertThat(topped * full).isCloseTo(ec * end + 0.1 * (full - end), within(1e-9));
  }

  private static double dayL(double humidity, double ppfd, double leafCm2, double boundary) {
    HourlyUse use =
        HourlyUse.of(
            SteadyBench.lamp(2, 1, ppfd, 15),
            SteadyBench.air(1, 20, day -> humidity),
            LeafCover.told(
                SteadyBench.FIRST,
                2,
                1,
                (pot, day) -> leafCm2,
                (pot, day) -> leafCm2 / (1 + leafCm2 / 600)),
            new Surroundings(boundary, 90, 0.01));
    return use.dayL(0);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void drierAirMoreLightMoreLeafNeverUseLess(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    double humidity = dice.nextDouble(25, 90);
    double ppfd = dice.nextDouble(0, 600);
    double leaf = dice.nextDouble(5, 4000);
    double boundary = dice.nextDouble(80, 250);
    double use = dayL(humidity, ppfd, leaf, boundary);
    assertThat(dayL(humidity - dice.nextDouble(20), ppfd, leaf, boundary))
        .isGreaterThanOrEqualTo(use);
    assertThat(dayL(humidity, ppfd + dice.nextDouble(300), leaf, boundary))
        .isGreaterThanOrEqualTo(use);
    assertThat(dayL(humidity, ppfd, leaf * dice.nextDouble(1, 3), boundary))
        .isGreaterThanOrEqualTo(use);
    assertThat(use).isPositive();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreLitresNeverLastLessSurely(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    Demand demand = Demand.of(dice.nextDouble(1, 60), dice.nextDouble(0.05, 0.4));
    double litres = dice.nextDouble(0, 80);
    assertThat(demand.lasts(litres + dice.nextDouble(10)))
        .isGreaterThanOrEqualTo(demand.lasts(litres));
    assertThat(demand.lasts(demand.litresFor(0.95))).isCloseTo(0.95, within(1e-9));
    assertThat(demand.lasts(0)).isZero();
  }

  /** Mixing: the room's air holds what came in and what was given off, and no more than it can. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aSettledRoomHoldsWhatComesIn(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    RoomVapour room = new RoomVapour(dice.nextDouble(10, 60), dice.nextDouble(0.2, 1));
    MoistAir outdoors = MoistAir.of(dice.nextDouble(-10, 10), dice.nextDouble(50, 100));
    double vapour = dice.nextDouble(0, 60);
    MoistAir inside = room.settled(outdoors, 20, vapour);
    MoistAir without = room.settled(outdoors, 20, 0);
    assertThat(inside.humidityPercent()).isLessThanOrEqualTo(100 + 1e-9);
    if (inside.humidityPercent() < 99.9) {
      double leaves = (inside.waterGM3() - without.waterGM3()) * room.volumeM3();
      assertThat(leaves * room.changesPerHour()).isCloseTo(vapour, within(1e-6));
    }
    assertThat(room.after(inside, vapour, room.changesPerHour(), vapour).waterGM3())
        .isCloseTo(inside.waterGM3(), within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theDryLimitOfAPotIsKept(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    for (Medium medium : Medium.catalogue()) {
      PotShape shape = PotShape.straight(dice.nextDouble(0.1, 3), dice.nextDouble(4, 25));
      PotWater pot = PotWater.ofTable(medium, shape);
      assertThat(pot.wiltMl()).isLessThanOrEqualTo(pot.floorMl());
      assertThat(pot.floorMl()).isLessThan(pot.fullMl());
      assertThat(pot.fullMl()).isLessThan(pot.volumeMl());
      assertThat(pot.allowedMl()).isPositive();
      assertThat(PotWater.afterDrying(medium, shape).fullMl()).isLessThanOrEqualTo(pot.fullMl());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aFanNeverSavesWaterInTheDark(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    double humidity = dice.nextDouble(30, 85);
    double leaf = dice.nextDouble(50, 2000);
    assertThat(dayL(humidity, 0, leaf, Canopy.FAN_SM))
        .isGreaterThanOrEqualTo(dayL(humidity, 0, leaf, Canopy.STILL_SM));
  }
}
