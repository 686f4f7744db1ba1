package sallet.app.report.journal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.journal.Entry;
import sallet.learn.Remark;
import sallet.learn.Standing;

/**
 * What a journal comes to.
 *
 * @param standing what stands and what was learned
 * @param rows rows that count
 * @param lastReadings the last reading of each kind and place in the room, by date
 * @param remarks what the grower should know of single rows
 */
public record JournalReport(
    Standing standing, int rows, List<Entry> lastReadings, List<Remark> remarks) {
  public JournalReport {
    lastReadings = List.copyOf(lastReadings);
    remarks = List.copyOf(remarks);
  }

  /** Of rows in order of time the last reading of each kind and place. */
  public static List<Entry> lastReadings(List<Entry> rows) {
    Map<String, Entry> last = new LinkedHashMap<>();
    for (Entry row : rows) {
      if (!row.event().ofBatch()) {
        String key = row.event().word() + " " + row.place().text();
        last.remove(key);
        last.put(key, row);
      }
    }
    return List.copyOf(last.values());
  }
}
