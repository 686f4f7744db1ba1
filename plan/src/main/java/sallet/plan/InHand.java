package sallet.plan;

import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.household.Household;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;

/**
 * Grams picked already for the next bowl. A bowl is filled from what was picked in the week up to
 * its day; what the last bowl did not want keeps in the fridge where the crop allows.
 */
final class InHand {
  private static final int WEEK = 7;

  private final Journal journal;
  private final Household household;
  private final Catalogue catalogue;
  private final LocalDate today;

  InHand(Journal journal, Household household, Catalogue catalogue, LocalDate today) {
    this.journal = journal;
    this.household = household;
    this.catalogue = catalogue;
    this.today = today;
  }

  /** Edible grams by crop. */
  Map<String, Double> grams() {
    LocalDate lastBowl = today.with(TemporalAdjusters.previous(household.eaters().bowlDay()));
    Map<String, Double> grams = picked(lastBowl, today);
    leftOver(lastBowl).forEach((crop, g) -> grams.merge(crop, g, Double::sum));
    return grams;
  }

  /** What the last bowl did not want, of the crops that keep for a week. */
  private Map<String, Double> leftOver(LocalDate lastBowl) {
    Map<String, Double> served = picked(lastBowl.minusWeeks(1), lastBowl);
    double sum = served.values().stream().mapToDouble(g -> g).sum();
    double wanted =
        new TaskCalendar(household.eaters(), household.absences(), lastBowl, 1).demandGrams(0);
    double left = sum > wanted ? 1 - wanted / sum : 0;
    Map<String, Double> grams = new LinkedHashMap<>();
    served.forEach(
        (crop, g) -> {
          boolean keeps =
              catalogue
                  .find(crop)
                  .flatMap(Crop::harvest)
                  .map(HarvestRule::fridgeCarryDays)
                  .filter(days -> days >= WEEK)
                  .isPresent();
          if (keeps && left > 0) {
            grams.put(crop, left * g);
          }
        });
    return grams;
  }

  /** What was picked and lifted after a day up to and with another. */
  private Map<String, Double> picked(LocalDate after, LocalDate until) {
    Map<String, String> crops = new LinkedHashMap<>();
    Map<String, Double> grams = new LinkedHashMap<>();
    for (Entry entry : journal.until(until).entries()) {
      if (entry.event() == Event.SOW) {
        crops.put(entry.batch(), entry.crop());
      }
      if (List.of(Event.PICK, Event.LIFT).contains(entry.event())
          && entry.date().isAfter(after)
          && entry.grams().isPresent()) {
        String crop = crops.getOrDefault(entry.batch(), entry.crop());
        grams.merge(crop, entry.grams().getAsDouble(), Double::sum);
      }
    }
    return grams;
  }
}
