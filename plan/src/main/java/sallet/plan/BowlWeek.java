package sallet.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sallet.crop.forecast.Band;

/**
 * One bowl. All grams are edible grams.
 *
 * @param bowlDay the day it is picked
 * @param demandGrams what the household wants (true demand, without margin)
 * @param reachable false while nothing sown from the first day on could serve it
 * @param harvestGrams what is picked and lifted on that day
 * @param plannedGrams what goes into the bowl, fresh and from the fridge
 * @param kinds grams of each crop in the bowl, most first
 * @param fullPlaces which places are full in the weeks that would have to feed this bowl; empty
 *     when it is not short
 * @param luck what it comes to over many seasons; empty when none were played
 */
public record BowlWeek(
    LocalDate bowlDay,
    double demandGrams,
    boolean reachable,
    double harvestGrams,
    double plannedGrams,
    List<Kind> kinds,
    List<String> fullPlaces,
    Optional<Luck> luck) {
  public BowlWeek {
    kinds = List.copyOf(kinds);
    fullPlaces = List.copyOf(fullPlaces);
  }

  /** A bowl whose luck is not known. */
  public BowlWeek(
      LocalDate bowlDay,
      double demandGrams,
      boolean reachable,
      double harvestGrams,
      double plannedGrams,
      List<Kind> kinds,
      List<String> fullPlaces) {
    this(
        bowlDay,
        demandGrams,
        reachable,
        harvestGrams,
        plannedGrams,
        kinds,
        fullPlaces,
        Optional.empty());
  }

  /** The same bowl with the luck of its harvest. */
  public BowlWeek withLuck(Luck over) {
    return new BowlWeek(
        bowlDay,
        demandGrams,
        reachable,
        harvestGrams,
        plannedGrams,
        kinds,
        fullPlaces,
        Optional.of(over));
  }

  /**
   * What a bowl comes to in 10, 50 and 90 of 100 seasons.
   *
   * @param harvestGrams picked and lifted on its day
   * @param bowlGrams in the bowl, fresh and from the fridge
   */
  public record Luck(Band harvestGrams, Band bowlGrams) {}

  /** Grams of one crop in the bowl. */
  public record Kind(String crop, double grams) {}

  /** Grams missing against the true demand. */
  public double shortfallGrams() {
    return Math.max(0, demandGrams - plannedGrams);
  }

  /** Grams in the bowl above the true demand. */
  public double surplusGrams() {
    return Math.max(0, plannedGrams - demandGrams);
  }
}
