package sallet.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import sallet.water.learn.Interval;
import sallet.water.learn.Uptake;
import sallet.water.learn.UseFactor;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.Salinity;
import sallet.water.transpiration.Canopy;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.LeafCover;
import sallet.water.transpiration.Surroundings;

/**
 * Two hundred benches with a truth that Sallet does not see: a factor, a humidity meter that is
 * off, weather from day to day, growth that is not as thought, and what plants drink. It reads the
 * level (and the EC) four times in twelve days, and forecasts the next fourteen.
 */
class SimulatedBenchesTest {
  private static final int BENCHES = 200;
  private static final int READ_DAYS = 12;
  private static final int EVERY_DAYS = 4;
  private static final int FORECAST_DAYS = 14;
  private static final int DAYS = READ_DAYS + FORECAST_DAYS;
  private static final double RULER_L = 0.3;
  private static final double CAN = 0.02;
  private static final double METER_MS_CM = 0.03;
  private static final double TANK_L = 60;

  /** How far growth is from what was thought, 1/d: 8 % more or less leaf after a fortnight. */
  private static final double GROWTH_MISS = 0.006;

  private static final List<Trial> TRIALS =
      LongStream.range(0, BENCHES).mapToObj(SimulatedBenchesTest::trial).toList();

  /**
   * One bench.
   *
   * @param forecastL what was forecast, median
   * @param before the forecast before any reading
   * @param demand the forecast with its spread
   * @param trulyL what was used
   * @param usableL water there was, at random
   * @param uptake what was learned of the plants' drinking
   * @param trulyMsCm what they drank
   */
  private record Trial(
      double forecastL,
      double before,
      Demand demand,
      double trulyL,
      double usableL,
      Uptake uptake,
      double trulyMsCm) {

    double error() {
      return forecastL / trulyL - 1;
    }
  }

  private static Trial trial(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    int pots = dice.nextInt(8, 25);
    double ppfd = dice.nextDouble(120, 300);
    double warmC = dice.nextDouble(18, 23);
    double told = dice.nextDouble(40, 65);
    double leaf = dice.nextDouble(300, 1500);
    double growth = dice.nextDouble(0, 0.05);
    Surroundings around = new Surroundings(Canopy.STILL_SM, 90, 0);
    HourlyUse thought = use(pots, ppfd, warmC, day -> told, leaf, growth, around);

    double factor = Math.exp(Math.log(0.85) + 0.35 * dice.nextGaussian());
    double bias = 4 * dice.nextGaussian();
    List<Double> weather = IntStream.range(0, DAYS).mapToObj(d -> 4 * dice.nextGaussian()).toList();
    double trueGrowth = Math.max(0, growth + GROWTH_MISS * dice.nextGaussian());
    HourlyUse real =
        use(
            pots,
            ppfd,
            warmC,
            day -> Math.max(15, Math.min(95, told + bias + weather.get(day))),
            leaf,
            trueGrowth,
            around);
    List<Double> loss =
        IntStream.range(0, DAYS)
            .mapToObj(d -> factor * real.dayL(d) * Math.exp(0.08 * dice.nextGaussian()))
            .toList();
    return learnt(thought, loss, dice);
  }

  private static HourlyUse use(
      int pots,
      double ppfd,
      double warmC,
      SteadyBench.Humidity humidity,
      double leafCm2,
      double growth,
      Surroundings around) {
    return HourlyUse.of(
        SteadyBench.lamp(pots, DAYS, ppfd, 15),
        SteadyBench.air(DAYS, warmC, humidity),
        LeafCover.told(
            SteadyBench.FIRST,
            pots,
            DAYS,
            (pot, day) -> (0.6 + 0.8 * pot / pots) * leafCm2 * Math.exp(growth * day),
            (pot, day) -> 380),
        around);
  }

  /** Reads the levels, learns, forecasts. The tank is filled with plain water at each reading. */
  private static Trial learnt(HourlyUse thought, List<Double> loss, SplittableRandom dice) {
    double drinks = 0.4 + 0.6 * dice.nextDouble();
    UseFactor factor = UseFactor.prior();
    double msCm = 1.4;
    double left = TANK_L;
    double gone = 0;
    double read = TANK_L + RULER_L * dice.nextGaussian();
    double firstRead = msCm + METER_MS_CM * dice.nextGaussian();
    for (int start = 0; start < READ_DAYS; start += EVERY_DAYS) {
      double added = start == 0 ? 0 : TANK_L - left;
      msCm = Salinity.mixed(msCm, left, 0, added);
      left = TANK_L - sum(loss, start, EVERY_DAYS);
      msCm = Salinity.after(msCm, TANK_L, left, drinks, 1);
      double from = read + added * (1 + CAN * dice.nextGaussian());
      read = left + RULER_L * dice.nextGaussian();
      Interval interval =
          new Interval(from, read, sum(days(thought), start, EVERY_DAYS), EVERY_DAYS);
      UseFactor old = start == 0 ? factor : factor.later(EVERY_DAYS);
      factor = old.after(List.of(interval.ratio()), interval.logSd());
      gone += interval.lossL();
    }
    double lastRead = msCm + METER_MS_CM * dice.nextGaussian();
    double drunk = (TANK_L * firstRead - left * lastRead) / gone;
    Uptake uptake = Uptake.prior().after(drunk, TANK_L, left, gone);
    double computed = sum(days(thought), READ_DAYS, FORECAST_DAYS);
    Demand demand = Demand.of(factor.median() * computed, factor.logSd());
    return new Trial(
        demand.medianL(),
        UseFactor.prior().median() * computed,
        demand,
        sum(loss, READ_DAYS, FORECAST_DAYS),
        demand.medianL() * dice.nextDouble(0.6, 2.2),
        uptake,
        drinks);
  }

  private static List<Double> days(HourlyUse use) {
    return IntStream.range(0, DAYS).mapToObj(use::dayL).toList();
  }

  private static double sum(List<Double> days, int from, int count) {
    return days.subList(from, from + count).stream().mapToDouble(Double::doubleValue).sum();
  }

  private static double share(List<Trial> trials, Predicate<Trial> holds) {
    return trials.stream().filter(holds).count() / (double) trials.size();
  }

  @Test
  void afterThreeIntervalsTheNextFourteenDaysAreForecastWithin15Percent() {
    double good = share(TRIALS, t -> Math.abs(t.error()) <= 0.15);
    assertThat(good).isGreaterThanOrEqualTo(0.90);
  }

  /** The readings are what does it: before them most forecasts miss. */
  @Test
  void beforeAnyReadingFewForecastsAreThatGood() {
    assertThat(share(TRIALS, t -> Math.abs(t.before() / t.trulyL() - 1) <= 0.15)).isLessThan(0.6);
  }

  @Test
  void whatIsCalledSafeLasts95TimesInAHundred() {
    List<Trial> safe = TRIALS.stream().filter(t -> t.demand().lasts(t.usableL()) >= 0.95).toList();
    assertThat(safe.size()).isGreaterThan(BENCHES / 4);
    assertThat(share(safe, t -> t.trulyL() <= t.usableL())).isGreaterThanOrEqualTo(0.95);
  }

  /**
   * The 80 % band holds 80 % or more (it is cautious), and is no shrug: at most 35 % above the
   * middle.
   */
  @Test
  void theBandIsHonest() {
    double inside =
        share(
            TRIALS,
            t ->
                t.trulyL() >= t.demand().litresFor(0.1) && t.trulyL() <= t.demand().litresFor(0.9));
    assertThat(inside).isGreaterThanOrEqualTo(0.8);
    assertThat(share(TRIALS, t -> t.demand().litresFor(0.9) < 1.35 * t.demand().medianL()))
        .isGreaterThan(0.8);
  }

  @Test
  void whatPlantsDrinkIsLearned() {
    List<Double> misses = new ArrayList<>();
    TRIALS.forEach(t -> misses.add(Math.abs(t.uptake().msCm() - t.trulyMsCm())));
    double mean = misses.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double untaught =
        TRIALS.stream()
            .mapToDouble(t -> Math.abs(Uptake.prior().msCm() - t.trulyMsCm()))
            .average()
            .orElseThrow();
    assertThat(mean).isLessThan(0.8 * untaught);
  }
}
