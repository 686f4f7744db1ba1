package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each broken file ends with status 2 and the sentences written beside it. */
class BrokenFilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/broken");

  static Stream<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @Test
  void thereAreAtLeastSixtyOfThem() throws IOException {
    assertThat(files()).hasSizeGreaterThanOrEqualTo(60);
  }

  @ParameterizedTest
  @MethodSource("files")
  void aBrokenFileIsToldInPlainSentences(Path file) throws IOException {
    Call call = Call.of("plan", file.toString());

    assertThat(call.err().lines().toList()).isEqualTo(expected(file));
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.out()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void aBrokenFileIsToldInJson(Path file) throws IOException {
    Call call = Call.of("plan", file.toString(), "--json");

    JsonNode answer = new ObjectMapper().readTree(call.out());
    assertThat(answer.path("status").asInt()).isEqualTo(2);
    List<String> expected = expected(file);
    assertThat(answer.path("faults").size()).isEqualTo(expected.size());
    for (int i = 0; i < expected.size(); i++) {
      JsonNode fault = answer.path("faults").get(i);
      assertThat(expected.get(i)).endsWith(": " + fault.path("sentence").asText());
      assertThat(expected.get(i)).contains(fault.path("path").asText());
      if (fault.has("line")) {
        assertThat(expected.get(i)).contains("line " + fault.path("line").asInt());
      }
    }
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.err()).isEmpty();
  }

  /** The sentences beside the file, without the first line, which says what kind of break it is. */
  private static List<String> expected(Path file) throws IOException {
    Path text = Path.of(file.toString().replace(".yaml", ".txt"));
    List<String> lines = Files.readAllLines(text);
    return lines.stream().skip(1).map(line -> line.replace("FILE", file.toString())).toList();
  }
}
