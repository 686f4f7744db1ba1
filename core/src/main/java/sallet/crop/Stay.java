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
