package sallet.plan;

import java.time.LocalDate;
import sallet.household.Household;

/** Light and air of a household's places over a season: worked out once, used by many plans. */
public final class Season {
  private final Surroundings places;

  private Season(Surroundings places) {
    this.places = places;
  }

  /**
   * Works out light and air.
   *
   * @param from first day
   * @param days number of days, 1 or more
   */
  public static Season of(Household household, LocalDate from, int days) {
    return new Season(Question.surroundings(household, from, 0, days));
  }

  Surroundings places() {
    return places;
  }
}
