package sallet.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import sallet.household.Absence;
import sallet.household.Eaters;

/**
 * The days of a plan. A <em>slot</em> is a task day with the days up to the next one: places change
 * hands only at the start of a slot. A <em>bowl</em> is a bowl day, the last task day of its week.
 */
public final class TaskCalendar {
  private final LocalDate from;
  private final List<LocalDate> slots = new ArrayList<>();
  private final List<LocalDate> bowls = new ArrayList<>();
  private final int[] bowlSlot;
  private final double[] demandGrams;

  /**
   * @param bowlCount number of bowl days, 1 or more
   */
  public TaskCalendar(Eaters eaters, List<Absence> absences, LocalDate from, int bowlCount) {
    this.from = from;
    LocalDate bowl = from.with(TemporalAdjusters.nextOrSame(eaters.bowlDay()));
    for (int i = 0; i < bowlCount; i++) {
      bowls.add(bowl.plusWeeks(i));
    }
    LocalDate last = bowls.get(bowlCount - 1);
    for (LocalDate day = from; !day.isAfter(last); day = day.plusDays(1)) {
      if (eaters.taskDays().contains(day.getDayOfWeek())
          && peopleAway(eaters, absences, day) < eaters.people()) {
        slots.add(day);
      }
    }
    bowlSlot = bowls.stream().mapToInt(slots::indexOf).toArray();
    demandGrams = new double[bowlCount];
    for (int w = 0; w < bowlCount; w++) {
      demandGrams[w] = bowlSlot[w] < 0 ? 0 : demand(eaters, absences, bowls.get(w));
    }
  }

  private static double demand(Eaters eaters, List<Absence> absences, LocalDate bowlDay) {
    int personDays = 0;
    for (int d = 0; d < 7; d++) {
      personDays += eaters.people() - peopleAway(eaters, absences, bowlDay.plusDays(d));
    }
    return eaters.bowlGrams() * personDays / (7.0 * eaters.people());
  }

  private static int peopleAway(Eaters eaters, List<Absence> absences, LocalDate day) {
    int away = absences.stream().filter(a -> a.covers(day)).mapToInt(Absence::people).sum();
    return Math.min(eaters.people(), away);
  }

  public LocalDate from() {
    return from;
  }

  /** Days from the first day of the plan to the last bowl, both counted. */
  public int days() {
    return (int) ChronoUnit.DAYS.between(from, bowls.get(bowls.size() - 1)) + 1;
  }

  public List<LocalDate> slots() {
    return slots;
  }

  public LocalDate slot(int i) {
    return slots.get(i);
  }

  public int bowls() {
    return bowls.size();
  }

  public LocalDate bowl(int w) {
    return bowls.get(w);
  }

  /** Slot that starts on a bowl day, or -1 when everybody is away. */
  public int slotOfBowl(int w) {
    return bowlSlot[w];
  }

  /** True demand of a bowl, edible grams. */
  public double demandGrams(int w) {
    return demandGrams[w];
  }

  /** First slot on or after a day, or -1. */
  public int slotFrom(LocalDate day) {
    for (int i = 0; i < slots.size(); i++) {
      if (!slots.get(i).isBefore(day)) {
        return i;
      }
    }
    return -1;
  }
}
