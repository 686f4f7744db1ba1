package sallet.light;

import java.time.LocalDate;
import sallet.household.Household;

/** Light in a household's room. */
public final class RoomLight {
  private RoomLight() {}

  /** Light at every pot of the bench, in the order of the household's pots. */
  public static HourlyLight atPots(Household household, LocalDate from, int days) {
    throw new UnsupportedOperationException("not built yet");
  }

  /** Light on the nursery shelf, one place. */
  public static HourlyLight inNursery(Household household, LocalDate from, int days) {
    throw new UnsupportedOperationException("not built yet");
  }
}
