package sallet.light;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sallet.household.Household;
import sallet.household.Wall;

/**
 * Measures a year of hourly light at 40 pots behind two windows, one with a skyline: first run
 * cold, then warm. Prints milliseconds.
 */
final class RoomLightTiming {
  private RoomLightTiming() {}

  public static void main(String[] args) {
    Household household =
        Households.household(
            Households.CHRISTCHURCH,
            Households.room(
                0,
                List.of(
                    Households.window(Wall.NORTH, 0.6, 1.8, 1.2, 0.9),
                    Households.withSkyline(Households.window(Wall.WEST, 0.5, 1.2, 1.2, 0.9), 15))),
            Households.bench(0.4, 1.5, 5, 8),
            Optional.of(Households.LAMP));
    LocalDate from = LocalDate.of(2027, 1, 1);
    for (int run = 0; run < 8; run++) {
      long start = System.nanoTime();
      HourlyLight light = RoomLight.atPots(household, from, 365);
      System.out.printf(
          "run %d: %.0f ms (mean of pot 1 on day 1: %.2f mol)%n",
          run + 1, (System.nanoTime() - start) / 1e6, light.dliMol(0, 0));
    }
    HourlyLight light = RoomLight.atPots(household, from, 365);
    System.out.println("month  window mol/m²/d: pot 1, pot 40; lamp: pot 20; day length h");
    for (int day = 14; day < 365; day += 30) {
      System.out.printf(
          "%s  %.2f  %.2f  %.2f  %.1f%n",
          from.plusDays(day),
          light.daylightDliMol(0, day),
          light.daylightDliMol(39, day),
          light.lampDliMol(19, day),
          light.photoperiodHours(day));
    }
  }
}
