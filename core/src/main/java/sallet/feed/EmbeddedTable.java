package sallet.feed;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A table of constants that ships with Sallet as a CSV file. */
public final class EmbeddedTable {
  private EmbeddedTable() {}

  /** Rows of a table of this package by column name; every cell is present, blank when empty. */
  public static List<Map<String, String>> rows(String file) {
    try (InputStream in = EmbeddedTable.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("missing table " + file);
      }
      List<Map<String, String>> rows = new ArrayList<>();
      try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(in)) {
        csv.forEach(row -> rows.add(Map.copyOf(row.getFieldsAsMap())));
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A cell as text. */
  public static String text(Map<String, String> row, String column) {
    String cell = row.get(column);
    if (cell == null) {
      throw new IllegalStateException("table has no column " + column);
    }
    return cell.strip();
  }

  /** A cell as a number. */
  public static double number(Map<String, String> row, String column) {
    return Double.parseDouble(text(row, column));
  }
}
