package sallet.water.home;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import sallet.household.Watering;
import sallet.water.reservoir.Salinity;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.StandingPlant;

/**
 * The reservoir on the morning of a day: as stated, else as the readings leave it and what has been
 * used since, else full.
 *
 * @param litres water in it, L
 * @param msCm its conductivity, mS/cm
 */
public record TankNow(double litres, double msCm) {
  /** Below this share of the start its salt is not reckoned any more. */
  private static final double LEAST_SHARE = 0.1;

  /** On the morning of a day; with what was read or poured in on the day itself. */
  public static TankNow of(
      HomeBench bench, List<StandingPlant> plants, LocalDate day, Learned learned) {
    Watering watering = bench.household().watering();
    List<Watering.Level> known =
        watering.readings().levels().stream().filter(l -> !l.date().isAfter(day)).toList();
    TankNow told = new TankNow(bench.levelL(), watering.tank().ecMsCm());
    if (watering.tank().levelL().isPresent() || known.isEmpty()) {
      return told;
    }
    LocalDate first = known.get(0).date();
    int days = (int) ChronoUnit.DAYS.between(first, day);
    BenchFloods floods =
        BenchFloods.of(
            bench,
            BenchDays.of(bench.household(), plants, first, days + 1),
            learned.factor(),
            days + 1);
    HourlyUse use = floods.useBy(floods.schedule());
    TankNow now = told;
    boolean read = false;
    for (int d = 0; d <= days; d++) {
      double half = learned.factor().median() * use.dayL(d) / 2;
      boolean lived = read && d > 0;
      now = lived && d < days ? now.losing(half, learned) : now;
      for (Watering.Level level : known) {
        if (level.date().equals(first.plusDays(d))) {
          read |= level.litres().isPresent() || level.renewed();
          now = now.after(level, bench.tank().fullL());
        }
      }
      now = read && d < days ? now.losing(half, learned) : now;
    }
    return now;
  }

  /** With what was read at noon, and what was poured in then. */
  private TankNow after(Watering.Level level, double fullL) {
    double before = level.litres().orElse(litres);
    double strength = level.ecMsCm().orElse(msCm);
    if (level.renewed()) {
      return new TankNow(
          Math.min(fullL, level.addedL()), level.addedMsCm() > 0 ? level.addedMsCm() : strength);
    }
    return level.addedL() == 0
        ? new TankNow(before, strength)
        : new TankNow(
            Math.min(fullL, before + level.addedL()),
            Salinity.mixed(strength, before, level.addedMsCm(), level.addedL()));
  }

  /** After a loss of water, and of the salt that goes with it. */
  public TankNow losing(double lossL, Learned learned) {
    double left = Math.max(0, litres - lossL);
    return new TankNow(
        left,
        litres <= 0 || left < LEAST_SHARE * litres
            ? msCm
            : Salinity.after(msCm, litres, left, learned.uptake().msCm(), 1));
  }
}
