package sallet.water.home;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.water.WaterFault;
import sallet.water.flood.Flood;
import sallet.water.flood.FloodTimes;
import sallet.water.flood.PumpCurve;
import sallet.water.flood.Timer;
import sallet.water.medium.PotShape;
import sallet.water.medium.PotWater;
import sallet.water.reservoir.Tank;
import sallet.water.transpiration.Canopy;
import sallet.water.transpiration.Surroundings;

/** The household's bench, pump, timer and tank in numbers. */
public final class HomeBench {
  /** How much slower a tray drains through a stopped pump than through a plain hole. Judgement. */
  static final double THROUGH_PUMP = 4;

  private static final double PLAIN_HOLE = 0.6;

  /** Wet tray after a flood has drained, h. Judgement. */
  private static final double TRAY_DRIES_H = 0.5;

  private final Household household;
  private final List<HomePots.HomePot> pots;
  private final double floodL;
  private final double fillMinutes;

  private HomeBench(
      Household household, List<HomePots.HomePot> pots, double floodL, double fillMinutes) {
    this.household = household;
    this.pots = pots;
    this.floodL = floodL;
    this.fillMinutes = fillMinutes;
  }

  /**
   * The bench of a household.
   *
   * @throws WaterFault when pump, pots, flood and reservoir do not go together
   */
  public static HomeBench of(Household household) {
    List<WaterFault.Line> faults = new ArrayList<>();
    List<HomePots.HomePot> pots = new HomePots(household, faults).pots();
    checkTray(household.bench(), pots, faults);
    if (!faults.isEmpty()) {
      throw new WaterFault(faults);
    }
    double floodL = floodL(household, pots);
    OptionalDouble fill = fillMinutes(household.watering(), floodL);
    if (fill.isEmpty()) {
      Watering.Pump pump = household.watering().pump();
      faults.add(
          new WaterFault.Line(
              "pump",
              "a pump that lifts water %s m at the most cannot flood a tray that stands %s m above the reservoir's water to a depth of %s cm; use a stronger pump or raise the reservoir"
                  .formatted(
                      HomePots.plain(pump.highestM()),
                      HomePots.plain(pump.liftM()),
                      HomePots.plain(100 * household.watering().floodDepthM()))));
    }
    HomeBench bench = new HomeBench(household, pots, floodL, fill.orElse(0));
    bench.checkTank(faults);
    if (!faults.isEmpty()) {
      throw new WaterFault(faults);
    }
    return bench;
  }

  private static void checkTray(
      Bench bench, List<HomePots.HomePot> pots, List<WaterFault.Line> faults) {
    double potsM2 = pots.stream().mapToDouble(p -> p.shape().footprintCm2()).sum() / 1e4;
    double trayM2 = bench.widthM() * bench.depthM();
    if (potsM2 > trayM2) {
      faults.add(
          new WaterFault.Line(
              "bench.pots",
              "%d pots cover %s m² of a tray of %s m²; use fewer, smaller or taller pots"
                  .formatted(pots.size(), HomePots.plain(potsM2), HomePots.plain(trayM2))));
    }
  }

  /** A flood for pots that have used what they may. */
  private static double floodL(Household household, List<HomePots.HomePot> pots) {
    double cm2 = pots.stream().mapToDouble(p -> p.shape().footprintCm2()).sum();
    double takesUp = 0;
    for (HomePots.HomePot pot : pots) {
      PotWater water = pot.water();
      double before = (water.fullMl() - water.allowedMl()) / water.volumeMl();
      double pores = Math.max(0, pot.medium().retention().saturated() - before);
      takesUp += pores * pot.shape().footprintCm2() / cm2;
    }
    Bench bench = household.bench();
    return new Flood(
            bench.widthM() * bench.depthM(),
            pots.size(),
            cm2 / 1e4 / pots.size(),
            household.watering().floodDepthM())
        .volumeL(takesUp, 0);
  }

  private static OptionalDouble fillMinutes(Watering watering, double floodL) {
    Watering.Pump pump = watering.pump();
    double areaM2 = floodL / 1000 / watering.floodDepthM();
    OptionalDouble reckoned =
        PumpCurve.of(pump.curve())
            .times(PumpCurve.USUAL_SHARE)
            .fillMinutes(pump.liftM(), watering.floodDepthM(), areaM2);
    return reckoned.isPresent() && pump.fillMinutes().isPresent() ? pump.fillMinutes() : reckoned;
  }

  private void checkTank(List<WaterFault.Line> faults) {
    Tank tank = tank();
    if (tank.leastL() >= tank.fullL()) {
      faults.add(
          new WaterFault.Line(
              "reservoir.volume",
              "%s L is not enough for one flood: the tray takes %.1f L and %.1f L stay below the pump and in the hose; use a reservoir above %.0f L or a shallower flood"
                  .formatted(
                      HomePots.plain(tank.fullL()),
                      tank.floodL(),
                      tank.sumpL() + tank.hoseL(),
                      Math.ceil(tank.leastL()))));
    }
    double level = levelL();
    if (level > tank.fullL()) {
      faults.add(
          new WaterFault.Line(
              "reservoir.level",
              "%s L is more than the %s L the reservoir holds"
                  .formatted(HomePots.plain(level), HomePots.plain(tank.fullL()))));
    }
  }

  /** The household. */
  public Household household() {
    return household;
  }

  /** Number of pots. */
  public int size() {
    return pots.size();
  }

  /** Index of the pot of that name. */
  public int indexOf(String name) {
    return IntStream.range(0, size())
        .filter(pot -> name(pot).equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no pot is called " + name));
  }

  /** Name of a pot. */
  public String name(int pot) {
    return pots.get(pot).name();
  }

  /** What a pot holds. */
  public PotWater water(int pot) {
    return pots.get(pot).water();
  }

  /** What all pots hold. */
  public List<PotWater> waters() {
    return pots.stream().map(HomePots.HomePot::water).toList();
  }

  /** Name of the medium in a pot. */
  public String medium(int pot) {
    return pots.get(pot).medium().name();
  }

  /** Shape of a pot. */
  public PotShape shape(int pot) {
    return pots.get(pot).shape();
  }

  /** Ground all pots cover, m². */
  double footprintM2() {
    return pots.stream().mapToDouble(p -> p.shape().footprintCm2()).sum() / 1e4;
  }

  /** Water a flood borrows from the reservoir, L. */
  public double floodL() {
    return floodL;
  }

  /** Water to flood the tray without any pots, and what stays below pump and in the hose, L. */
  double cleaningL() {
    Bench b = household.bench();
    double trayL =
        new Flood(b.widthM() * b.depthM(), 0, 0, household.watering().floodDepthM()).volumeL(0, 0);
    Tank tank = tank();
    return Math.min(tank.fullL(), trayL + tank.sumpL() + tank.hoseL());
  }

  /** Time to fill the tray, minutes. */
  public double fillMinutes() {
    return fillMinutes;
  }

  /** Time to drain it through the stopped pump, minutes. */
  public double drainMinutes() {
    Watering w = household.watering();
    double areaM2 = floodL / 1000 / w.floodDepthM();
    return THROUGH_PUMP
        * Flood.drainMinutes(
            areaM2, w.floodDepthM(), w.pump().drainMm(), PLAIN_HOLE, w.pump().liftM());
  }

  /** Base of the reservoir, m². */
  public double tankM2() {
    return household.reservoir().volumeL() / 1000 / household.watering().tank().heightM();
  }

  /** The reservoir. */
  public Tank tank() {
    Watering.TankSetting t = household.watering().tank();
    return new Tank(
        household.reservoir().volumeL(), floodL, 1000 * tankM2() * t.sumpM(), t.hoseL());
  }

  /** Water in the reservoir now, the tray empty, L. */
  public double levelL() {
    return household.watering().tank().levelL().orElse(household.reservoir().volumeL());
  }

  /** The timer. */
  public Timer timer() {
    Watering.TimerSetting t = household.watering().timer();
    return switch (t.kind()) {
      case "minutes" -> new Timer.Minutes(t.starts());
      case "interval" -> new Timer.Interval(t.stepMinutes());
      default -> new Timer.Segments(t.stepMinutes());
    };
  }

  /** Pump time of a flood and least time between floods. */
  public FloodTimes.Length length() {
    double flood = fillMinutes + household.watering().timer().soakMinutes();
    int on = timer().onMinutes(flood);
    return new FloodTimes.Length(flood, on + (int) Math.ceil(drainMinutes()));
  }

  /** Air, pots' open tops and open water, the tray being wet for some hours a day. */
  public Surroundings around(double floodsPerDay) {
    Bench b = household.bench();
    double cm2 = pots.stream().mapToDouble(p -> p.shape().topCm2()).sum();
    double wetHours =
        floodsPerDay * (timer().onMinutes(length().floodMinutes()) / 60.0 + TRAY_DRIES_H);
    double trayM2 = Math.max(0, b.widthM() * b.depthM() - cm2 / 1e4) * Math.min(24, wetHours) / 24;
    return new Surroundings(
        household.watering().airing().fan() ? Canopy.FAN_SM : Canopy.STILL_SM,
        cm2 / pots.size(),
        trayM2 + (household.watering().tank().covered() ? 0 : tankM2()));
  }
}
