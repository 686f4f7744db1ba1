package sallet.journal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All rows the grower wrote, by date; rows of one day in the order they were written. Rows are
 * added and never changed.
 *
 * @param entries the rows
 */
public record Journal(List<Entry> entries) {
  /** A journal without a row. */
  public static final Journal EMPTY = new Journal(List.of());

  public Journal {
    entries = entries.stream().sorted(Comparator.comparing(Entry::date)).toList();
  }

  /** This journal and one row more. */
  public Journal with(Entry entry) {
    List<Entry> more = new ArrayList<>(entries);
    more.add(entry);
    return new Journal(more);
  }

  /** The rows up to and with a day. */
  public Journal until(LocalDate day) {
    return new Journal(entries.stream().filter(entry -> !entry.date().isAfter(day)).toList());
  }
}
