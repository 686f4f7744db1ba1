package sallet.water.flood;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * When the pump runs.
 *
 * @param startMinutes minutes of the day at which floods begin, growing
 * @param onMinutes how long the pump stays on
 * @param everyMinutes time from start to start of a timer that only repeats
 * @param stretch how much more than usual may go between floods, because the timer cannot do more
 *     floods; 1 is usual
 * @param unserved pots that dry out faster than this timer can flood
 */
public record FloodSchedule(
    List<Integer> startMinutes,
    int onMinutes,
    OptionalInt everyMinutes,
    double stretch,
    List<String> unserved) {
  private static final int DAY = 24 * 60;

  public FloodSchedule {
    startMinutes = startMinutes.stream().sorted().toList();
    unserved = List.copyOf(unserved);
  }

  /** Floods in a day; a repeating timer's mean. */
  public double floodsPerDay() {
    return everyMinutes.isPresent() ? DAY / (double) everyMinutes.getAsInt() : startMinutes.size();
  }

  /** Hours the pump runs in a day. */
  public double pumpHours() {
    return floodsPerDay() * onMinutes / 60;
  }

  /** Whether a flood begins in a minute counted from the start of the first day. */
  public boolean startsAt(long minute) {
    if (everyMinutes.isPresent()) {
      long since = minute - startMinutes.get(0);
      return since >= 0 && since % everyMinutes.getAsInt() == 0;
    }
    return startMinutes.contains((int) Math.floorMod(minute, (long) DAY));
  }

  /** Longest time between the starts of two floods, minutes. */
  public int longestGapMinutes() {
    if (everyMinutes.isPresent()) {
      return everyMinutes.getAsInt();
    }
    int last = startMinutes.get(startMinutes.size() - 1) - DAY;
    int longest = 0;
    for (int start : startMinutes) {
      longest = Math.max(longest, start - last);
      last = start;
    }
    return longest;
  }

  /** Time from a start to the next but one, minutes: how long pots wait when one is missed. */
  public int minutesToNextButOne(int start) {
    int at = startMinutes.indexOf(start);
    int size = startMinutes.size();
    int then = startMinutes.get((at + 2) % size) + DAY * ((at + 2) / size);
    return then - start;
  }

  /** The starts as clock times. */
  public List<String> clockTimes() {
    return startMinutes.stream()
        .map(m -> String.format(Locale.ROOT, "%02d:%02d", m / 60, m % 60))
        .toList();
  }
}
