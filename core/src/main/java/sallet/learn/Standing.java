package sallet.learn;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.journal.Journal;

/**
 * What the journal of a household comes to at the end of a day.
 *
 * @param today the day
 * @param batches what is believed to stand, by day of sowing and then name
 * @param lives all plants that stand or stood on the bench, gone ones too, by day of sowing
 * @param otherPots pots held by plants without a growth model, which no batch tells of
 * @param learned what the journal teaches
 * @param remarks contradictions first, each by line; with one, the rows they tell of were left out
 */
public record Standing(
    LocalDate today,
    List<StandingBatch> batches,
    List<BenchLife> lives,
    List<String> otherPots,
    Learned learned,
    List<Remark> remarks) {
  public Standing {
    batches = List.copyOf(batches);
    lives = List.copyOf(lives);
    otherPots = List.copyOf(otherPots);
    remarks = List.copyOf(remarks);
  }

  /**
   * What stands at the end of a day.
   *
   * @param places known from the first sowing of the journal to the day
   */
  public static Standing of(
      Journal journal, Catalogue catalogue, GrowingPlaces places, LocalDate today) {
    return new WhatStands(journal, catalogue, places, today).standing();
  }

  /** The same in the light and air of a household. */
  public static Standing of(
      Journal journal, Catalogue catalogue, Household household, LocalDate today) {
    LocalDate from = firstDay(journal, today);
    int days = (int) ChronoUnit.DAYS.between(from, today) + 1;
    return of(journal, catalogue, GrowingPlaces.of(household, from, days), today);
  }

  /** First day whose light bears on what stands: the first row's, if it is not after today. */
  public static LocalDate firstDay(Journal journal, LocalDate today) {
    return journal.until(today).entries().stream()
        .filter(entry -> entry.event().ofBatch())
        .findFirst()
        .map(entry -> entry.date())
        .orElse(today);
  }

  /** Whether the journal contradicts itself. */
  public boolean contradicts() {
    return remarks.stream().anyMatch(Remark::contradiction);
  }
}
