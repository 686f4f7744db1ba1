package sallet.app.report;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.light.HourlyLight;
import sallet.plan.SowingPlan;

/**
 * Mean light of every pot, period by period.
 *
 * @param periods in order of time, without gaps, at least one
 */
public record BenchLight(List<Period> periods) {
  public BenchLight {
    periods = List.copyOf(periods);
    if (periods.isEmpty()) {
      throw new IllegalArgumentException("needs at least one period");
    }
  }

  /**
   * Mean light of the pots over some days.
   *
   * @param from first day
   * @param to last day
   * @param dliMol mean daily light integral by pot name, mol/m²/d
   */
  public record Period(LocalDate from, LocalDate to, Map<String, Double> dliMol) {
    public Period {
      dliMol = Map.copyOf(dliMol);
    }
  }

  /** Each pot at the mean of its group over the whole plan: the light the plan was made with. */
  public static BenchLight ofGroups(SowingPlan plan) {
    Map<String, Double> dli = new LinkedHashMap<>();
    for (SowingPlan.PotGroup group : plan.groups()) {
      group.pots().forEach(pot -> dli.put(pot, group.meanDliMol()));
    }
    return new BenchLight(List.of(new Period(plan.from(), lastDay(plan), dli)));
  }

  /**
   * Each pot's own light, a mean for every calendar month (or the part of it that is covered).
   *
   * @param household names the pots
   * @param light light at the household's pots, in their order, at least one day
   */
  public static BenchLight ofPots(Household household, HourlyLight light) {
    List<Period> periods = new ArrayList<>();
    LocalDate end = light.from().plusDays(light.days());
    for (LocalDate from = light.from(); from.isBefore(end); ) {
      LocalDate monthEnd = YearMonth.from(from).atEndOfMonth();
      LocalDate to = monthEnd.isBefore(end) ? monthEnd : end.minusDays(1);
      periods.add(new Period(from, to, means(household.bench().pots(), light, from, to)));
      from = to.plusDays(1);
    }
    return new BenchLight(periods);
  }

  private static Map<String, Double> means(
      List<Pot> pots, HourlyLight light, LocalDate from, LocalDate to) {
    int first = (int) ChronoUnit.DAYS.between(light.from(), from);
    int last = (int) ChronoUnit.DAYS.between(light.from(), to);
    Map<String, Double> means = new LinkedHashMap<>();
    for (int p = 0; p < pots.size(); p++) {
      double sum = 0;
      for (int day = first; day <= last; day++) {
        sum += light.dliMol(p, day);
      }
      means.put(pots.get(p).name(), sum / (last - first + 1));
    }
    return means;
  }

  /** Mean light of the pot in the period of the day (the nearest period outside them), mol/m²/d. */
  public OptionalDouble dliMol(String pot, LocalDate day) {
    Double dli = at(day).dliMol().get(pot);
    return dli == null ? OptionalDouble.empty() : OptionalDouble.of(dli);
  }

  /** The period of the day, or the nearest one. */
  Period at(LocalDate day) {
    return periods.stream()
        .filter(p -> !p.to().isBefore(day))
        .findFirst()
        .orElse(periods.get(periods.size() - 1));
  }

  private static LocalDate lastDay(SowingPlan plan) {
    return plan.weeks().isEmpty()
        ? plan.from()
        : plan.weeks().get(plan.weeks().size() - 1).bowlDay();
  }
}
