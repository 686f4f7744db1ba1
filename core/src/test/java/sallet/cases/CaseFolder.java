package sallet.cases;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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

  /** All rows of a file. */
  public List<CaseRow> rows(String file) {
    List<CaseRow> rows = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(root.resolve(file))) {
      for (NamedCsvRecord row : csv) {
        rows.add(new CaseRow(file, (int) row.getStartingLineNumber(), row.getFieldsAsMap()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }
}
