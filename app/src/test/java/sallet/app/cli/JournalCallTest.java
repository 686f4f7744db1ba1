package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sallet.app.file.PublishedSchema;

/** Calls of {@code sallet journal}. */
class JournalCallTest {
  private static final String PORCH = Path.of("..", "examples", "porch.yaml").toString();
  private static final String ROWS = Path.of("..", "examples", "porch-journal.csv").toString();
  private static final Path PAGE = Path.of("..", "docs", "journal.md");

  private static final String BLOCK = "```text\n";

  @TempDir Path folder;

  private static Call example(String... more) {
    String[] args = new String[more.length + 6];
    System.arraycopy(
        new String[] {"journal", PORCH, "--journal", ROWS, "--today", "2027-01-09"}, 0, args, 0, 6);
    System.arraycopy(more, 0, args, 6, more.length);
    return Call.of(args);
  }

  private Call rows(String rows, String... more) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("rows.csv"),
            "date,event,batch,crop,count,place,grams,value,unit,note\n" + rows);
    String[] args = new String[more.length + 6];
    System.arraycopy(
        new String[] {"journal", PORCH, "--journal", file.toString(), "--today", "2027-01-09"},
        0,
        args,
        0,
        6);
    System.arraycopy(more, 0, args, 6, more.length);
    return Call.of(args);
  }

  private static JsonNode valid(String text) throws IOException {
    JsonNode json = new ObjectMapper().readTree(text);
    assertThat(PublishedSchema.faults("journal", json)).isEmpty();
    return json;
  }

  @Test
  void theExampleTellsWhatStandsAndWhatWasLearned() throws IOException {
    Call call = example();
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.err()).isEmpty();
    assertThat(call.out())
        .contains("WHAT STANDS ON SAT 9 JAN 2027", "mizuna-1", "A1", "yet to come up")
        .contains("WHAT WAS LEARNED", "readings", "cells that give a plant", "times the demand")
        .contains("LAST READINGS", "25 °C")
        .doesNotContain("ROWS TO LOOK AT", "NaN", "Infinity");
    assertThat(call.out().lines()).allMatch(line -> line.length() <= 80);
  }

  /** {@code -Dsallet.write=true} puts what the program prints today into the page. */
  @Test
  void theExampleOfThePageIsWhatTheProgramPrints() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf(BLOCK + "WHAT STANDS") + BLOCK.length();
    String today =
        page.substring(0, from) + example().out() + page.substring(page.indexOf("```\n", from));
    if (Boolean.getBoolean("sallet.write")) {
      Files.writeString(PAGE, today);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(today);
  }

  @Test
  void theJsonFollowsItsSchema() throws IOException {
    JsonNode json = valid(example("--json").out());
    assertThat(json.path("standing")).hasSize(13);
    for (JsonNode group : json.path("standing")) {
      assertThat(group.path("freshGramsLow").asDouble())
          .isLessThanOrEqualTo(group.path("freshGramsExpected").asDouble());
      assertThat(group.path("freshGramsExpected").asDouble())
          .isLessThanOrEqualTo(group.path("freshGramsHigh").asDouble());
    }
    JsonNode growth = json.path("learned").path("growth");
    assertThat(growth.path("now").path("logSpread").asDouble())
        .isLessThan(growth.path("prior").path("logSpread").asDouble());
  }

  @Test
  void anEmptyJournalIsAnEmptyBench() throws IOException {
    assertThat(rows("").out()).contains("Nothing: the bench", "nothing yet", "Plan for 1.07");
    JsonNode json = valid(rows("", "--json").out());
    assertThat(json.path("standing")).isEmpty();
  }

  @Test
  void faultsAndContradictionsAreToldWithFileAndLine() throws IOException {
    Call wrong = rows("2026-12-01,sow,a,mizunna,4,4,,,,\n");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("rows.csv, line 2: \"mizunna\" is not a crop");
    Call contradiction = rows("2026-12-01,pick,a,mizuna,1,A1,5,,,\n");
    assertThat(contradiction.status()).isEqualTo(2);
    assertThat(contradiction.err())
        .contains("rows.csv, line 2: nothing was sown under the name a by then");
    JsonNode json =
        new ObjectMapper().readTree(rows("2026-12-01,pick,a,mizuna,1,A1,5,,,\n", "--json").out());
    assertThat(json.path("faults").get(0).path("line").asInt()).isEqualTo(2);
  }

  @Test
  void rowsPassedOverAreToldUnderTheReport() throws IOException {
    Call call = rows("2027-02-01,sow,a,mizuna,4,4,,,,\n");
    assertThat(call.status()).isZero();
    assertThat(call.out()).contains("ROWS TO LOOK AT", "line 2: this row is dated after");
    assertThat(rows("", "--json").status()).isZero();
  }

  @Test
  void theJournalMustBeNamed() {
    Call call = Call.of("journal", PORCH);
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.err()).contains("--journal");
  }

  /** A task done as told is one row, and a whole plan done as told teaches nothing new. */
  @Test
  void aPlanDoneAsToldIsAJournalWithoutContradictions() throws IOException {
    Path house =
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            household: {bowlGrams: 60, kinds: 1}
            place: {latitude: -42.88, longitude: 147.33, timeZone: Australia/Hobart}
            bench: {width: 60 cm, depth: 30 cm, pots: {rows: 2, columns: 3}}
            lamp: {size: {length: 50 cm, width: 20 cm}, power: 50 W}
            crops: {want: [mizuna, salad rocket]}
            """);
    Path plan = folder.resolve("plan");
    Call planned =
        Call.of(
            "plan",
            house.toString(),
            "--today",
            "2026-11-28",
            "--weeks",
            "10",
            "--effort",
            "1",
            "--out",
            plan.toString());
    assertThat(planned.status()).as(planned.err()).isZero();
    for (String today : new String[] {"2026-12-31", "2027-01-16", "2027-03-01"}) {
      Call call =
          Call.of(
              "journal",
              house.toString(),
              "--journal",
              plan.resolve("tasks.csv").toString(),
              "--today",
              today,
              "--json");
      assertThat(call.status()).as(call.out()).isZero();
      JsonNode now = valid(call.out()).path("learned").path("growth").path("now");
      assertThat(now.path("median").asDouble()).isBetween(0.84, 0.86);
    }
  }
}
