package sallet.crop;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** How long a plant may stand. */
public final class LastDay {
  private LastDay() {}

  /**
   * Last day on the bench: the day the plant is over age or the day it has come near to running to
   * seed, whichever is earlier.
   *
   * @param emergence first day of growth
   * @param stays in order of time, the first from emergence or before
   */
  public static LocalDate onBench(
      HarvestRule rule, Optional<Bolting> bolting, LocalDate emergence, List<Stay> stays) {
    OptionalInt nearSeed =
        bolting.isEmpty()
            ? OptionalInt.empty()
            : daysUntilNearSeed(bolting.get(), emergence, stays, rule.overAgeDays());
    return emergence.plusDays(nearSeed.orElse(rule.overAgeDays()));
  }

  /**
   * Days after emergence until the bolting sum, counted from the day of emergence on, has reached
   * {@link Bolting#LEAVE_AT} of its limit; empty if it has not after {@code atMostDays} or by the
   * end of the days the place of the last stay holds.
   */
  public static OptionalInt daysUntilNearSeed(
      Bolting bolting, LocalDate emergence, List<Stay> stays, int atMostDays) {
    double sumCd = 0;
    int stay = Stay.currentOn(stays, 0, emergence);
    for (int day = 0; day < atMostDays; day++) {
      LocalDate date = emergence.plusDays(day);
      stay = Stay.currentOn(stays, stay, date);
      PlaceDays place = stays.get(stay).place();
      if (!place.holds(date)) {
        return OptionalInt.empty();
      }
      int at = place.index(date);
      sumCd += bolting.dayCd(place.boltingHeatCd(at), place.photoperiodHours(at));
      if (sumCd >= Bolting.LEAVE_AT * bolting.halfSumCd()) {
        return OptionalInt.of(day);
      }
    }
    return OptionalInt.empty();
  }
}
