package sallet.water.absence;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import sallet.household.Watering;
import sallet.water.home.BenchDays;
import sallet.water.home.BenchFloods;
import sallet.water.home.HomeBench;
import sallet.water.home.Learned;
import sallet.water.home.TankNow;
import sallet.water.reservoir.TopUp;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.StandingPlant;

/**
 * The reservoir on the morning of leaving: from what stands in it today, used day by day, and
 * topped up to its strength on each bowl day until then.
 *
 * @param levelL water in it, median, L
 * @param msCm its conductivity, mS/cm
 * @param usedL median use of each day since today or the last top-up, L
 * @param toppedUp bowl days after today on which it is filled up
 */
public record Departure(double levelL, double msCm, List<Double> usedL, List<LocalDate> toppedUp) {
  public Departure {
    usedL = List.copyOf(usedL);
    toppedUp = List.copyOf(toppedUp);
  }

  /**
   * From today on.
   *
   * @param plants what stands on the bench from today on
   */
  static Departure of(
      HomeBench bench, List<StandingPlant> plants, LocalDate day, LocalDate from, Learned learned) {
    TankNow tank = TankNow.of(bench, plants, day, learned);
    int days = (int) ChronoUnit.DAYS.between(day, from);
    List<Double> used = new ArrayList<>();
    List<LocalDate> filled = new ArrayList<>();
    if (days == 0) {
      return new Departure(tank.litres(), tank.msCm(), used, filled);
    }
    BenchFloods floods =
        BenchFloods.of(
            bench, BenchDays.of(bench.household(), plants, day, days), learned.factor(), days);
    HourlyUse use = floods.useBy(floods.schedule());
    for (int d = 0; d < days; d++) {
      LocalDate date = day.plusDays(d);
      if (d > 0 && date.getDayOfWeek() == bench.household().eaters().bowlDay()) {
        tank = filled(bench, tank);
        filled.add(date);
        used.clear();
      }
      double litres = learned.factor().median() * use.dayL(d);
      tank = tank.losing(litres, learned);
      used.add(litres);
    }
    return new Departure(tank.litres(), tank.msCm(), used, filled);
  }

  private static TankNow filled(HomeBench bench, TankNow tank) {
    Watering.TankSetting setting = bench.household().watering().tank();
    double full = bench.tank().fullL();
    TopUp pour = TopUp.of(tank.litres(), tank.msCm(), full, setting.ecMsCm());
    return new TankNow(full, pour.endsMsCm());
  }
}
