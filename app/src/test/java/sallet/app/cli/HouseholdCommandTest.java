package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every command about a household does alike. */
class HouseholdCommandTest {
  private static final String PORCH = "../examples/porch.yaml";

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "plan, --today=soon",
    "light, --date=soon",
    "crop, --sow=soon",
    "feed, --mix=much",
  })
  void theFaultsOfCallFolderAndFileAreToldInOneGo(String command, String option)
      throws IOException {
    Path wrong = Files.writeString(folder.resolve("wrong.yaml"), "benhc: {}\n");

    Call call = Call.of(command, wrong.toString(), option, "--out", wrong.toString());

    assertThat(call.status()).isEqualTo(2);
    assertThat(call.out()).isEmpty();
    assertThat(call.err())
        .contains(option.split("=")[0] + ": \"")
        .contains("--out: \"")
        .contains("did you mean \"bench\"");
    JsonNode json =
        new ObjectMapper().readTree(Call.of(command, wrong.toString(), option, "--json").out());
    assertThat(json.path("status").asInt()).isEqualTo(2);
    assertThat(json.path("faults").get(0).path("path").asText()).isEqualTo(option.split("=")[0]);
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "crop", "feed"})
  void theFilesOfAnAnswerAreNamedAndTheJsonAmongThemIsWhatIsPrinted(String command)
      throws IOException {
    Path dir = folder.resolve("new").resolve(command);

    Call call = Call.of(command, PORCH, "--json", "--out", dir.toString());

    assertThat(call.status()).as(call.err()).isZero();
    Path json = dir.resolve(command + ".json");
    assertThat(call.err()).contains("Wrote ", json.getFileName().toString(), dir.toString());
    assertThat(json).content().isEqualTo(call.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "light", "crop", "feed"})
  void theHelpNamesWhatAllHaveInCommonAfterWhatIsTheirOwn(String command) {
    String help = Call.of(command, "--help").out();

    assertThat(help).contains("FILE", "--json", "--out=DIR");
    assertThat(help.lastIndexOf("--json")).isGreaterThan(help.lastIndexOf("Default:"));
  }
}
