package sallet.cases;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A folder of check files with one sub-folder a subject.
 *
 * @param root the folder that holds light/, crop/ and so on
 */
public record CaseFolder(Path root) {

  /** Whether the folder has the file. */
  public boolean has(String file) {
    return Files.isRegularFile(root.resolve(file));
  }

  /** Where a file lies. */
  public Path path(String file) {
    return root.resolve(file);
  }

  /**
   * All rows of a file; a JSON file is one row with all of it in the column {@code text}.
   *
   * @throws UnreadableCase when the file is missing or is not a table with a header
   */
  public List<CaseRow> rows(String file) {
    if (!has(file)) {
      throw new UnreadableCase(file + " is missing.");
    }
    if (file.endsWith(".json")) {
      return List.of(new CaseRow(file, 1, Map.of("text", text(file))));
    }
    List<CaseRow> rows = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(root.resolve(file))) {
      for (NamedCsvRecord row : csv) {
        if (row.getFields().size() != row.getHeader().size()) {
          throw new UnreadableCase(
              file + " line " + row.getStartingLineNumber() + " is not as wide as the header.");
        }
        rows.add(new CaseRow(file, (int) row.getStartingLineNumber(), row.getFieldsAsMap()));
      }
    } catch (IOException | UncheckedIOException | CsvParseException e) {
      throw new UnreadableCase(
          file + " is not a table of comma-separated values (" + e.getMessage() + ").");
    }
    return rows;
  }

  private String text(String file) {
    try {
      return Files.readString(root.resolve(file));
    } catch (IOException e) {
      throw new UnreadableCase(file + " is not text (" + e.getMessage() + ").");
    }
  }
}
