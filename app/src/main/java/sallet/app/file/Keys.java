package sallet.app.file;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import sallet.units.Dimension;

/** Every key of the household file, from {@code household-keys.csv}, in the order of that table. */
final class Keys {
  private final Map<String, Key> byPath = new LinkedHashMap<>();

  private Keys() {}

  /** The table that ships with Sallet. */
  static Keys shipped() {
    Keys keys = new Keys();
    try (InputStream in =
            Objects.requireNonNull(Keys.class.getResourceAsStream("household-keys.csv"));
        CsvReader<NamedCsvRecord> rows =
            CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (NamedCsvRecord row : rows) {
        Key key = key(row);
        keys.byPath.put(key.path(), key);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return keys;
  }

  private static Key key(NamedCsvRecord row) {
    Form form = Form.of(row.getField("form"));
    String of = row.getField("of");
    boolean choice = form == Form.CHOICE;
    return new Key(
        row.getField("path"),
        form,
        of.isEmpty() || choice ? Optional.empty() : Optional.of(Dimension.valueOf(of)),
        choice ? List.of(of.split("\\|")) : List.of(),
        number(row.getField("min")),
        number(row.getField("max")),
        row.getField("default"),
        row.getField("meaning"),
        row.getField("origin"));
  }

  private static double number(String text) {
    return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
  }

  /** The key of a path in a file, in which items of lists have numbers ("bench.pots[3].x"). */
  Optional<Key> find(String path) {
    return Optional.ofNullable(byPath.get(path.replaceAll("\\[\\d+]", "[]")));
  }

  /** The key of a path that must be in the table. */
  Key of(String path) {
    return find(path).orElseThrow(() -> new IllegalArgumentException("no key " + path));
  }

  /** The keys directly inside a section or list item. */
  List<Key> inside(String path) {
    String parent = path.replaceAll("\\[\\d+]", "[]");
    return byPath.values().stream().filter(key -> key.parent().equals(parent)).toList();
  }

  /** All keys. */
  List<Key> all() {
    return List.copyOf(byPath.values());
  }
}
