package sallet.water.absence;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A day as people say it. */
final class DayWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

  private DayWords() {}

  /** Such as "Friday 1 January". */
  static String of(LocalDate day) {
    return day.format(DAY);
  }
}
