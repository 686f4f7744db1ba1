package sallet.plan.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.stream.IntStream;
import sallet.household.Household;

/** Who is at home when, and what follows from it: bowl days, task days and demand. */
final class HomeCalendar {
  private final Household household;
  private final LocalDate from;
  private final List<LocalDate> bowlDays;

  /**
   * @param from first day of the plan
   * @param bowls number of bowls, at least one
   */
  HomeCalendar(Household household, LocalDate from, int bowls) {
    this.household = household;
    this.from = from;
    LocalDate first = from.with(TemporalAdjusters.nextOrSame(household.eaters().bowlDay()));
    this.bowlDays = IntStream.range(0, bowls).mapToObj(first::plusWeeks).toList();
  }

  /** First day of the plan. */
  LocalDate from() {
    return from;
  }

  /** Last day of the plan: its last bowl day. */
  LocalDate last() {
    return bowlDays.get(bowlDays.size() - 1);
  }

  /** Days from the first to the last, both counted. */
  int days() {
    return (int) ChronoUnit.DAYS.between(from, last()) + 1;
  }

  /** Bowl days, whether somebody is at home or not. */
  List<LocalDate> bowlDays() {
    return bowlDays;
  }

  /** Whether a day belongs to the plan. */
  boolean holds(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(last());
  }

  /** Days on which hand work is done, in order. */
  List<LocalDate> taskDays() {
    return from.datesUntil(last().plusDays(1)).filter(this::isTaskDay).toList();
  }

  /** Whether hand work is done on a day. */
  boolean isTaskDay(LocalDate day) {
    return holds(day)
        && household.eaters().taskDays().contains(day.getDayOfWeek())
        && atHome(day) > 0;
  }

  /** Whether leaves can be picked on a day. */
  boolean isPickDay(LocalDate day) {
    return bowlDays.contains(day) && atHome(day) > 0;
  }

  /** People at home on a day. Absences that overlap are of different people. */
  int atHome(LocalDate day) {
    int away =
        household.absences().stream()
            .filter(absence -> absence.covers(day))
            .mapToInt(absence -> absence.people())
            .sum();
    return Math.max(0, household.eaters().people() - away);
  }

  /** Edible grams wanted for the week that begins on a bowl day, 0 when nobody can pick. */
  double demandGrams(LocalDate bowlDay) {
    if (atHome(bowlDay) == 0) {
      return 0;
    }
    int personDays = bowlDay.datesUntil(bowlDay.plusDays(7)).mapToInt(this::atHome).sum();
    return household.eaters().bowlGrams() * personDays / (7.0 * household.eaters().people());
  }
}
