package sallet.household;

import java.time.LocalDate;

/**
 * Days away from home.
 *
 * @param from first day away
 * @param to last day away, not before {@code from}
 * @param people how many are away; when it is everybody no hand work is done on these days
 */
public record Absence(LocalDate from, LocalDate to, int people) {
  /** Whether the day falls inside the absence, both ends included. */
  public boolean covers(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }
}
