package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every cell of the crop tables is what their data package (Frictionless Data Package 1, Table
 * Schema) says.
 */
class CropTablesTest {
  private static final Path FOLDER =
      Project.folder().resolve("core/src/main/resources/sallet/crop");

  static Stream<String> tables() throws IOException {
    List<String> names = new ArrayList<>();
    resources().forEach(resource -> names.add(resource.path("name").asText()));
    return names.stream();
  }

  private static JsonNode resources() throws IOException {
    return new ObjectMapper()
        .readTree(FOLDER.resolve("datapackage.json").toFile())
        .path("resources");
  }

  private static JsonNode resource(String name) throws IOException {
    for (JsonNode resource : resources()) {
      if (resource.path("name").asText().equals(name)) {
        return resource;
      }
    }
    throw new IllegalArgumentException("no table " + name);
  }

  private static List<NamedCsvRecord> rows(JsonNode resource) throws IOException {
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder().ofNamedCsvRecord(FOLDER.resolve(resource.path("path").asText()))) {
      return csv.stream().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void columnsAreThoseOfTheSchema(String table) throws IOException {
    JsonNode resource = resource(table);
    List<String> columns = new ArrayList<>();
    resource.path("schema").path("fields").forEach(f -> columns.add(f.path("name").asText()));
    assertThat(rows(resource)).isNotEmpty();
    assertThat(rows(resource).get(0).getHeader()).isEqualTo(columns);
  }

  @ParameterizedTest
  @MethodSource("tables")
  void cellsAreWhatTheSchemaSays(String table) throws IOException {
    JsonNode resource = resource(table);
    List<String> faults = new ArrayList<>();
    for (JsonNode field : resource.path("schema").path("fields")) {
      String column = field.path("name").asText();
      Set<String> seen = new HashSet<>();
      for (NamedCsvRecord row : rows(resource)) {
        String cell = row.getField(column);
        boolean again = !seen.add(cell) && field.path("constraints").path("unique").asBoolean();
        if (again || !holds(field, cell)) {
          faults.add("line %d, %s: \"%s\"".formatted(row.getStartingLineNumber(), column, cell));
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("tables")
  void namesStandInTheTablesTheyPointTo(String table) throws IOException {
    JsonNode resource = resource(table);
    for (JsonNode key : resource.path("schema").path("foreignKeys")) {
      JsonNode to = key.path("reference");
      Set<String> known = new HashSet<>();
      for (NamedCsvRecord row : rows(resource(to.path("resource").asText()))) {
        known.add(row.getField(to.path("fields").asText()));
      }
      assertThat(rows(resource))
          .extracting(row -> row.getField(key.path("fields").asText()))
          .filteredOn(name -> !isMissing(name))
          .isNotEmpty()
          .isSubsetOf(known);
    }
  }

  @Test
  void theCheckFindsWrongCells() throws IOException {
    JsonNode share =
        new ObjectMapper()
            .readTree(
                """
                {"type": "number", "constraints": {"required": true, "minimum": 0, "maximum": 1}}
                """);
    assertThat(Stream.of("0.5", "0", "1")).allMatch(cell -> holds(share, cell));
    assertThat(Stream.of("", "-", "1.1", "-0.1", "half", "0.5 g"))
        .noneMatch(cell -> holds(share, cell));
    JsonNode whole = new ObjectMapper().readTree("{\"type\": \"integer\"}");
    assertThat(holds(whole, "3")).isTrue();
    assertThat(holds(whole, "3.5")).isFalse();
    JsonNode range =
        new ObjectMapper()
            .readTree("{\"type\": \"string\", \"constraints\": {\"pattern\": \"\\\\d+-\\\\d+\"}}");
    assertThat(holds(range, "3-5")).isTrue();
    assertThat(holds(range, "3 to 5")).isFalse();
  }

  private static boolean isMissing(String cell) {
    return cell.isBlank() || cell.equals("-");
  }

  private static boolean holds(JsonNode field, String cell) {
    JsonNode limits = field.path("constraints");
    if (isMissing(cell)) {
      return !limits.path("required").asBoolean();
    }
    return switch (field.path("type").asText()) {
      case "number", "integer" -> isNumber(field, cell) && inRange(limits, cell);
      case "string" -> matches(limits, cell);
      default -> false;
    };
  }

  private static boolean isNumber(JsonNode field, String cell) {
    String part = field.path("type").asText().equals("integer") ? "" : "(\\.\\d+)?";
    return cell.matches("-?\\d+" + part);
  }

  private static boolean inRange(JsonNode limits, String cell) {
    double value = Double.parseDouble(cell);
    return value >= limits.path("minimum").asDouble(Double.NEGATIVE_INFINITY)
        && value <= limits.path("maximum").asDouble(Double.POSITIVE_INFINITY);
  }

  private static boolean matches(JsonNode limits, String cell) {
    boolean listed = !limits.has("enum");
    for (JsonNode word : limits.path("enum")) {
      listed |= word.asText().equals(cell);
    }
    return listed && (!limits.has("pattern") || cell.matches(limits.path("pattern").asText()));
  }
}
