package sallet.water.transpiration;

import java.time.LocalDate;
import java.util.Arrays;
import sallet.air.HourlyAir;
import sallet.air.MoistAir;
import sallet.light.HourlyLight;

/**
 * Water used at every pot, hour by hour, and by open water, at factor 1 (see {@link
 * sallet.water.learn.UseFactor}).
 */
public final class HourlyUse {
  private final LocalDate from;
  private final double[][] leavesMl;
  private final double[][] mediumMl;
  private final double[] openGM2;
  private final double[] coolestLeafC;
  private final double openM2;

  private HourlyUse(LocalDate from, int pots, int days, double openM2) {
    this.from = from;
    this.leavesMl = new double[pots][24 * days];
    this.mediumMl = new double[pots][24 * days];
    this.openGM2 = new double[24 * days];
    this.coolestLeafC = new double[days];
    this.openM2 = openM2;
  }

  private HourlyUse(HourlyUse same, double openM2) {
    this.from = same.from;
    this.leavesMl = same.leavesMl;
    this.mediumMl = same.mediumMl;
    this.openGM2 = same.openGM2;
    this.coolestLeafC = same.coolestLeafC;
    this.openM2 = openM2;
  }

  /** The same with other open water, m². */
  public HourlyUse withOpenM2(double m2) {
    return new HourlyUse(this, m2);
  }

  /**
   * The use of a bench.
   *
   * @param light light at the pots, from its first day on
   * @param air air of the room over the same days
   * @param cover leaves over the same days
   */
  public static HourlyUse of(
      HourlyLight light, HourlyAir air, LeafCover cover, Surroundings around) {
    if (!light.from().equals(cover.from())
        || !air.from().equals(cover.from())
        || light.days() < cover.days()
        || air.days() < cover.days()
        || light.places() != cover.pots()) {
      throw new IllegalArgumentException("light, air and leaves must tell of the same days");
    }
    HourlyUse use = new HourlyUse(cover.from(), cover.pots(), cover.days(), around.openM2());
    for (int hour = 0; hour < 24 * cover.days(); hour++) {
      use.addHour(hour, light, air.hours().get(hour), cover, around);
    }
    return use;
  }

  private void addHour(
      int hour, HourlyLight light, MoistAir air, LeafCover cover, Surroundings around) {
    int day = hour / 24;
    double medium = wetGM2H(Surroundings.MEDIUM_SM, around.boundarySM(), air);
    openGM2[hour] = wetGM2H(0, Canopy.STILL_SM, air);
    for (int pot = 0; pot < leavesMl.length; pot++) {
      mediumMl[pot][hour] = medium * around.potTopCm2() / 1e4;
      double crown = cover.crownCm2(pot, day);
      if (crown > 0) {
        LeafBalance leaf =
            LeafBalance.exact(
                Canopy.inRoom(
                    light.lampUmol(pot, day, hour % 24),
                    light.daylightUmol(pot, day, hour % 24),
                    cover.leafCm2(pot, day) / crown,
                    around.boundarySM()),
                air);
        leavesMl[pot][hour] = Math.max(0, leaf.waterGM2H()) * crown / 1e4;
        coolestLeafC[day] = Math.min(coolestLeafC[day], leaf.leafMinusAirC());
      }
    }
  }

  /** Evaporation of a wet surface in the shade, g/m²/h. */
  static double wetGM2H(double surfaceSM, double boundarySM, MoistAir air) {
    Canopy wet = new Canopy(0, surfaceSM, boundarySM, 1, Canopy.ROOM_LONGWAVE_WM2K);
    return Math.max(0, LeafBalance.exact(wet, air).waterGM2H());
  }

  /** First day. */
  public LocalDate from() {
    return from;
  }

  /** Number of days. */
  public int days() {
    return coolestLeafC.length;
  }

  /** Number of pots. */
  public int pots() {
    return leavesMl.length;
  }

  /** Water a pot uses in an hour counted from the first, mL. */
  public double potMl(int pot, int hour) {
    return leavesMl[pot][hour] + mediumMl[pot][hour];
  }

  /** Water a pot uses on a day, mL. */
  public double potDayMl(int pot, int day) {
    return sum(leavesMl[pot], day) + sum(mediumMl[pot], day);
  }

  /** Water the leaves of a pot transpire on a day, mL. */
  public double leavesDayMl(int pot, int day) {
    return sum(leavesMl[pot], day);
  }

  /** Water that open surfaces lose on a day, L. */
  public double openL(int day) {
    return openM2 * sum(openGM2, day) / 1000;
  }

  /** Water the leaves of all pots transpire on a day, L. */
  public double leavesL(int day) {
    return Arrays.stream(leavesMl).mapToDouble(pot -> sum(pot, day)).sum() / 1000;
  }

  /** Water all pots use on a day, L. */
  public double potsL(int day) {
    double ml = 0;
    for (int pot = 0; pot < leavesMl.length; pot++) {
      ml += potDayMl(pot, day);
    }
    return ml / 1000;
  }

  /** Water that leaves the bench on a day, open water with it, L. */
  public double dayL(int day) {
    return potsL(day) + openL(day);
  }

  /** Largest water vapour of an hour of a day, g/h. */
  public double peakGPerHour(int day) {
    double peak = 0;
    for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
      double all = openM2 * openGM2[hour];
      for (int pot = 0; pot < leavesMl.length; pot++) {
        all += potMl(pot, hour);
      }
      peak = Math.max(peak, all);
    }
    return peak;
  }

  /** By how much the coolest leaf of a day is cooler than the air, K, 0 or below. */
  public double coolestLeafK(int day) {
    return coolestLeafC[day];
  }

  private static double sum(double[] hours, int day) {
    return Arrays.stream(hours, 24 * day, 24 * day + 24).sum();
  }
}
