package sallet.crop;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** The days of a plant's life as the growth model needs them, along its stays. */
public final class LifeDays {
  /** Days over which leaves remember light. */
  private static final double LIGHT_MEMORY_DAYS = 5;

  /** Bounds of the specific leaf area, cm²/g. */
  private static final double LEAST_SLA = 150;

  private static final double MOST_SLA = 900;

  /** Bounds of the dry share of fresh mass. */
  private static final double LEAST_DRY_SHARE = 0.025;

  private static final double MOST_DRY_SHARE = 0.12;

  /** Specific leaf area rises so by °C up to its best temperature and falls so beyond it. */
  private static final double SLA_RISE_PER_C = 0.04;

  private static final double SLA_FALL_PER_C = 0.03;

  /** The leaf is thinnest so far below the warm end of the best range, °C. */
  private static final double SLA_BEST_BELOW_C = 2;

  private LifeDays() {}

  /**
   * One row for each day from emergence up to, not including, {@code until}.
   *
   * @param p growth parameters
   * @param rule harvest rule, for ageing and plants per pot
   * @param vigour the household factor m on assimilation
   * @param emergence first day of growth
   * @param stays in order of time, the first from emergence or before, no move before emergence
   */
  public static PlantDay[] of(
      PlantParameters p,
      HarvestRule rule,
      double vigour,
      LocalDate emergence,
      List<Stay> stays,
      LocalDate until) {
    Stay.requireAfter(emergence, stays);
    int n = (int) ChronoUnit.DAYS.between(emergence, until);
    PlantDay[] days = new PlantDay[Math.max(0, n)];
    double lightMemory = Double.NaN;
    int current = 0;
    for (int i = 0; i < n; i++) {
      LocalDate date = emergence.plusDays(i);
      current = Stay.currentOn(stays, current, date);
      Stay stay = stays.get(current);
      int at = stay.place().heldIndex(date);
      double dli = stay.place().dliMol(at);
      lightMemory =
          Double.isNaN(lightMemory) ? dli : lightMemory + (dli - lightMemory) / LIGHT_MEMORY_DAYS;
      days[i] =
          day(
              p,
              vigour * rule.ageing(i),
              stay.place().assimilateG(at),
              lightMemory,
              stay.place().meanC(at),
              stay.siteCm2() / rule.plantsPerPot());
    }
    return days;
  }

  /**
   * One day for plants of these parameters.
   *
   * @param vigour factor on assimilation beside the crop's own
   * @param assimilateG carbohydrate at assimilation factor 1, g CH2O/m²/d
   * @param lightMemoryMol five-day memory of the daily light integral, mol/m²/d
   * @param meanC mean temperature, °C
   * @param siteCm2 area one plant may fill, cm²
   */
  public static PlantDay day(
      PlantParameters p,
      double vigour,
      double assimilateG,
      double lightMemoryMol,
      double meanC,
      double siteCm2) {
    double light = Math.max(lightMemoryMol, 1) / p.referenceDliMol();
    double sla = p.slaCm2PerG() * Math.pow(light, p.slaLightPower()) * slaWarmth(p, meanC);
    double dry =
        p.dryMatterShare()
            * Math.pow(light, p.dryMatterLightPower())
            * Math.exp(p.dryMatterPerC() * (meanC - 20));
    return new PlantDay(
        vigour * p.assimilationFactor() * assimilateG * 1e-4,
        Math.pow(2, (meanC - 25) / 10),
        Math.expm1(p.growthCapPerDay() * growthResponse(p, meanC)),
        Math.min(MOST_SLA, Math.max(LEAST_SLA, sla)),
        Math.min(MOST_DRY_SHARE, Math.max(LEAST_DRY_SHARE, dry)),
        siteCm2,
        Math.max(0, meanC - p.leafBaseC()) / p.phyllochronCd());
  }

  /** Response of the specific leaf area to temperature; 1 two degrees below its best. */
  private static double slaWarmth(PlantParameters p, double meanC) {
    double best = p.optimumHighC() - SLA_BEST_BELOW_C;
    return Math.exp(
        SLA_RISE_PER_C * (Math.min(meanC, best) - (best - SLA_BEST_BELOW_C))
            - SLA_FALL_PER_C * Math.max(0, meanC - best));
  }

  /** Response of growth to temperature, 0 to 1. */
  static double growthResponse(PlantParameters p, double meanC) {
    if (meanC <= p.baseC() || meanC >= p.ceilingC()) {
      return 0;
    }
    if (meanC < p.optimumLowC()) {
      return (meanC - p.baseC()) / (p.optimumLowC() - p.baseC());
    }
    if (meanC > p.optimumHighC()) {
      return (p.ceilingC() - meanC) / (p.ceilingC() - p.optimumHighC());
    }
    return 1;
  }
}
