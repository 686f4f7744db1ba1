package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;

class TaskTableTest {
  private static List<NamedCsvRecord> rows(String pot) {
    return CsvReader.builder()
        .ofNamedCsvRecord(TaskTable.csv(Tasks.of(PorchPlan.plan(pot))))
        .stream()
        .toList();
  }

  @Test
  void columnsAreTheJournals() {
    assertThat(rows("A6").get(0).getHeader())
        .containsExactly(
            "date", "event", "batch", "crop", "count", "place", "grams", "value", "unit", "note");
  }

  @Test
  void everyTaskHasItsRow() {
    assertThat(rows("A6").stream().map(row -> row.getField("note")))
        .containsExactlyElementsOf(Tasks.of(PorchPlan.plan()).stream().map(Task::text).toList());
  }

  @Test
  void aTaskIsAJournalRow() {
    assertThat(rows("A6").get(1).getFields())
        .containsExactly(
            "2026-11-28",
            "sow",
            "B02",
            "loose-leaf lettuce, green",
            "4",
            "4",
            "",
            "",
            "",
            "Sow 4 seeds of green loose-leaf lettuce, one a cell, 4 cells (batch B02).");
  }

  @Test
  void namesWithCommasQuotesAndLineBreaksComeBackWhole() {
    assertThat(rows("a,\"b\"\nc")).anyMatch(row -> row.getField("place").endsWith("+a,\"b\"\nc"));
  }
}
