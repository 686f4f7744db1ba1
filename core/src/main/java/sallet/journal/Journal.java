package sallet.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
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

  /** A short text that differs when any row differs. */
  public String fingerprint() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (Entry e : entries) {
        String row =
            String.join(
                    "|",
                    e.date().toString(),
                    e.event().word(),
                    e.batch(),
                    e.crop(),
                    e.count().toString(),
                    e.place().text(),
                    e.grams().toString(),
                    e.value().toString())
                + e.time().map(time -> "|" + time).orElse("");
        digest.update((row + "\n").getBytes(StandardCharsets.UTF_8));
      }
      return HexFormat.of().formatHex(digest.digest(), 0, FINGERPRINT_BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static final int FINGERPRINT_BYTES = 8;

  /** The rows up to and with a day. */
  public Journal until(LocalDate day) {
    return new Journal(entries.stream().filter(entry -> !entry.date().isAfter(day)).toList());
  }
}
