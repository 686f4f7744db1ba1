package sallet.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;

/** Writes journals for tests, a line each. */
final class Rows {
  private final List<Entry> entries = new ArrayList<>();

  /** Adds a row of a batch; a count of 0 and negative grams and values are left out. */
  Rows add(
      LocalDate date,
      Event event,
      String batch,
      int count,
      Where where,
      double grams,
      double value) {
    entries.add(
        new Entry(
            entries.size() + 2,
            date,
            event,
            batch,
            event == Event.SOW ? batch.substring(0, batch.lastIndexOf('-')) : "",
            count > 0 ? OptionalInt.of(count) : OptionalInt.empty(),
            where,
            grams >= 0 ? OptionalDouble.of(grams) : OptionalDouble.empty(),
            value >= 0 ? OptionalDouble.of(value) : OptionalDouble.empty(),
            ""));
    return this;
  }

  /** Adds a row by the day of the steady places' year. */
  Rows day(int day, Event event, String batch, int count, String pots) {
    return add(date(day), event, batch, count, where(pots), -1, -1);
  }

  Rows grams(int day, Event event, String batch, String pots, double grams) {
    return add(date(day), event, batch, 0, where(pots), grams, -1);
  }

  static LocalDate date(int day) {
    return SteadyPlaces.FIRST.plusDays(day);
  }

  static Where where(String place) {
    if (place.isEmpty()) {
      return new Where.Anywhere();
    }
    return place.equals("nursery")
        ? new Where.Nursery()
        : new Where.Pots(List.of(place.split("\\+", -1)));
  }

  List<Entry> entries() {
    return List.copyOf(entries);
  }

  Journal journal() {
    return new Journal(entries);
  }
}
