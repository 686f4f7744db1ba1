package sallet.plan;

import java.util.List;
import java.util.Locale;
import sallet.crop.Crop;
import sallet.household.Household;

/** Questions without an answer, and what would have to change. */
final class NoAnswer {
  private NoAnswer() {}

  static void checkPlaces(Household household, List<Crop> crops, TaskCalendar calendar) {
    if (household.nursery().cells() == 0) {
      throw new NoPlan("Nothing can be sown without cells: set nursery.cells to 1 or more.");
    }
    if (household.nursery().places() == 0) {
      throw new NoPlan("Seedlings have nowhere to grow on: set nursery.places to 1 or more.");
    }
    if (household.bench().pots().isEmpty()) {
      throw new NoPlan("There is no pot to grow in: add pots under bench.pots.");
    }
    if (crops.isEmpty()) {
      throw new NoPlan(
          "No crop is left to plan with: shorten crops.avoid or add a plannable crop to"
              + " crops.want.");
    }
    if (calendar.slots().isEmpty()) {
      throw new NoPlan(
          "Everybody is away on every task day of the plan: shorten the absence or plan more"
              + " weeks with --weeks.");
    }
  }

  static void checkReach(
      List<Course> courses,
      int firstBowl,
      TaskCalendar calendar,
      Surroundings at,
      List<Crop> crops) {
    if (courses.isEmpty()
        && crops.stream().allMatch(c -> c.germination().daysAt(at.cellMeanC()).isEmpty())) {
      throw new NoPlan(
          String.format(
              Locale.ROOT,
              "No wanted crop comes up at %.0f °C in the cells: bring nursery.day and"
                  + " nursery.night nearer to 20 °C.",
              at.cellMeanC()));
    }
    if (firstBowl >= calendar.bowls()) {
      throw new NoPlan(
          String.format(
              Locale.ROOT,
              "Nothing sown from %s on can fill a bowl by %s (the best pots get %.1f mol/m² of"
                  + " light a day; leaves want 10 to 17): give more light or warmth, or plan more"
                  + " weeks with --weeks.",
              calendar.from(),
              calendar.bowl(calendar.bowls() - 1),
              at.groups().get(0).meanDliMol()));
    }
  }
}
