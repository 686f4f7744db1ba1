package sallet.app.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Tasks with the journal's columns: a task done as told is one row of the journal. */
final class TaskTable {
  private static final List<String> COLUMNS =
      List.of("date", "event", "batch", "crop", "count", "place", "grams", "value", "unit", "note");

  private TaskTable() {}

  /** Comma separated values; the note is the task's text. */
  static String csv(List<Task> tasks) {
    StringWriter out = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(out)) {
      csv.writeRecord(COLUMNS);
      tasks.forEach(task -> csv.writeRecord(row(task)));
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return out.toString();
  }

  private static List<String> row(Task t) {
    return List.of(
        t.date().toString(),
        t.event().journalWord(),
        t.batch(),
        t.crop(),
        Integer.toString(t.count()),
        t.place(),
        t.grams() > 0 ? Words.oneDecimal(t.grams()) : "",
        "",
        "",
        t.text());
  }
}
