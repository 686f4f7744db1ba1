package sallet.water.home;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.air.Vapour;
import sallet.cost.Electricity;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.units.Step;
import sallet.water.caution.Cleaning;
import sallet.water.caution.WaterCaution;
import sallet.water.flood.FloodRun;
import sallet.water.flood.FloodSchedule;
import sallet.water.learn.Uptake;
import sallet.water.learn.UseFactor;
import sallet.water.reservoir.Oxygen;
import sallet.water.reservoir.SolutionWarmth;
import sallet.water.reservoir.TankForecast;
import sallet.water.reservoir.TopUp;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.StandingPlant;

/** From a household and what stands on its bench to the sheet of its water. */
public final class HomeWater {
  /** Days told. */
  public static final int DAYS = 28;

  /** Days a schedule is made for: the timer is looked at once a week. */
  static final int WEEK = 7;

  private static final double MMHG_PER_KPA = 7.50062;

  private final HomeBench bench;
  private final LocalDate day;
  private final BenchDays days;
  private final Learned learned;
  private final TankNow now;
  private final UseFactor factor;
  private final FloodSchedule schedule;
  private final HourlyUse use;

  private HomeWater(HomeBench bench, LocalDate day, BenchDays days, Learned learned, TankNow now) {
    this.now = now;
    this.bench = bench;
    this.day = day;
    this.days = days;
    this.learned = learned;
    this.factor = learned.factor();
    BenchFloods floods = BenchFloods.of(bench, days, factor, WEEK);
    this.schedule = floods.schedule();
    this.use = floods.useBy(schedule);
  }

  /**
   * The household's water.
   *
   * @param day first day told
   * @param plants what stands on the bench, from the first reading of the level on
   * @throws sallet.water.WaterFault when pump, pots, flood and reservoir do not go together
   */
  public static HomeWater of(Household household, LocalDate day, List<StandingPlant> plants) {
    HomeBench bench = HomeBench.of(household);
    Learned learned = learned(bench, plants, day);
    TankNow now = TankNow.of(bench, plants, day, learned);
    BenchDays days = BenchDays.of(household, plants, day, DAYS);
    return new HomeWater(bench, day, days, learned, now);
  }

  /** Its sheet; see {@link #of}. */
  public static WaterSheet sheet(Household household, LocalDate day, List<StandingPlant> plants) {
    return of(household, day, plants).sheet();
  }

  /**
   * How a number of the sheet comes about.
   *
   * @param path such as "pots[0].useMlPerDay"
   * @throws sallet.water.WaterFault when nothing on the sheet has that path
   */
  public List<Step> explain(String path) {
    return new WaterExplanation(bench, days, use, now, sheet()).of(path);
  }

  /** What readings before a day teach, the bench being flooded as it would have been told then. */
  public static Learned learned(HomeBench bench, List<StandingPlant> plants, LocalDate day) {
    Watering.Readings readings = bench.household().watering().readings();
    List<LocalDate> dates = new ArrayList<>();
    readings.levels().forEach(level -> dates.add(level.date()));
    readings
        .weighings()
        .forEach(w -> w.date().ifPresent(d -> dates.add(d.minusDays((long) (w.hours() / 24) + 1))));
    readings.weighings().forEach(w -> w.date().ifPresent(dates::add));
    if (dates.isEmpty()) {
      return Learned.nothing();
    }
    LocalDate first = dates.stream().min(LocalDate::compareTo).orElse(day);
    LocalDate last = dates.stream().max(LocalDate::compareTo).orElse(day);
    int span = (int) ChronoUnit.DAYS.between(first, last) + 1;
    BenchDays past = BenchDays.of(bench.household(), plants, first, span);
    BenchFloods floods = BenchFloods.of(bench, past, UseFactor.prior(), span);
    return Learned.of(bench, floods.useBy(floods.schedule()), day);
  }

  /** The sheet. */
  public WaterSheet sheet() {
    List<WaterSheet.PotLine> pots = pots();
    TankForecast tank = tank(factor, learned.uptake());
    WaterSheet.Solution solution = solution();
    WaterSheet.RoomMoisture room = RoomWarnings.of(bench.household(), days.air(), use, factor);
    WaterSheet.Refill refill = refill(tank);
    return new WaterSheet(
        day,
        days.cover().planted(0),
        pots,
        floods(),
        tank,
        learned.taught() ? Optional.of(tank(UseFactor.prior(), Uptake.prior())) : Optional.empty(),
        refill,
        UseFactor.prior(),
        learned,
        solution,
        room,
        SeedCells.of(bench),
        Cleaning.of(bench.cleaningL(), bench.household().watering().tank().bleachPercent()),
        WaterNotes.of(bench, schedule, without(pots), pots, tank, solution, room, learned),
        cautions());
  }

  private FloodSchedule without(List<WaterSheet.PotLine> pots) {
    List<String> spoilers =
        WaterNotes.spoilers(pots).stream().map(WaterSheet.PotLine::pot).toList();
    return floods(WEEK).without(spoilers);
  }

  private List<WaterSheet.PotLine> pots() {
    double safe = factor.quantile(BenchFloods.SAFE);
    FloodRun week =
        FloodRun.of(
            bench.waters(),
            (pot, hour) -> safe * use.potMl(pot, hour),
            24 * WEEK,
            schedule,
            (int) Math.ceil(bench.fillMinutes()),
            flood -> true);
    return IntStream.range(0, bench.size()).mapToObj(pot -> line(pot, week)).toList();
  }

  private WaterSheet.PotLine line(int pot, FloodRun week) {
    var water = bench.water(pot);
    return new WaterSheet.PotLine(
        bench.name(pot),
        days.cover().crop(pot, 0),
        bench.medium(pot),
        water.fullMl(),
        water.allowedMl(),
        factor.median() * use.potDayMl(pot, 0),
        floods(WEEK).untilDue(pot).floodsPerDay(),
        floods(1).untilWilting(pot).shortestMinutes() / 60,
        week.lowestMl(pot) / water.fullMl(),
        water.airShare(),
        water.weighed());
  }

  /** Floods of the coming days. */
  private BenchFloods floods(int number) {
    return new BenchFloods(bench, use, factor.quantile(BenchFloods.SAFE), 0, number);
  }

  private WaterSheet.Floods floods() {
    Watering.Pump pump = bench.household().watering().pump();
    return new WaterSheet.Floods(
        schedule,
        bench.floodL(),
        bench.household().watering().floodDepthM(),
        bench.fillMinutes(),
        pump.fillMinutes().isPresent(),
        bench.drainMinutes(),
        Electricity.kwh(pump.watts(), schedule.pumpHours()));
  }

  private TankForecast tank(UseFactor f, Uptake uptake) {
    return TankForecast.of(
        new TankForecast.Start(bench.tank(), now.litres(), now.msCm(), f.logSd(), uptake.msCm()),
        day,
        IntStream.range(0, DAYS).mapToObj(d -> f.median() * use.dayL(d)).toList());
  }

  private WaterSheet.Refill refill(TankForecast tank) {
    int last = tank.daysLasting(BenchFloods.SAFE).orElse(DAYS);
    double used = last == 0 ? 0 : tank.usedL(last - 1);
    double level = Math.max(0, tank.startL() - used);
    double msCm = last == 0 ? now.msCm() : tank.days().get(last - 1).ecMsCm();
    TopUp pour =
        TopUp.of(
            level,
            Double.isNaN(msCm) ? 0 : msCm,
            bench.tank().fullL(),
            bench.household().watering().tank().ecMsCm());
    return new WaterSheet.Refill(day.plusDays(last), pour, last == DAYS);
  }

  private WaterSheet.Solution solution() {
    Watering watering = bench.household().watering();
    double tubM2 = bench.tankM2() + 2 * watering.tank().heightM() * 2 * Math.sqrt(bench.tankM2());
    double warms = SolutionWarmth.pumpWarmsK(watering.pump().watts(), schedule.pumpHours(), tubM2);
    double roomC =
        IntStream.range(0, 24)
            .mapToDouble(h -> days.air().at(0, h).temperatureC())
            .average()
            .orElse(20);
    double warm = watering.tank().temperatureC().orElse(roomC + warms);
    double mmHg = MMHG_PER_KPA * Vapour.pressureKpa(bench.household().place().elevationM());
    return new WaterSheet.Solution(
        warm,
        watering.tank().temperatureC().isPresent(),
        SolutionWarmth.of(warm),
        Oxygen.saturationMgL(warm, mmHg, 1),
        warms,
        Renewals.of(bench.household(), day, factor.median() * use.leavesL(0), lossL()));
  }

  private double lossL() {
    return factor.median() * use.dayL(0);
  }

  private static List<WaterCaution> cautions() {
    return List.of(
        WaterCaution.MAINS,
        WaterCaution.TIMER,
        WaterCaution.OVERFLOW,
        WaterCaution.MASS,
        WaterCaution.WARM_WATER,
        WaterCaution.CLEANING,
        WaterCaution.FOOD);
  }
}
