package sallet.learn;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.crop.PlaceDays;
import sallet.learn.GrowingPlaces.PotPlace;

/** Places where every day is the same, for tests: six pots, the last two in less light. */
final class SteadyPlaces {
  static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
  static final List<String> POTS = List.of("A1", "A2", "A3", "A4", "B1", "B2");

  private static final int DAYS = 200;
  private static final double SITE_CM2 = 300;

  private SteadyPlaces() {}

  static GrowingPlaces places() {
    Map<String, PotPlace> pots = new LinkedHashMap<>();
    for (String pot : POTS) {
      pots.put(pot, new PotPlace(days(pot.startsWith("A") ? 11 : 7), SITE_CM2));
    }
    return new GrowingPlaces(days(8.6), 16, 49, pots);
  }

  /** Light of some mol/m²/d; carbohydrate in proportion to it, as in dim light. */
  private static PlaceDays days(double dliMol) {
    return new PlaceDays(FIRST, all(1.25 * dliMol), all(dliMol), all(19), all(16), all(14));
  }

  private static double[] all(double value) {
    double[] days = new double[DAYS];
    Arrays.fill(days, value);
    return days;
  }
}
