package sallet.household;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the bench is watered.
 *
 * @param pump the pump
 * @param timer its timer
 * @param floodDepthM depth of a flood on the tray, m
 * @param tank what else is known of the reservoir
 * @param otherPots pots unlike the rest
 * @param airing how the room's air moves
 * @param readings what the grower measured
 */
public record Watering(
    Pump pump,
    TimerSetting timer,
    double floodDepthM,
    TankSetting tank,
    List<OtherPots> otherPots,
    Airing airing,
    Readings readings) {

  public Watering {
    otherPots = List.copyOf(otherPots);
  }

  /**
   * How the room's air moves.
   *
   * @param fan whether a fan moves it at the leaves
   * @param changesPerHour how often an hour it is changed, 1/h
   */
  public record Airing(boolean fan, double changesPerHour) {}

  /**
   * What the grower measured.
   *
   * @param weighings pots put on the scales
   * @param levels readings of the reservoir, in order of time
   * @param air readings of the room's air, in order of time
   */
  public record Readings(List<Weighing> weighings, List<Level> levels, List<AirReading> air) {
    /** Nothing yet. */
    public static final Readings NONE = new Readings(List.of(), List.of(), List.of());

    public Readings {
      weighings = List.copyOf(weighings);
      levels = List.copyOf(levels);
      air = List.copyOf(air);
    }
  }

  /**
   * The pump.
   *
   * @param curve flow against height as its box shows it, by growing height; at least two points
   * @param liftM height of the tray above the water in the reservoir, m
   * @param watts power, W
   * @param fillMinutes time to fill the tray by the watch, when it was measured
   * @param drainMm inner diameter of the drain, mm
   */
  public record Pump(
      List<CurvePoint> curve,
      double liftM,
      double watts,
      OptionalDouble fillMinutes,
      double drainMm) {
    public Pump {
      curve = List.copyOf(curve);
    }

    /** Height beyond which it lifts nothing, m. */
    public double highestM() {
      return curve.get(curve.size() - 1).headM();
    }
  }

  /**
   * What a pump brings at a height.
   *
   * @param headM height the water is lifted, m
   * @param flowLh flow there, L/h
   */
  public record CurvePoint(double headM, double flowLh) {
    /** A straight line from the flow on the level to the height at which nothing flows. */
    public static List<CurvePoint> straight(double levelFlowLh, double highestM) {
      return List.of(new CurvePoint(0, levelFlowLh), new CurvePoint(highestM, 0));
    }
  }

  /**
   * The timer.
   *
   * @param kind segments, minutes or interval
   * @param stepMinutes minutes of one segment, or steps of the pause
   * @param starts pairs of on and off that a timer to the minute remembers
   * @param soakMinutes how long the tray is to stand full
   */
  public record TimerSetting(String kind, int stepMinutes, int starts, double soakMinutes) {}

  /**
   * The reservoir's shape and its solution.
   *
   * @param heightM inner height, m
   * @param sumpM water below the pump's intake, m
   * @param hoseL what stays in hose and tray, L
   * @param covered whether it has a lid
   * @param levelL how full it is now; empty for full
   * @param ecMsCm conductivity of the solution now, mS/cm
   * @param highestMsCm conductivity that leaves stand, mS/cm
   * @param temperatureC temperature of the solution; empty for that of the room
   * @param bleachPercent chlorine of the bleach it is cleaned with, as its label says, % w/v
   */
  public record TankSetting(
      double heightM,
      double sumpM,
      double hoseL,
      boolean covered,
      OptionalDouble levelL,
      double ecMsCm,
      double highestMsCm,
      OptionalDouble temperatureC,
      OptionalDouble bleachPercent) {
    /** The same with or without a lid. */
    public TankSetting withCover(boolean lid) {
      return new TankSetting(
          heightM, sumpM, hoseL, lid, levelL, ecMsCm, highestMsCm, temperatureC, bleachPercent);
    }

    /** The same with another level and temperature. */
    public TankSetting with(OptionalDouble litres, OptionalDouble solutionC) {
      return new TankSetting(
          heightM, sumpM, hoseL, covered, litres, ecMsCm, highestMsCm, solutionC, bleachPercent);
    }
  }

  /**
   * Pots unlike the rest.
   *
   * @param pots their names
   * @param volumeL volume; empty for that of the rest
   * @param heightM height; empty for that of the rest
   * @param medium medium; empty for that of the rest
   */
  public record OtherPots(
      List<String> pots, OptionalDouble volumeL, OptionalDouble heightM, Optional<String> medium) {
    public OtherPots {
      pots = List.copyOf(pots);
    }
  }

  /**
   * One pot on the scales.
   *
   * @param pot its name
   * @param dryG filled and dry, g; empty when only what it uses was weighed
   * @param wetG after a flood and half an hour of draining, g
   * @param beforeG before the next flood, when it was weighed
   * @param hours time from the one to the other, h
   * @param date day it was weighed before the flood, to learn how much it uses
   * @param time time of that day, when it was written down
   */
  public record Weighing(
      String pot,
      OptionalDouble dryG,
      double wetG,
      OptionalDouble beforeG,
      double hours,
      Optional<LocalDate> date,
      Optional<LocalTime> time) {
    /** Weighed at no known time of the day. */
    public Weighing(
        String pot,
        OptionalDouble dryG,
        double wetG,
        OptionalDouble beforeG,
        double hours,
        Optional<LocalDate> date) {
      this(pot, dryG, wetG, beforeG, hours, date, Optional.empty());
    }
  }

  /**
   * A reading of the reservoir at noon, the tray empty, or what was done to it.
   *
   * @param date day of the reading
   * @param litres water in the reservoir, L, when it was read
   * @param ecMsCm conductivity, when it was read
   * @param addedL poured in right after the reading, L
   * @param addedMsCm conductivity of what was poured in, mS/cm
   * @param renewed whether it was emptied before that was poured in
   */
  public record Level(
      LocalDate date,
      OptionalDouble litres,
      OptionalDouble ecMsCm,
      double addedL,
      double addedMsCm,
      boolean renewed) {
    /** A reading of the level, and what was poured in after it. */
    public Level(
        LocalDate date, double litres, OptionalDouble ecMsCm, double addedL, double addedMsCm) {
      this(date, OptionalDouble.of(litres), ecMsCm, addedL, addedMsCm, false);
    }
  }

  /**
   * A reading of the room's air.
   *
   * @param date day
   * @param time time of the day
   * @param temperatureC when it was read, °C
   * @param humidityPercent relative humidity, when it was read, %
   */
  public record AirReading(
      LocalDate date,
      LocalTime time,
      OptionalDouble temperatureC,
      OptionalDouble humidityPercent) {}

  /** A plain pump and timer, a covered reservoir and no readings. */
  public static Watering usual() {
    OptionalDouble unknown = OptionalDouble.empty();
    return new Watering(
        new Pump(CurvePoint.straight(1000, 1.8), 0.7, 15, unknown, 19),
        new TimerSetting("segments", 15, 8, 10),
        0.04,
        new TankSetting(0.3, 0.04, 0.5, true, unknown, 1.4, 2.5, unknown, unknown),
        List.of(),
        new Airing(false, 0.5),
        Readings.NONE);
  }

  /** The same with other readings. */
  public Watering withReadings(Readings others) {
    return new Watering(pump, timer, floodDepthM, tank, otherPots, airing, others);
  }

  /** The same with other readings of the reservoir. */
  public Watering withLevels(List<Level> others) {
    return withReadings(new Readings(readings.weighings, others, readings.air));
  }

  /** The same with other settings of the reservoir. */
  public Watering withTank(TankSetting other) {
    return new Watering(pump, timer, floodDepthM, other, otherPots, airing, readings);
  }

  /** The same with the air moved otherwise. */
  public Watering withAiring(Airing other) {
    return new Watering(pump, timer, floodDepthM, tank, otherPots, other, readings);
  }
}
