package sallet.crop;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A table that ships with Sallet beside the classes of this package. */
final class Table {
  private static final Pattern RANGE = Pattern.compile("(-?[0-9.]+)(?:-([0-9.]+))?");

  private Table() {}

  /** All rows of a table. */
  static List<Row> rows(String file) {
    try (InputStream in = Table.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("the table " + file + " is missing");
      }
      return CsvReader.builder()
          .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))
          .stream()
          .map(Row::new)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One row; cells are blank, "-" or filled. */
  record Row(NamedCsvRecord cells) {

    String text(String column) {
      return cells.getField(column).strip();
    }

    boolean has(String column) {
      String value = text(column);
      return !value.isEmpty() && !value.equals("-");
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }

    int count(String column) {
      return Integer.parseInt(text(column));
    }

    boolean yes(String column) {
      return text(column).equals("yes");
    }

    /** A plain number; empty when the cell is blank or holds words. */
    Optional<Double> ifNumber(String column) {
      return ifSpan(column).filter(span -> span.low() == span.high()).map(Span::low);
    }

    /** A number or a range such as "12-18"; empty when the cell is blank or holds words. */
    Optional<Span> ifSpan(String column) {
      Matcher range = RANGE.matcher(text(column));
      if (!range.matches()) {
        return Optional.empty();
      }
      double low = Double.parseDouble(range.group(1));
      String high = range.group(2);
      return Optional.of(new Span(low, high == null ? low : Double.parseDouble(high)));
    }

    /** A range from two columns; empty when either is blank or holds words. */
    Optional<Span> ifSpan(String lowColumn, String highColumn) {
      return ifNumber(lowColumn)
          .flatMap(low -> ifNumber(highColumn).map(high -> new Span(low, high)));
    }
  }
}
