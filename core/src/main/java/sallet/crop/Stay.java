package sallet.crop;

import java.time.LocalDate;
import java.util.List;

/**
 * A plant's stay at one place, from a day on until the next stay begins.
 *
 * @param from first day whose light the plant gets there
 * @param place what the place offers
 * @param siteCm2 area the plant may fill there, cm²
 */
public record Stay(LocalDate from, PlaceDays place, double siteCm2) {
  public Stay {
    if (!(siteCm2 > 0)) {
      throw new IllegalArgumentException(
          "the area a plant may fill must be above 0 cm², was " + siteCm2 + " cm²");
    }
  }

  /**
   * Refuses what no plant can live: a move before it comes up, and stays out of order.
   *
   * @param stays in order of time, the first from emergence or before
   */
  public static void requireAfter(LocalDate emergence, List<Stay> stays) {
    for (int i = 1; i < stays.size(); i++) {
      LocalDate move = stays.get(i).from();
      if (move.isBefore(emergence)) {
        throw new IllegalArgumentException(
            "a plant cannot move on " + move + ", before it comes up on " + emergence);
      }
      if (move.isBefore(stays.get(i - 1).from())) {
        throw new IllegalArgumentException(
            "a plant cannot move on " + move + ", before its move on " + stays.get(i - 1).from());
      }
    }
  }

  /** Index of the stay a plant is in on a date, looked for from {@code index} on. */
  static int currentOn(List<Stay> stays, int index, LocalDate date) {
    if (stays.isEmpty() || stays.get(index).from().isAfter(date)) {
      throw new IllegalArgumentException("the plant has no place on " + date);
    }
    int current = index;
    while (current + 1 < stays.size() && !stays.get(current + 1).from().isAfter(date)) {
      current++;
    }
    return current;
  }
}
