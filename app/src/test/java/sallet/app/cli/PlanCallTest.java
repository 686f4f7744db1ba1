package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.app.file.PublishedSchema;

/** Calls of the program: right ones, wrong ones, and questions without an answer. */
class PlanCallTest {
  private static final String SMALL =
      """
      household: {bowlGrams: 60, kinds: 1}
      crops: {want: [loose-leaf lettuce green]}
      place: {latitude: -42.88, longitude: 147.33, timeZone: Australia/Hobart}
      room: {windows: []}
      bench: {width: 60 cm, depth: 30 cm, pots: {rows: 2, columns: 3}}
      """;
  private static final String DARK = "nursery: {light: 0 µmol/m²/s}\n";
  private static final String LAMP = "lamp: {size: {length: 50 cm, width: 20 cm}, power: 50 W}\n";

  @TempDir Path folder;

  @Test
  void aSmallHouseholdGetsAPlanAndItsFiles() throws IOException {
    Path out = folder.resolve("new/plan");

    Call call =
        Call.of(
            "plan",
            file(SMALL + LAMP),
            "--weeks",
            "10",
            "--seconds",
            "4",
            "--today",
            "2026-11-28",
            "--out",
            out.toString());

    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out()).contains("lettuce").contains("█");
    assertThat(out).isDirectoryContaining("glob:**/plan.html");
    assertThat(out).isDirectoryContaining("glob:**/plan.ics");
    assertThat(call.err()).contains("Wrote").doesNotContain("Exception");
  }

  @Test
  void jsonComesAloneOnTheOutputAndTheClockGivesTheDay() throws IOException {
    Call call = Call.of("plan", "--json", file(SMALL + LAMP), "--weeks=8", "--seconds=2");

    JsonNode plan = new ObjectMapper().readTree(call.out());
    // 20:00 in Greenwich on the 25th is already the 26th in Hobart.
    assertThat(plan.path("from").asText()).isEqualTo("2026-11-26");
    assertThat(plan.path("weeks").size()).isEqualTo(8);
    assertThat(call.err()).contains("2026-11-26");
    assertThat(call.status()).isZero();
  }

  @Test
  void theSolverInPlainJavaPlansToo() throws IOException {
    Call call =
        Call.of("plan", file(SMALL + LAMP), "--weeks=8", "--effort=1", "--solver=java", "--json");

    JsonNode plan = new ObjectMapper().readTree(call.out());
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(plan.path("sowings").size()).isPositive();
  }

  @Test
  void withoutLightThereIsNoAnswer() throws IOException {
    Call call = Call.of("plan", file(SMALL + DARK), "--today", "2026-11-28");

    assertThat(call.status()).isEqualTo(3);
    assertThat(call.out()).isEmpty();
    assertThat(call.err()).contains("light").doesNotContain("Exception");

    Call json = Call.of("plan", file(SMALL + DARK), "--today", "2026-11-28", "--json");
    JsonNode answer = new ObjectMapper().readTree(json.out());
    assertThat(answer.path("status").asInt()).isEqualTo(3);
    assertThat(answer.path("faults").path(0).path("sentence").asText()).contains("light");
  }

  @Test
  void aPlanGoesOnFromTheJournalAndTheLastPlan() throws IOException {
    Path journal =
        written(
            "journal.csv",
            """
            date,event,batch,crop,count,place,grams,value,unit,note
            2026-10-10,sow,first,loose-leaf lettuce green,3,3,,,,
            2026-10-14,emerge,first,,3,,,,,
            2026-10-17,move,first,,3,nursery,,,,
            2026-10-31,move,first,,3,A1+A2+B3,,,,
            """);
    String house = file(SMALL + LAMP);
    String[] call = {
      "plan",
      house,
      "--journal",
      journal.toString(),
      "--today",
      "2026-11-28",
      "--weeks",
      "8",
      "--effort",
      "3",
      "--json"
    };

    Call one = Call.of(call);

    assertThat(one.status()).as(one.err()).isZero();
    JsonNode plan = new ObjectMapper().readTree(one.out());
    assertThat(plan.path("standing").findValuesAsText("batch")).containsOnly("first");
    assertThat(plan.path("continuing").path(0).path("pots").size()).isEqualTo(3);
    assertThat(plan.path("picksNow").size()).isPositive();
    assertThat(plan.path("tasks").findValuesAsText("date"))
        .allMatch(d -> d.compareTo("2026-11-28") >= 0);

    Path last = written("plan.json", one.out());
    List<String> again = new ArrayList<>(List.of(call));
    again.addAll(List.of("--last-plan", last.toString()));
    Call two = Call.of(again.toArray(String[]::new));

    assertThat(two.status()).as(two.err()).isZero();
    JsonNode replanned = new ObjectMapper().readTree(two.out());
    assertThat(week(replanned)).isEqualTo(week(plan)).isNotEmpty();
    assertThat(replanned.path("changes").path(0).asText()).contains("No sowing");
  }

  /** However the later weeks are planned anew, the leaves of the coming bowl stay as told. */
  @Test
  void whatIsPickedForTheComingBowlStaysAsToldUntilSomethingIsRecorded() throws IOException {
    List<String> call =
        new ArrayList<>(
            List.of(
                "plan",
                "../examples/porch.yaml",
                "--journal",
                "../examples/porch-journal.csv",
                "--today",
                "2027-01-09",
                "--weeks",
                "12",
                "--json",
                "--effort"));
    List<String> first = new ArrayList<>(call);
    first.add("1");
    Call one = Call.of(first.toArray(String[]::new));
    assertThat(one.status()).as(one.err()).isZero();
    call.addAll(List.of("4", "--last-plan", written("plan.json", one.out()).toString()));
    Call two = Call.of(call.toArray(String[]::new));

    JsonNode before = new ObjectMapper().readTree(one.out());
    JsonNode after = new ObjectMapper().readTree(two.out());
    assertThat(picksNow(after)).isEqualTo(picksNow(before)).hasSizeGreaterThan(3);
    assertThat(after.path("sowings")).as("later weeks").isNotEqualTo(before.path("sowings"));
  }

  private static List<String> picksNow(JsonNode plan) {
    List<String> picks = new ArrayList<>();
    plan.path("picksNow")
        .forEach(
            p ->
                picks.add(
                    "%s %s %s"
                        .formatted(
                            p.path("place").asText(),
                            p.path("grams").asText(),
                            p.path("lift").asText())));
    return picks;
  }

  /** Events of the plan's first seven days. */
  private static List<String> week(JsonNode plan) {
    List<String> tasks = new ArrayList<>();
    plan.path("tasks")
        .forEach(
            t -> {
              if (t.path("date").asText().compareTo("2026-12-05") < 0) {
                tasks.add("%s %s %s".formatted(t.path("date"), t.path("event"), t.path("place")));
              }
            });
    return tasks;
  }

  @Test
  void aFaultOfTheJournalNamesItsLine() throws IOException {
    Path journal =
        written("journal.csv", "date,event,batch,crop,count\n2026-10-10,sew,first,mizuna,3\n");

    Call call =
        Call.of("plan", file(SMALL + LAMP), "--journal", journal.toString(), "--today=2026-11-28");

    assertThat(call.status()).isEqualTo(2);
    assertThat(call.err()).contains("2").contains("sew").doesNotContain("Exception");
  }

  @Test
  void theJavaSolverAndTheWhatIfsAnswerToo() throws IOException {
    Call call =
        Call.of(
            "plan",
            file(SMALL + LAMP),
            "--solver=java",
            "--what-if",
            "--weeks=8",
            "--effort=2",
            "--today=2026-11-28",
            "--json");

    assertThat(call.status()).as(call.err()).isZero();
    JsonNode plan = new ObjectMapper().readTree(call.out());
    assertThat(plan.path("bottlenecks").findValuesAsText("change"))
        .contains("one more cell", "one more pot like A1", "one person more");
  }

  private Path written(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void withoutCellsThereIsNoAnswer() throws IOException {
    Call call = Call.of("plan", file(SMALL + LAMP + "nursery: {cells: 0}\n"), "--seconds", "1");

    assertThat(call.status()).isEqualTo(3);
    assertThat(call.err()).contains("cells");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--weeks=0 | --weeks: 0 lies outside what is allowed (1 to 52)",
        "--weeks=many | --weeks: \"many\" is not a whole number; write one from 1 to 52",
        "--margin=3 | --margin: 3 lies outside what is allowed (0.5 to 2)",
        "--margin=1,2 | --margin: \"1,2\" is not a number; write one from 0.5 to 2 with a decimal point",
        "--solver=fast | --solver: \"fast\" is not known; write native or java",
        "--last-plan=none.json | --last-plan: \"none.json\": there is no such file; check the name",
        "--seconds=0 | --seconds: 0 lies outside what is allowed (1 to 3600)",
        "--today=28.11.2026 | --today: \"28.11.2026\" is not a date; write year, month and day like 2027-07-03",
        "--today=1999-11-28 | --today: 1999-11-28 lies outside what is allowed (years 2000 to 2199)",
        "--jsn | \"--jsn\" is not understood here (did you mean --json?); see sallet plan --help"
      })
  void aWrongOptionIsToldInASentence(String option, String sentence) throws IOException {
    Call call = Call.of("plan", file(SMALL + LAMP), option);

    assertThat(call.err().strip()).isEqualTo(sentence);
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.out()).isEmpty();
  }

  @Test
  void faultsOfTheCallAndOfTheFileComeTogether() throws IOException {
    Call call = Call.of("plan", file("lamp: none\n"), "--weeks", "99");

    assertThat(call.err().lines().toList())
        .containsExactly(
            "--weeks: 99 lies outside what is allowed (1 to 52)",
            "place (line 1): is missing; write keys such as latitude, longitude, elevation,"
                + " timeZone");
  }

  @Test
  void aMissingFileAFolderAndAHugeFileAreFaults() throws IOException {
    String missing = folder.resolve("none.yaml").toString();
    Call call = Call.of("plan", missing);
    assertThat(call.err().strip())
        .isEqualTo(missing + ": there is no such file; check its name and folder");
    assertThat(call.status()).isEqualTo(2);

    assertThat(Call.of("plan", folder.toString()).err()).contains("is a folder");

    Path huge = Files.writeString(folder.resolve("huge.yaml"), "#".repeat(2_000_000));
    assertThat(Call.of("plan", huge.toString()).err()).contains("larger than 1 MB");

    assertThat(Call.of("plan", "a\u0000b").status()).isEqualTo(2);
  }

  @Test
  void aFolderThatCannotBeMadeIsAFault() throws IOException {
    String inTheWay = file(SMALL + LAMP);

    Call call = Call.of("plan", inTheWay, "--out", inTheWay);

    assertThat(call.err()).startsWith("--out: ").contains("no folder that can be written into");
    assertThat(call.status()).isEqualTo(2);
  }

  @Test
  void aCallWithoutSenseIsAFaultAndInJsonToo() throws IOException {
    assertThat(Call.of().err()).contains("name a command").doesNotContain("Exception");
    assertThat(Call.of().status()).isEqualTo(2);
    assertThat(Call.of("bake").status()).isEqualTo(2);
    assertThat(Call.of("plan").err()).contains("FILE");
    Call json = Call.of("plan", "--json", "--frobnicate");
    assertThat(new ObjectMapper().readTree(json.out()).path("status").asInt()).isEqualTo(2);
  }

  @Test
  void helpAndVersionAreAnswers() {
    assertThat(Call.of("--help").status()).isZero();
    assertThat(Call.of("--help").out()).contains("plan");
    assertThat(Call.of("plan", "--help").out()).contains("--weeks", "--margin", "--json", "--out");
    assertThat(Call.of("--version").out()).startsWith("Sallet");
    assertThat(Call.of("--version").status()).isZero();
  }

  @Test
  void aReaderThatGoesAwayIsNoFault() throws IOException {
    OutputStream gone =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("Broken pipe");
          }
        };
    PrintStream closed = new PrintStream(gone, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(closed, closed, Clock.systemUTC(), false);

    int status = Main.run(terminal, "plan", file(SMALL + LAMP), "--weeks", "6", "--seconds", "1");

    assertThat(status).isZero();
  }

  @Test
  void ourOwnFaultIsOneSentenceAndATraceOnlyWhenAsked() throws IOException {
    assertThat(failing(false)).contains("Sallet itself failed here").doesNotContain("\tat ");
    assertThat(failing(true)).contains("Sallet itself failed here", "\tat sallet.app.cli");
  }

  /** What is said when the program's inside breaks: here, a clock without a time. */
  private String failing(boolean trace) throws IOException {
    Clock broken =
        new Clock() {
          @Override
          public ZoneId getZone() {
            return ZoneOffset.UTC;
          }

          @Override
          public Clock withZone(ZoneId zone) {
            return this;
          }

          @Override
          public Instant instant() {
            throw new IllegalStateException("no time");
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream told = new PrintStream(err, true, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(told, told, broken, trace);

    assertThat(Main.run(terminal, "plan", file(SMALL + LAMP))).isEqualTo(1);
    return err.toString(StandardCharsets.UTF_8) + "\n";
  }

  @Test
  void faultsInJsonKeepToTheirSchema() throws IOException {
    String wrongFile = Call.of("plan", file("a: 1\n"), "--json").out();
    String wrongCall = Call.of("plan", "--json").out();
    String noAnswer = Call.of("plan", file(SMALL + DARK), "--json", "--seconds=1").out();
    for (String answer : List.of(wrongFile, wrongCall, noAnswer)) {
      assertThat(PublishedSchema.faults("faults", new ObjectMapper().readTree(answer)))
          .as(answer)
          .isEmpty();
    }
    assertThat(PublishedSchema.faults("faults", new ObjectMapper().readTree("{\"status\": 0}")))
        .isNotEmpty();
  }

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("household.yaml"), text).toString();
  }
}
