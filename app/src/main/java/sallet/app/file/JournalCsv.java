package sallet.app.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.journal.Entry;
import sallet.journal.Journal;

/**
 * Journals as comma-separated values (RFC 4180) with a header. A file is read whole or not at all,
 * and all its faults are told in one go.
 */
public final class JournalCsv {
  /** The columns, in the order in which they are written. */
  static final List<String> COLUMNS =
      List.of("date", "event", "batch", "crop", "count", "place", "grams", "value", "unit", "note");

  /** A column for those who write down when in the day they read. */
  private static final List<String> KNOWN =
      Stream.concat(COLUMNS.stream(), Stream.of("time")).toList();

  private static final String OPEN_QUOTE =
      "a quotation mark is opened and not closed; write one inside a text twice";

  /** Largest file that is read, bytes: decades of rows. */
  private static final int LARGEST = 5_000_000;

  private final Faults faults = new Faults();
  private final List<Fault> warnings = new ArrayList<>();
  private final JournalRow row;

  private JournalCsv(Household household, Catalogue catalogue) {
    row = new JournalRow(household, catalogue, faults);
  }

  /** Reads a file of a household's journal. */
  public static JournalFile read(String file, Household household, Catalogue catalogue) {
    JournalCsv csv = new JournalCsv(household, catalogue);
    return csv.bytes(file).map(csv::parse).orElseGet(csv::faulty);
  }

  /** Reads the text of a household's journal. */
  public static JournalFile of(String text, Household household, Catalogue catalogue) {
    JournalCsv csv = new JournalCsv(household, catalogue);
    return csv.parse(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Rows as text, the header first. */
  public static String write(List<Entry> entries) {
    StringWriter out = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(out)) {
      boolean timed = entries.stream().anyMatch(entry -> entry.time().isPresent());
      csv.writeRecord(timed ? KNOWN : COLUMNS);
      entries.forEach(
          entry -> {
            List<String> cells = new ArrayList<>(cells(entry));
            if (timed) {
              cells.add(entry.time().map(Object::toString).orElse(""));
            }
            csv.writeRecord(cells);
          });
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return out.toString();
  }

  private static List<String> cells(Entry e) {
    return List.of(
        e.date().toString(),
        e.event().word(),
        e.batch(),
        e.crop(),
        e.count().isPresent() ? Integer.toString(e.count().getAsInt()) : "",
        e.place().text(),
        number(e.grams()),
        number(e.value()),
        e.value().isPresent() ? e.event().unit() : "",
        e.note());
  }

  private static String number(OptionalDouble value) {
    if (value.isEmpty()) {
      return "";
    }
    double number = value.getAsDouble();
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  private Optional<byte[]> bytes(String name) {
    try {
      Path file = Path.of(name);
      if (!Files.isRegularFile(file)) {
        String what =
            Files.isDirectory(file)
                ? "is a folder; name the journal in it"
                : "there is no such file; check its name and folder";
        faults.add("", 0, what);
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length <= LARGEST) {
          return Optional.of(bytes);
        }
        faults.add("", 0, "the file is larger than 5 MB; a journal of decades is smaller");
      }
    } catch (InvalidPathException e) {
      faults.add("", 0, "this is not a file name; check it for odd signs");
    } catch (IOException e) {
      faults.add("", 0, "the file cannot be read; check that you are allowed to");
    }
    return Optional.empty();
  }

  private JournalFile faulty() {
    return new JournalFile.Faulty(faults.inOrder());
  }

  private JournalFile parse(byte[] bytes) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      faults.add("", 0, "a letter in it is not UTF-8; save the file as UTF-8");
      return faulty();
    }
    List<CsvRecord> records = records(text.startsWith("\ufeff") ? text.substring(1) : text);
    List<Entry> entries = faults.isEmpty() ? entries(records) : List.of();
    return faults.isEmpty() ? new JournalFile.Good(new Journal(entries), warnings) : faulty();
  }

  private List<CsvRecord> records(String text) {
    String head = text.lines().findFirst().orElse("");
    char separator = head.indexOf(',') < 0 && head.indexOf(';') >= 0 ? ';' : ',';
    try (CsvReader<CsvRecord> csv =
        CsvReader.builder()
            .fieldSeparator(separator)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      List<CsvRecord> records = csv.stream().toList();
      if (text.chars().filter(c -> c == '"').count() % 2 == 0) {
        return records;
      }
      int last = (int) records.get(records.size() - 1).getStartingLineNumber();
      faults.add("", last, OPEN_QUOTE);
    } catch (CsvParseException e) {
      faults.add("", 0, OPEN_QUOTE);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be read", e);
    }
    return List.of();
  }

  private List<Entry> entries(List<CsvRecord> records) {
    if (records.isEmpty()) {
      faults.add(
          "",
          0,
          "the file is empty; its first line names the columns: " + String.join(",", COLUMNS));
      return List.of();
    }
    List<String> header =
        records.get(0).getFields().stream()
            .map(name -> name.strip().toLowerCase(Locale.ROOT))
            .toList();
    checkHeader(header);
    if (!faults.isEmpty()) {
      return List.of();
    }
    List<Entry> entries = new ArrayList<>();
    for (CsvRecord one : records.subList(1, records.size())) {
      int line = (int) one.getStartingLineNumber();
      if (one.getFields().stream().allMatch(String::isBlank)) {
        continue;
      }
      if (one.getFieldCount() > header.size()) {
        faults.add(
            "",
            line,
            "has %d cells and the header %d; put a text with commas in quotation marks"
                .formatted(one.getFieldCount(), header.size()));
      } else {
        row.read(line, cells(header, one.getFields())).ifPresent(entries::add);
      }
    }
    return entries;
  }

  private void checkHeader(List<String> header) {
    for (String needed : List.of("date", "event")) {
      if (!header.contains(needed)) {
        faults.add(
            "",
            1,
            "the column \""
                + needed
                + "\" is missing; the first line names the columns: "
                + String.join(",", COLUMNS));
      }
    }
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i);
      if (header.indexOf(name) < i && KNOWN.contains(name)) {
        faults.add("", 1, "the column \"" + name + "\" stands there twice");
      } else if (!name.isEmpty() && !KNOWN.contains(name)) {
        warnings.add(new Fault("", 1, "the column \"" + name + "\" is not known and was not read"));
      }
    }
  }

  private static Map<String, String> cells(List<String> header, List<String> fields) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < fields.size(); i++) {
      cells.put(header.get(i), fields.get(i).strip());
    }
    return cells;
  }
}
