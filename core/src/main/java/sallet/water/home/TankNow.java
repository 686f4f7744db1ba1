package sallet.water.home;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import sallet.household.Watering;
import sallet.water.reservoir.Salinity;
import sallet.water.transpiration.HourlyUse;
import sallet.water.transpiration.StandingPlant;

/**
 * The reservoir on the morning of a day: as stated, else as the last reading leaves it and what has
 * been used since, else full.
 *
 * @param litres water in it, L
 * @param msCm its conductivity, mS/cm
 */
public record TankNow(double litres, double msCm) {
  /** Below this share of the start its salt is not reckoned any more. */
  private static final double LEAST_SHARE = 0.1;

  /** On the morning of a day. */
  public static TankNow of(
      HomeBench bench, List<StandingPlant> plants, LocalDate day, Learned learned) {
    Watering watering = bench.household().watering();
    List<Watering.Level> levels = watering.levels();
    if (watering.tank().levelL().isPresent() || levels.isEmpty()) {
      return new TankNow(bench.levelL(), watering.tank().ecMsCm());
    }
    Watering.Level last = levels.get(levels.size() - 1);
    double litres = Math.min(bench.tank().fullL(), last.litres() + last.addedL());
    double msCm =
        Salinity.mixed(
            last.ecMsCm().orElse(watering.tank().ecMsCm()),
            last.litres(),
            last.addedMsCm(),
            last.addedL());
    int days = (int) ChronoUnit.DAYS.between(last.date(), day);
    if (days <= 0) {
      return new TankNow(litres, msCm);
    }
    HourlyUse use =
        BenchDays.of(bench.household(), plants, last.date(), days)
            .use(bench.around(HomeWater.FIRST_GUESS_FLOODS));
    double lost = -use.dayL(0) / 2;
    for (int d = 0; d < days; d++) {
      lost += use.dayL(d);
    }
    double left = Math.max(0, litres - learned.factor().median() * lost);
    return new TankNow(
        left,
        left < LEAST_SHARE * litres
            ? msCm
            : Salinity.after(msCm, litres, left, learned.uptake().msCm(), 1));
  }
}
