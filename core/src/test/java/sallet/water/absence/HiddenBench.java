package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.air.HourlyAir;
import sallet.air.MoistAir;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;
import sallet.learn.WaterRows;
import sallet.water.flood.FloodRun;
import sallet.water.flood.FloodSchedule;
import sallet.water.home.BenchDays;
import sallet.water.home.HomeBench;
import sallet.water.home.Households;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.LeafCover;
import sallet.water.transpiration.StandingPlant;

/**
 * A bench with a truth that Sallet does not see: a factor on its use, a humidity meter that is off,
 * weather from day to day, growth that is not as thought, a tray that is wet more or less often,
 * what its plants drink. Whoever lives there reads level and conductivity at noon four times in
 * twelve days, tops up with plain water, and writes all of it into a journal. On the last of these
 * days, that of {@link Households}, the question is asked.
 */
final class HiddenBench {
  private static final int READ_DAYS = 12;
  private static final int EVERY_DAYS = 4;
  private static final int MOST_DAYS_ON = 21;
  private static final LocalDate FIRST = Households.DAY.minusDays(READ_DAYS);
  private static final int NOON = 12;
  private static final double RULER_L = 0.3;
  private static final double CAN = 0.02;
  private static final double METER_MS_CM = 0.03;
  private static final double MIXED_MS_CM = 1.4;

  /** How far growth is from what was thought, 1/d: 8 % more or less leaf after a fortnight. */
  private static final double GROWTH_MISS = 0.006;

  private final SplittableRandom dice;
  private final Household household;
  private final List<StandingPlant> plants;
  private final double drinksMsCm;
  private final HourlyUse real;
  private final List<Double> factorOfDay;
  private final List<Entry> rows = new ArrayList<>();
  private double levelL;
  private double msCm = MIXED_MS_CM;

  HiddenBench(long seed) {
    dice = new SplittableRandom(seed);
    Household home = Households.of(dice.nextDouble(40, 80), dice.nextDouble(40, 65));
    household = home.withLamps(List.of(home.lamps().get(0).litFor(dice.nextDouble(12, 17))));
    plants =
        Households.lettuce(
            household,
            Stream.generate(() -> Households.DAY.minusDays(dice.nextInt(15, 50)))
                .limit(dice.nextInt(4, 13))
                .toList());
    drinksMsCm = dice.nextDouble(0.4, 1);
    real = real();
    double factor = Math.exp(Math.log(0.85) + 0.35 * dice.nextGaussian());
    factorOfDay =
        IntStream.range(0, real.days())
            .mapToObj(day -> factor * Math.exp(0.08 * dice.nextGaussian()))
            .toList();
    levelL = household.reservoir().volumeL();
    live();
  }

  /** What is used at factor 1 in the air and by the leaves there really are. */
  private HourlyUse real() {
    BenchDays thought = BenchDays.of(household, plants, FIRST, READ_DAYS + MOST_DAYS_ON + 1);
    LeafCover cover = thought.cover();
    double bias = 4 * dice.nextGaussian();
    List<Double> weather =
        IntStream.range(0, cover.days()).mapToObj(day -> 4 * dice.nextGaussian()).toList();
    double growth = GROWTH_MISS * dice.nextGaussian();
    List<MoistAir> hours =
        IntStream.range(0, 24 * cover.days())
            .mapToObj(hour -> damper(thought.air(), hour, bias + weather.get(hour / 24)))
            .toList();
    LeafCover leaves =
        LeafCover.told(
            FIRST,
            cover.pots(),
            cover.days(),
            (pot, day) -> cover.leafCm2(pot, day) * Math.exp(growth * day),
            cover::crownCm2);
    return HourlyUse.of(
        thought.light(),
        new HourlyAir(FIRST, hours),
        leaves,
        HomeBench.of(household).around(dice.nextInt(2, 7)));
  }

  private static MoistAir damper(HourlyAir air, int hour, double points) {
    MoistAir told = air.hours().get(hour);
    return MoistAir.of(
        told.temperatureC(), Math.max(15, Math.min(95, told.humidityPercent() + points)));
  }

  private void live() {
    boolean toppedUpToday = dice.nextBoolean();
    for (int day = 0; day <= READ_DAYS; day += EVERY_DAYS) {
      if (day > 0) {
        lose(usedL(24 * (day - EVERY_DAYS) + NOON, 24 * EVERY_DAYS));
      }
      write(day, Event.LEVEL, levelL + RULER_L * dice.nextGaussian());
      write(day, Event.EC, msCm + METER_MS_CM * dice.nextGaussian());
      if (day > 0 && (day < READ_DAYS || toppedUpToday)) {
        double pours = household.reservoir().volumeL() - levelL;
        write(day, Event.TOP_UP, pours * (1 + CAN * dice.nextGaussian()));
        pour(pours);
      }
    }
  }

  private void write(int day, Event event, double value) {
    rows.add(
        new Entry(
            rows.size() + 2,
            FIRST.plusDays(day),
            event,
            "",
            "",
            OptionalInt.empty(),
            new Where.Anywhere(),
            OptionalDouble.empty(),
            OptionalDouble.of(value),
            "",
            Optional.empty()));
  }

  private void lose(double litres) {
    double salt = levelL * msCm - drinksMsCm * litres;
    levelL -= litres;
    msCm = salt / levelL;
  }

  private void pour(double litres) {
    msCm = msCm * levelL / (levelL + litres);
    levelL += litres;
  }

  private double potMl(int pot, int hour) {
    return factorOfDay.get(hour / 24) * real.potMl(pot, hour);
  }

  private double usedL(int fromHour, int hours) {
    return IntStream.range(fromHour, fromHour + hours).mapToDouble(this::hourL).sum();
  }

  private double hourL(int hour) {
    double ml = IntStream.range(0, real.pots()).mapToDouble(pot -> potMl(pot, hour)).sum();
    return ml / 1000 + factorOfDay.get(hour / 24) * real.openL(hour / 24) / 24;
  }

  /** The household with what its journal tells. */
  Household told() {
    Watering watering = WaterRows.of(household, new Journal(rows), Households.DAY).watering();
    return household.withWatering(watering);
  }

  List<StandingPlant> plants() {
    return plants;
  }

  /** What its plants drink, mS/cm. */
  double drinksMsCm() {
    return drinksMsCm;
  }

  /** Water in the reservoir at noon of the day, L. */
  double levelL() {
    return levelL;
  }

  /** Its conductivity then, mS/cm. */
  double msCm() {
    return msCm;
  }

  /** What is used from noon of the day on, L. */
  double usedL(int days) {
    return usedL(24 * READ_DAYS + NOON, 24 * days);
  }

  /**
   * Whether it comes through some days: each flood whole, the salt below a limit, and no pot
   * wilting though one flood is missed.
   *
   * @param startL level to leave with, L
   * @param startMsCm conductivity to leave with, mS/cm
   * @param visits days, counted from the first, in whose morning it is filled to the brim
   */
  boolean comesThrough(
      int days, double startL, double startMsCm, List<Integer> visits, FloodSchedule schedule) {
    levelL = startL;
    msCm = startMsCm;
    boolean well = true;
    for (int hour = NOON; hour < NOON + 24 * days && well; hour++) {
      if (hour % 24 == 9 && visits.contains(hour / 24)) {
        pour(household.reservoir().volumeL() - levelL);
      }
      lose(hourL(24 * READ_DAYS + hour));
      well =
          levelL >= HomeBench.of(household).tank().leastL()
              && msCm <= household.watering().tank().highestMsCm();
    }
    return well && outlivesAMissedFlood(days, schedule);
  }

  private boolean outlivesAMissedFlood(int days, FloodSchedule schedule) {
    HomeBench bench = HomeBench.of(household);
    int missed = dice.nextInt((int) (schedule.floodsPerDay() * days));
    FloodRun run =
        FloodRun.of(
            bench.waters(),
            (pot, hour) -> potMl(pot, 24 * READ_DAYS + hour),
            24 * days,
            schedule,
            (int) Math.ceil(bench.fillMinutes()),
            flood -> flood != missed);
    return IntStream.range(0, bench.size())
        .allMatch(pot -> run.lowestMl(pot) >= bench.water(pot).wiltMl());
  }

  /** A random number of days away. */
  int daysAway() {
    return dice.nextInt(3, MOST_DAYS_ON + 1);
  }
}
