package sallet.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The published schema, run by an independent validator, agrees with the reader. */
class SchemaTest {
  private static final JsonSchema SCHEMA = schema();

  @ParameterizedTest
  @ValueSource(strings = {"porch.yaml", "cellar.yaml", "minimal.yaml"})
  void everyExamplePasses(String name) throws IOException {
    assertThat(violations(Files.readString(Examples.file(name)))).isEmpty();
  }

  static Stream<Path> broken() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/broken"))) {
      return files.filter(file -> file.toString().endsWith(".txt")).sorted().toList().stream();
    }
  }

  /** The first line of the expected text says whether YAML, structure or sense is broken. */
  @ParameterizedTest
  @MethodSource("broken")
  void everyStructurallyBrokenFileFailsAndNoOther(Path expected) throws IOException {
    String kind = Files.readAllLines(expected).get(0);
    Path file = Path.of(expected.toString().replace(".txt", ".yaml"));
    switch (kind) {
      case "[structure]" ->
          assertThat(violations(Files.readString(file))).as(file.toString()).isNotEmpty();
      case "[sense]" ->
          assertThat(violations(Files.readString(file))).as(file.toString()).isEmpty();
      default -> assertThat(kind).isEqualTo("[yaml]");
    }
  }

  /** What a spelling means to the reader is what it means to the schema. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "bench: {width: 1.2 m}",
        "bench: {width: 48 in}",
        "bench: {width: 4 ft 2 in}",
        "bench: {width: '4′ 2″'}",
        "bench: {width: 1.2 parsec}",
        "bench: {width: 1.2.3 m}",
        "bench: {width: .5 m}",
        "room: {air: {day: 72 ℉, night: 60 F}}",
        "room: {air: {day: 20 ºC, night: 15degC}}",
        "room: {air: {day: 20 Kelvin}}",
        "nursery: {light: 150 µmol m⁻² s⁻¹}",
        "nursery: {light: 150 μmol·m^-2·s^-1}",
        "nursery: {light: 150 umol/(m2 s)}",
        "nursery: {light: 150 mol/m2/s}",
        "nursery: {cellArea: 16 sq cm, placeArea: 7 in^2}",
        "lamp: {hours: 14 h 30 min, on: 6:00}",
        "lamp: {hours: 16, on: 06:00}",
        "lamp: {efficacy: 2.2 umol/J}",
        "household: {taskDays: [wed, SATURDAY]}",
        "household: {taskDays: [midweek]}",
        "household: {people: 002}",
        "room: {windows: [{wall: North}]}",
        "reservoir: {volume: 5 US gal}",
        "reservoir: {volume: 5 gallon hats}"
      })
  void theReaderAndTheSchemaAgree(String lines) {
    String text = "place: {latitude: 40, longitude: 10, timeZone: Europe/Rome}\n" + lines + "\n";
    Faults faults = new Faults();
    Yaml root = YamlReader.read(text, faults).orElseThrow();
    Values values = Structure.read(root, Keys.shipped(), faults);

    assertThat(values).isNotNull();
    assertThat(violations(text).isEmpty()).as(lines).isEqualTo(faults.isEmpty());
  }

  private List<String> violations(String yaml) {
    LoadSettings settings = LoadSettings.builder().setSchema(new CoreSchema()).build();
    Object data;
    try {
      data = new Load(settings).loadFromString(yaml);
    } catch (YamlEngineException e) {
      return List.of("no YAML: " + e.getMessage());
    }
    JsonNode tree = new ObjectMapper().valueToTree(data);
    Set<ValidationMessage> messages = SCHEMA.validate(tree);
    return messages.stream().map(ValidationMessage::getMessage).toList();
  }

  private static JsonSchema schema() {
    try (InputStream in =
        Objects.requireNonNull(Keys.class.getResourceAsStream("household.schema.json"))) {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
