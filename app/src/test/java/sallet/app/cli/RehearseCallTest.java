package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sallet.app.file.PublishedSchema;

/** Calls of {@code sallet rehearse}. */
class RehearseCallTest {
  private static final String PORCH = Path.of("..", "examples", "porch.yaml").toString();

  @TempDir Path folder;

  private static Call rehearse(String... more) {
    List<String> args = new ArrayList<>(List.of("rehearse", PORCH, "--today", "2026-11-25"));
    args.addAll(List.of(more));
    return Call.of(args.toArray(String[]::new));
  }

  @Test
  void aTableTellsHowTheHabitsFared() {
    Call call = rehearse("--seasons", "3", "--habit", "all-at-once,every-14-days");
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.err()).contains("every-14-days: 3 of 3 seasons", "all-at-once: 3 of 3");
    assertThat(call.out())
        .contains("REHEARSAL", "with", "3 kinds", "THE HABITS", "plants a week, every 2 weeks")
        .contains("WHAT THE SEASONS HIDE", "95 % of its growth")
        .doesNotContain("NaN", "Infinity");
    assertThat(call.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(call.out().indexOf("every-14-days")).isLessThan(call.out().indexOf("all-at-once"));
  }

  @Test
  void theJsonFollowsItsSchemaAndTheFilesAreWritten() throws IOException {
    Call call =
        rehearse(
            "--seasons",
            "2",
            "--habit",
            "every-7-days",
            "--regrowth",
            "1",
            "--json",
            "--out",
            folder.toString());
    assertThat(call.status()).as(call.err()).isZero();
    JsonNode json = new ObjectMapper().readTree(call.out());
    assertThat(PublishedSchema.faults("rehearse", json)).isEmpty();
    assertThat(json.at("/habits/0/seasons").asInt()).isEqualTo(2);
    assertThat(json.at("/habits/0/fill/mean").asDouble()).isBetween(0.5, 1.0);
    assertThat(folder.resolve("rehearsal.json")).hasContent(call.out());
    String page = Files.readString(folder.resolve("rehearsal.html"));
    assertThat(page)
        .contains("<svg", "every-7-days", "Bowls under 80")
        .doesNotContain("<script", "src=", "href=\"http");
  }

  @Test
  void theSameSeedGivesTheSameAnswer() {
    String[] call = {"--seasons", "2", "--habit", "every-14-days", "--seed", "7", "--json"};
    assertThat(rehearse(call).out()).isEqualTo(rehearse(call).out());
  }

  @Test
  void wrongOptionsAreToldInOneGo() {
    Call call =
        rehearse("--seasons", "0", "--habit", "daily", "--luck", "good", "--regrowth", "1.5");
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.err()).contains("--seasons", "\"daily\" is no habit", "--luck", "--regrowth");
  }
}
