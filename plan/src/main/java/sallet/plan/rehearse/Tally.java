package sallet.plan.rehearse;

import java.time.LocalDate;
import java.util.stream.IntStream;
import sallet.plan.TaskCalendar;

/** Counts what a season gives, week by week; a week ends with its bowl. */
final class Tally {
  private final TaskCalendar calendar;
  private final double[] eaten;
  private final int[] kinds;
  private final double[] harvest;
  private final double[] spoilt;
  private final double[] cleared;
  private final int[] seeds;
  private final int[] touched;

  Tally(TaskCalendar calendar) {
    int n = calendar.bowls();
    this.calendar = calendar;
    eaten = new double[n];
    kinds = new int[n];
    harvest = new double[n];
    spoilt = new double[n];
    cleared = new double[n];
    seeds = new int[n];
    touched = new int[n];
  }

  private int week(LocalDate day) {
    int w = 0;
    while (calendar.bowl(w).isBefore(day)) {
      w++;
    }
    return w;
  }

  void sown(LocalDate day, int count) {
    seeds[week(day)] += count;
  }

  void taken(LocalDate day, double grams) {
    harvest[week(day)] += grams;
    touched[week(day)]++;
  }

  void cleared(LocalDate day, double grams) {
    cleared[week(day)] += grams;
  }

  void eaten(LocalDate day, Kitchen.Bowl bowl) {
    int w = week(day);
    eaten[w] = bowl.eatenGrams();
    kinds[w] = bowl.kinds();
    spoilt[w] += bowl.spoiltGrams();
  }

  PlayedSeason season() {
    return new PlayedSeason(
        IntStream.range(0, eaten.length)
            .mapToObj(
                w ->
                    new PlayedSeason.Week(
                        calendar.bowl(w),
                        calendar.demandGrams(w),
                        eaten[w],
                        kinds[w],
                        harvest[w],
                        spoilt[w],
                        cleared[w],
                        seeds[w],
                        touched[w]))
            .toList());
  }
}
