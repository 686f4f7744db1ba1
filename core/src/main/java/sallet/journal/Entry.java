package sallet.journal;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One row of the journal.
 *
 * @param line line in the file it came from, counted from 1; 0 when it came from none
 * @param date day it happened
 * @param event what happened
 * @param batch name of the batch; empty for readings in the room
 * @param crop catalogue name; empty when the row named none
 * @param count seeds when sowing, else plants (a clump that shares a pot counts as one), 1 or more
 * @param place where
 * @param grams edible grams of all plants picked or lifted; fresh grams of one plant weighed
 * @param value what was read, in {@link Event#unit()}
 * @param note the grower's own words
 * @param time time of the day by the clock, when it was written down
 */
public record Entry(
    int line,
    LocalDate date,
    Event event,
    String batch,
    String crop,
    OptionalInt count,
    Where place,
    OptionalDouble grams,
    OptionalDouble value,
    String note,
    Optional<LocalTime> time) {
  /** A row that names no time of the day. */
  public Entry(
      int line,
      LocalDate date,
      Event event,
      String batch,
      String crop,
      OptionalInt count,
      Where place,
      OptionalDouble grams,
      OptionalDouble value,
      String note) {
    this(line, date, event, batch, crop, count, place, grams, value, note, Optional.empty());
  }

  public Entry {
    if (event.ofBatch() && batch.isBlank()) {
      throw new IllegalArgumentException("a row of \"" + event.word() + "\" needs a batch");
    }
    if (count.isPresent() && count.getAsInt() < 1) {
      throw new IllegalArgumentException("a count must be 1 or more, was " + count.getAsInt());
    }
    if (grams.isPresent() && !(grams.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("grams must be 0 or more, were " + grams.getAsDouble());
    }
  }
}
