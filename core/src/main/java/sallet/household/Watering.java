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
 * @param weighings pots put on the scales
 * @param levels readings of the reservoir, in order of time
 * @param fan whether a fan moves air at the leaves
 * @param airChanges how often an hour the room's air is changed, 1/h
 * @param airReadings readings of the room's air, in order of time
 */
public record Watering(
    Pump pump,
    TimerSetting timer,
    double floodDepthM,
    TankSetting tank,
    List<OtherPots> otherPots,
    List<Weighing> weighings,
    List<Level> levels,
    boolean fan,
    double airChanges,
    List<AirReading> airReadings) {

  /** Without readings of the air. */
  public Watering(
      Pump pump,
      TimerSetting timer,
      double floodDepthM,
      TankSetting tank,
      List<OtherPots> otherPots,
      List<Weighing> weighings,
      List<Level> levels,
      boolean fan,
      double airChanges) {
    this(pump, timer, floodDepthM, tank, otherPots, weighings, levels, fan, airChanges, List.of());
  }

  public Watering {
    otherPots = List.copyOf(otherPots);
    weighings = List.copyOf(weighings);
    levels = List.copyOf(levels);
    airReadings = List.copyOf(airReadings);
  }

  /**
   * The pump.
   *
   * @param flowLh flow on the level, as the box says, L/h
   * @param headM height at which nothing flows any more, as the box says, m
   * @param liftM height of the tray above the water in the reservoir, m
   * @param watts power, W
   * @param fillMinutes time to fill the tray by the watch, when it was measured
   * @param drainMm inner diameter of the drain, mm
   */
  public record Pump(
      double flowLh,
      double headM,
      double liftM,
      double watts,
      OptionalDouble fillMinutes,
      double drainMm) {}

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
   */
  public record TankSetting(
      double heightM,
      double sumpM,
      double hoseL,
      boolean covered,
      OptionalDouble levelL,
      double ecMsCm,
      double highestMsCm,
      OptionalDouble temperatureC) {}

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
    return new Watering(
        new Pump(1000, 1.8, 0.7, 15, OptionalDouble.empty(), 19),
        new TimerSetting("segments", 15, 8, 10),
        0.04,
        new TankSetting(
            0.3, 0.04, 0.5, true, OptionalDouble.empty(), 1.4, 2.5, OptionalDouble.empty()),
        List.of(),
        List.of(),
        List.of(),
        false,
        0.5);
  }

  /** The same with other readings of the reservoir. */
  public Watering withLevels(List<Level> others) {
    return new Watering(
        pump, timer, floodDepthM, tank, otherPots, weighings, others, fan, airChanges, airReadings);
  }

  /** The same with other pots on the scales. */
  public Watering withWeighings(List<Weighing> others) {
    return new Watering(
        pump, timer, floodDepthM, tank, otherPots, others, levels, fan, airChanges, airReadings);
  }

  /** The same with other readings of the air. */
  public Watering withAirReadings(List<AirReading> others) {
    return new Watering(
        pump, timer, floodDepthM, tank, otherPots, weighings, levels, fan, airChanges, others);
  }

  /** The same with other settings of the reservoir. */
  public Watering withTank(TankSetting other) {
    return new Watering(
        pump,
        timer,
        floodDepthM,
        other,
        otherPots,
        weighings,
        levels,
        fan,
        airChanges,
        airReadings);
  }

  /** The same with the fan on or off. */
  public Watering withFan(boolean on) {
    return new Watering(
        pump, timer, floodDepthM, tank, otherPots, weighings, levels, on, airChanges, airReadings);
  }

  /** The same with the reservoir covered or not. */
  public Watering withCover(boolean covered) {
    TankSetting t = tank;
    TankSetting other =
        new TankSetting(
            t.heightM,
            t.sumpM,
            t.hoseL,
            covered,
            t.levelL,
            t.ecMsCm,
            t.highestMsCm,
            t.temperatureC);
    return withTank(other);
  }

  /** The same with the room's air changed otherwise. */
  public Watering withAirChanges(double perHour) {
    return new Watering(
        pump, timer, floodDepthM, tank, otherPots, weighings, levels, fan, perHour, airReadings);
  }
}
