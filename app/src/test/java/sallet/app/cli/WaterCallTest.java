package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water and days away from the command line to the sheet. */
class WaterCallTest {
  private static final String HOME =
      """
      household: {people: 1}
      crops: {want: [loose-leaf lettuce green, mizuna]}
      place: {latitude: 48.2, longitude: 16.4, timeZone: Europe/Vienna}
      room: {air: {day: 20 °C, night: 18 °C, humidity: 45 %}, windows: [{wall: south}]}
      bench: {pots: {rows: 2, columns: 3}, width: 0.8 m, depth: 0.5 m}
      nursery: {cells: 10, places: 8}
      reservoir: {volume: 40 L}
      """;

  private static final String TANK = "reservoir: {volume: 40 L}";

  @TempDir private Path folder = Path.of(".");

  private Call call(String command, String more, String... options) throws IOException {
    String home = more.startsWith("reservoir") ? HOME.replace(TANK, more) : HOME + more;
    Path file = Files.writeString(folder.resolve("home.yaml"), home);
    List<String> args = new ArrayList<>(List.of(command, file.toString()));
    args.addAll(List.of("--today", "2026-11-28", "--since", "2026-09-26", "--effort", "1"));
    args.addAll(Arrays.asList(options));
    return Call.of(args.toArray(String[]::new));
  }

  private static JsonNode json(Call call) throws IOException {
    assertThat(call.status()).as(call.err()).isZero();
    return new ObjectMapper().readTree(call.out());
  }

  private static void follows(JsonNode answer, String schema) throws IOException {
    String text = Files.readString(Path.of("..", "docs", "schema", schema));
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(text)
                .validate(answer))
        .isEmpty();
  }

  @Test
  void waterIsToldInTextAndInFiles() throws IOException {
    Call call = call("water", "", "--out", folder.resolve("out").toString());
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out())
        .contains("Set the timer to ")
        .contains("TIMER")
        .contains("RESERVOIR IF NOBODY TOPS UP")
        .contains("Local codes and a licensed electrician decide.");
    assertThat(call.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    assertThat(folder.resolve("out/water.html")).content().contains("<svg").doesNotContain("src=");
    assertThat(folder.resolve("out/water.json")).exists();
  }

  @Test
  void waterAsJsonFollowsItsSchemaAndAddsUp() throws IOException {
    JsonNode sheet = json(call("water", "", "--json"));
    follows(sheet, "water.schema.json");
    JsonNode tank = sheet.path("reservoir");
    assertThat(tank.path("leastL").asDouble())
        .isCloseTo(
            tank.path("floodL").asDouble()
                + tank.path("sumpL").asDouble()
                + tank.path("hoseL").asDouble(),
            within(1e-3));
    double level = tank.path("levelL").asDouble();
    for (JsonNode day : tank.path("days")) {
      level -= day.path("useL").asDouble();
      assertThat(day.path("levelL").asDouble()).isCloseTo(Math.max(0, level), within(1e-2));
      assertThat(day.path("levelLowL").asDouble())
          .isLessThanOrEqualTo(day.path("levelHighL").asDouble());
    }
    assertThat(sheet.path("plantedPots").asInt()).isPositive();
  }

  /** Readings sharpen the factor: the sheet tells it before and after. */
  @Test
  void readingsAreToldBeforeAndAfter() throws IOException {
    String readings =
        "reservoir: {volume: 40 L, readings: [{date: 2026-11-15, level: 38 L, ec: 1.4 mS/cm},"
            + " {date: 2026-11-20, level: 34 L, ec: 1.5 mS/cm, added: 4 L},"
            + " {date: 2026-11-25, level: 34 L, ec: 1.45 mS/cm}]}";
    JsonNode use = json(call("water", readings, "--json")).path("use");
    assertThat(use.path("intervals")).hasSize(2);
    assertThat(use.path("intervals").get(1).path("lossL").asDouble()).isCloseTo(4, within(1e-9));
    double before =
        use.path("factorBefore").path("high").asDouble()
            / use.path("factorBefore").path("low").asDouble();
    double after =
        use.path("factor").path("high").asDouble() / use.path("factor").path("low").asDouble();
    assertThat(after).isLessThan(0.8 * before);
    assertThat(use.path("uptakeSdMsCm").asDouble()).isLessThan(0.25);
  }

  @ParameterizedTest
  @CsvSource({"segments, 15", "minutes, 1", "interval, 15"})
  void everyKindOfTimerIsTold(String kind, int grid) throws IOException {
    JsonNode timer = json(call("water", "timer: {kind: " + kind + "}", "--json")).path("timer");
    assertThat(timer.path("onMinutes").asInt() % grid).isZero();
    assertThat(timer.has("everyMinutes")).isEqualTo(kind.equals("interval"));
    assertThat(timer.path("starts")).isNotEmpty();
  }

  @Test
  void daysAwayAreToldInTextAndInFiles() throws IOException {
    String out = folder.resolve("out").toString();
    Call call = call("away", "", "--from", "2026-12-02", "--to", "2026-12-09", "--out", out);
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out().lines().skip(1).findFirst().orElseThrow()).containsPattern("^(Safe|Not)");
    assertThat(call.out())
        .contains("FOR THE PERSON WHO LOOKS IN")
        .contains("WHAT WOULD BREAK IT")
        .contains("CAUTION");
    assertThat(call.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    assertThat(folder.resolve("out/away.html")).content().contains("For the person who looks in");
  }

  @Test
  void daysAwayAsJsonFollowTheirSchemaAndTheVerdictTheNumbers() throws IOException {
    JsonNode sheet =
        json(
            call(
                "away",
                "reservoir: {volume: 40 L, open: true, ec: 1.9 mS/cm}",
                "--from",
                "2026-12-02",
                "--to",
                "2026-12-30",
                "--json"));
    follows(sheet, "away.schema.json");
    JsonNode end = sheet.path("prepared");
    boolean safe =
        end.path("lastsProbability").asDouble() >= 0.95
            && end.path("potsAtRisk").isEmpty()
            && end.path("returnHighMsCm").asDouble(9) <= 2.5 + 1e-6;
    assertThat(sheet.path("verdict").asText().startsWith("safe")).isEqualTo(safe);
    assertThat(sheet.path("days").asInt()).isEqualTo(29);
  }

  /** The faults of the file and of the call, a sentence each. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pump: {head: 0.6 m}|pump: a pump that lifts water 0.6 m at the most cannot fill a tray",
        "pump: {head: 5 cm}|pump.head",
        "timer: {step: 7 min}|timer.step (line 8): segments of 7 min do not make up a day",
        "timer: {kind: sundial}|timer.kind",
        "tariff: {day: 1, night: 2}|ok",
      })
  void whatDoesNotGoTogetherIsTold(String more, String sentence) throws IOException {
    Call call = call("water", more);
    if (sentence.equals("ok")) {
      assertThat(call.status()).isZero();
    } else {
      assertThat(call.status()).isEqualTo(2);
      assertThat(call.err()).contains(sentence);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "humidity: 45 %|humidity: 140 %|room.air.humidity",
        "volume: 40 L|volume: 12 L|reservoir.volume: 12 L is not enough for one flood",
        "columns: 3}|columns: 3, height: 40 cm}|bench.floodDepth: a flood of 5 cm does not wet a pot of 40 cm",
        "columns: 3}|columns: 3}, floodDepth: 12 cm|bench.floodDepth: a flood of 12 cm drowns pots of 12 cm",
      })
  void aHomeThatCannotWorkIsTold(String good, String bad, String sentence) throws IOException {
    Path file = Files.writeString(folder.resolve("bad.yaml"), HOME.replace(good, bad));
    Call call = Call.of("water", file.toString(), "--today", "2026-11-28", "--effort", "1");
    assertThat(call.status()).as(call.err()).isEqualTo(2);
    assertThat(call.err()).contains(sentence);
    assertThat(call.out()).isEmpty();
  }

  @Test
  void anAbsenceThatEndsBeforeItStartsIsTold() throws IOException {
    Call call = call("away", "", "--from", "2026-12-09", "--to", "2026-12-02");
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.err())
        .contains("--to: the absence ends on 2026-12-02, before it starts on 2026-12-09");
    assertThat(call("away", "", "--from", "2026-12-09").status()).isEqualTo(2);
    assertThat(call("away", "", "--from", "soon", "--to", "2026-12-02", "--json").out())
        .contains("\"soon\\\" is not a date");
  }

  @Test
  void weighingsAndOtherPotsSpeakOfPotsThatAreThere() throws IOException {
    String bench =
        HOME.replace(
            "depth: 0.5 m}",
            "depth: 0.5 m, otherPots: [{pots: A1 + Z9, medium: perlite}], weighings: [{pot: B2, dry: 900 g, wet: 200 g}]}");
    Path file = Files.writeString(folder.resolve("bad.yaml"), bench);
    Call call = Call.of("water", file.toString(), "--today", "2026-11-28");
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.err())
        .contains("\"Z9\" is no pot of your bench")
        .contains("masses must rise from dry (900 g)");
  }

  private static final String[] BY_JOURNAL = {
    "--journal", "../examples/porch-journal.csv", "--today", "2027-01-09", "--effort", "1"
  };

  private static Call porch(String command, String... more) {
    List<String> args = new ArrayList<>(List.of(command, "../examples/porch.yaml"));
    args.addAll(List.of(BY_JOURNAL));
    args.addAll(List.of(more));
    return Call.of(args.toArray(String[]::new));
  }

  /** What stands is what the journal says stands, in the pots it says, and readings teach. */
  @Test
  void aJournalTellsWhatStandsAndTeaches() throws IOException {
    JsonNode sheet = json(porch("water", "--json"));
    follows(sheet, "water.schema.json");
    JsonNode stands =
        new ObjectMapper()
            .readTree(
                Call.of(
                        "journal",
                        "../examples/porch.yaml",
                        "--journal",
                        "../examples/porch-journal.csv",
                        "--today",
                        "2027-01-09",
                        "--json")
                    .out());
    List<String> byJournal = new ArrayList<>();
    for (JsonNode group : stands.path("standing")) {
      if (group.path("stage").asText().equals("bench")) {
        group.path("places").forEach(place -> byJournal.add(place.asText()));
      }
    }
    List<String> planted = new ArrayList<>();
    for (JsonNode pot : sheet.path("pots")) {
      if (!pot.path("crop").asText().isEmpty()) {
        planted.add(pot.path("pot").asText());
      }
    }
    assertThat(byJournal).isNotEmpty();
    assertThat(planted).isSubsetOf(byJournal);
    assertThat(sheet.path("use").path("intervals")).hasSize(3);
    assertThat(sheet.path("reservoir").path("levelL").asDouble()).isBetween(33.0, 41.0);
    assertThat(sheet.path("reservoirBefore").path("days")).hasSize(28);
    assertThat(sheet.path("use").path("factor").path("median").asDouble())
        .isNotEqualTo(sheet.path("use").path("factorBefore").path("median").asDouble());
  }

  @Test
  void aJournalTellsTheForecastBeforeAndAfterInText() {
    Call call = porch("water");
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out())
        .contains("Before your readings the same water was thought to last")
        .contains("3 readings taught the factor on computed use");
    assertThat(call.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
  }

  /** Plants that no bowl needs are not taken for thrown away while nobody is at home. */
  @Test
  void daysAwayCountThePlantsThatStand() throws IOException {
    JsonNode sheet = json(porch("away", "--from", "2027-01-11", "--to", "2027-02-03", "--json"));
    follows(sheet, "away.schema.json");
    assertThat(sheet.path("asItStands").path("useL").asDouble(99)).isGreaterThan(10);
  }

  @Test
  void aNumberIsExplained() throws IOException {
    Call call = call("water", "", "--explain", "pots[0].useMlPerDay");
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out()).contains("Graamans et al. 2017", "leaf pores", "mL a day");
    JsonNode sheet = json(call("water", "", "--json", "--explain", "reservoir.days[3].levelL"));
    follows(sheet, "water.schema.json");
    JsonNode steps = sheet.path("explained").path("steps");
    assertThat(steps.get(steps.size() - 1).path("value").asDouble())
        .isCloseTo(
            sheet.path("reservoir").path("days").get(3).path("levelL").asDouble(), within(1e-3));
    Call wrong = call("water", "", "--explain", "pots");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("--explain: \"pots\" is no number of this sheet");
  }

  /** Options that contradict each other, and rows that cannot be, each a sentence. */
  @Test
  void whatAJournalCannotBeIsTold() throws IOException {
    assertThat(porch("water", "--since", "2026-11-01").err())
        .contains("--since: stands beside --journal");
    Call alone = Call.of("water", "../examples/porch.yaml", "--last-plan", "plan.json");
    assertThat(alone.err()).contains("--last-plan: needs --journal");
    Path rows =
        Files.writeString(
            folder.resolve("rows.csv"),
            """
            date,time,event,place,value,unit
            2026-11-20,,level,reservoir,55,L
            2026-11-21,08:00,pot-wet,A1,800,g
            2026-11-21,7pm,pot-mass,A1,28,oz
            2026-11-22,,pot-wet,,800,g
            """);
    Call faults = call("water", "", "--journal", rows.toString());
    assertThat(faults.status()).isEqualTo(2);
    assertThat(faults.err()).contains("--since");
    Path file = folder.resolve("home.yaml");
    Call wrong =
        Call.of("water", file.toString(), "--journal", rows.toString(), "--today", "2026-11-28");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err())
        .contains("line 4: \"7pm\" is no time of the day")
        .contains("line 5: a pot on the scales needs its name as place");
    Files.writeString(rows, "date,event,place,value\n2026-11-20,level,reservoir,55\n");
    Call full =
        Call.of("water", file.toString(), "--journal", rows.toString(), "--today", "2026-11-28");
    assertThat(full.status()).isEqualTo(2);
    assertThat(full.err())
        .contains("line 2: 55 L in the reservoir on 2026-11-20 is more than it holds");
  }
}
