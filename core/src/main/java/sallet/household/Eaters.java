package sallet.household;

import java.time.DayOfWeek;
import java.util.List;

/**
 * Who eats and how much.
 *
 * @param people number of people at the table, 1 to 50
 * @param bowlGrams edible grams wanted each week when everybody is at home, above 0
 * @param kinds kinds of leaf wanted in each bowl, 1 to 8
 * @param taskDays weekdays on which hand work is done, Monday first; the last of them is bowl day
 */
public record Eaters(int people, double bowlGrams, int kinds, List<DayOfWeek> taskDays) {
  public Eaters {
    taskDays = taskDays.stream().distinct().sorted().toList();
    if (taskDays.isEmpty()) {
      throw new IllegalArgumentException("taskDays must name at least one weekday");
    }
  }

  /** The weekday on which the bowl is filled: the last task day of the week (Monday to Sunday). */
  public DayOfWeek bowlDay() {
    return taskDays.get(taskDays.size() - 1);
  }
}
