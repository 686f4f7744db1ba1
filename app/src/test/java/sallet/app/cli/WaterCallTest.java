package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import sallet.app.file.PublishedSchema;

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
    assertThat(PublishedSchema.faults("water", sheet)).isEmpty();
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
        "reservoir: {volume: 40 L, readings: [{date: 2026-11-03, level: 38 L, ec: 1.4 mS/cm},"
            + " {date: 2026-11-16, level: 34 L, ec: 1.5 mS/cm, added: 4 L},"
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

  /** A plan reaches 46 weeks from its first day, 26 September 2026; beyond, nobody knows. */
  @Test
  void anAbsenceBeyondWhatIsPlannedIsRefused() throws IOException {
    Call last = call("away", "", "--from", "2027-08-10", "--to", "2027-08-14", "--json");
    assertThat(last.status()).as(last.err()).isZero();
    Call beyond = call("away", "", "--from", "2027-08-10", "--to", "2027-08-15");
    assertThat(beyond.status()).isEqualTo(2);
    assertThat(beyond.err())
        .contains(
            "--to: the absence ends on 2027-08-15, and what will stand on the bench can be told until 2027-08-14; ask again nearer the time");
  }

  @Test
  void anEmptyReservoirAndAnEmptyBenchAreToldInTheFirstLines() throws IOException {
    Call low = call("water", "reservoir: {volume: 40 L, level: 10 L}");
    assertThat(low.status()).as(low.err()).isZero();
    assertThat(low.out()).contains("Fill the reservoir before the next flood");
    Path file = Files.writeString(folder.resolve("new.yaml"), HOME);
    Call bare =
        Call.of(
            "water",
            file.toString(),
            "--today",
            "2026-11-28",
            "--since",
            "2026-11-28",
            "--effort",
            "1");
    assertThat(bare.out()).contains("0 of 6 pots are planted: leave the pump off");
    assertThat(bare.out()).doesNotContain("POTS, the ones");
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
    assertThat(PublishedSchema.faults("away", sheet)).isEmpty();
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
        "pump: {head: 0.6 m}|pump: a pump that lifts water 0.6 m at the most cannot flood a tray",
        "pump: {head: 5 cm}|pump.head",
        "pump: {curve: [{head: 0 m, flow: 1200 L/h}, {head: 1 m, flow: 500 L/h}], flow: 900 L/h}|pump.flow (line 8): stands beside pump.curve",
        "pump: {curve: [{head: 0 m, flow: 700 L/h}, {head: 1 m, flow: 900 L/h}]}|pump.curve (line 8): a pump brings less the higher it lifts, but here 700 L/h at 0 m and 900 L/h at 1 m",
        "pump: {curve: [{head: 1 m, flow: 700 L/h}, {head: 1 m, flow: 600 L/h}]}|pump.curve (line 8): a pump brings less the higher it lifts",
        "pump: {curve: [{head: 0 m, flow: 700 L/h}]}|pump.curve",
        "pump: {curve: [{head: 0 m, flow: 700 L/h}, {head: 60 cm, flow: 300 L/h}]}|pump: a pump that lifts water 0.6 m at the most",
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

  /**
   * Lifts of 0.65 to 0.69 m on the curve 0:1200 0.5:950 1.0:560 1.5:0 of the check files (FL05: 833
   * L/h at 0.65 m); 80 % of it fills the tray, so the time follows from the flood by hand.
   */
  @Test
  void aPumpMayBeToldByItsCurve() throws IOException {
    String curve =
        "pump: {lift: 0.65 m, curve: [{head: 0 m, flow: 1200 L/h}, {head: 1.5 m, flow: 0 L/h},"
            + " {head: 0.5 m, flow: 950 L/h}, {head: 1.0 m, flow: 560 L/h}]}";
    JsonNode flood = json(call("water", curve, "--json")).path("flood");
    double rise = flood.path("depthM").asDouble();
    double mean = 833 - 780 * rise / 2;
    assertThat(flood.path("fillMinutes").asDouble())
        .isCloseTo(60 * flood.path("volumeL").asDouble() / (0.8 * mean), withinPercentage(0.1));
  }

  /**
   * The same home in other units floods alike; 1 in is 2.54 cm, 1 gal 3.785411784 L. What stands is
   * a plan's and may differ in the last digit, so what is compared does not hang on it.
   */
  @Test
  void unitsOfTheFileDoNotChangeTheSheet() throws IOException {
    JsonNode metric = json(written("metric.yaml", METRIC, "water"));
    JsonNode us = json(written("us.yaml", US, "water"));
    for (String number :
        List.of(
            "/flood/volumeL",
            "/flood/depthM",
            "/flood/fillMinutes",
            "/flood/drainMinutes",
            "/reservoir/leastL",
            "/reservoir/usableL",
            "/cleaning/bleachMostMl",
            "/solution/temperatureC",
            "/room/lampMeanW",
            "/pots/7/fullMl")) {
      assertThat(us.at(number).asDouble())
          .as(number)
          .isPositive()
          .isCloseTo(metric.at(number).asDouble(), withinPercentage(1e-3));
    }
    String[] away = {"--from", "2026-12-04", "--to", "2026-12-14"};
    assertThat(json(written("us.yaml", US, "away", away)).at("/asItStands/reservoir/leastL"))
        .isEqualTo(us.at("/reservoir/leastL"));
  }

  private Call written(String name, String home, String command, String... more)
      throws IOException {
    Path file = Files.writeString(folder.resolve(name), home);
    List<String> args = new ArrayList<>(List.of(command, file.toString(), "--json"));
    args.addAll(List.of("--today", "2026-11-28", "--effort", "1"));
    args.addAll(List.of(more));
    return Call.of(args.toArray(String[]::new));
  }

  private static final String METRIC =
      """
      place: {latitude: 44.98, longitude: -93.27, elevation: 253 m, timeZone: America/Chicago}
      room: {size: {width: 3.048 m, depth: 3.048 m, height: 2.4384 m}, air: {day: 20 °C, night: 15 °C}}
      bench: {width: 121.92 cm, depth: 60.96 cm, height: 76.2 cm, pots: {rows: 2, columns: 4, height: 12.7 cm}, floodDepth: 3.81 cm}
      lamp: {size: {length: 91.44 cm, width: 30.48 cm}, power: 150 W}
      pump: {flow: 1135.6235352 L/h, head: 1.8288 m}
      reservoir: {volume: 60.566588544 L, height: 30.48 cm}
      """;

  private static final String US =
      """
      place: {latitude: 44.98, longitude: -93.27, elevation: 253 m, timeZone: America/Chicago}
      room: {size: {width: 10 ft, depth: 10 ft, height: 8 ft}, air: {day: 68 °F, night: 59 °F}}
      bench: {width: 48 in, depth: 24 in, height: 30 in, pots: {rows: 2, columns: 4, height: 5 in}, floodDepth: 1.5 in}
      lamp: {size: {length: 3 ft, width: 1 ft}, power: 150 W}
      pump: {flow: 300 gal/h, head: 6 ft}
      reservoir: {volume: 16 gal, height: 12 in}
      """;

  /** 40 mL in 10 L of 5 % bleach make 200 mg/L (common practice); so does 4 mL a litre. */
  @Test
  void bleachIsDosedByItsOwnStrength() throws IOException {
    JsonNode usual = json(call("water", "", "--json")).path("cleaning");
    double litres = usual.path("litres").asDouble();
    assertThat(usual.path("bleachTold").asBoolean()).isFalse();
    assertThat(usual.path("bleachMostMl").asDouble()).isCloseTo(4 * litres, within(1e-2));
    assertThat(unwrapped(call("water", "reservoir: {volume: 40 L, bleach: 8 %}")))
        .contains("CLEANING BETWEEN CROPS", "label says 8.0 %")
        .contains("Never mix bleach");
    assertThat(call("water", "reservoir: {volume: 40 L, bleach: 40 %}").err())
        .contains("reservoir.bleach");
  }

  /** Each caution stands where its advice is given. */
  @Test
  void cautionsStandBesideTheirAdvice() throws IOException {
    assertThat(unwrapped(call("water", "")))
        .contains("Mains near water", "Overflow and siphon", "A litre weighs a kilogram")
        .contains("Legionella", "Never mix bleach", "Flood water must not touch the leaves")
        .contains("kg on 0.13 m², 2.9 kN/m²");
    assertThat(unwrapped(call("away", "", "--from", "2026-12-02", "--to", "2027-01-25")))
        .contains("Mains near water", "Overflow and siphon", "A litre weighs a kilogram")
        .contains("Flood water must not touch the leaves", "pull the plug of the pump with dry");
  }

  /** Where visitors fill it up, litres for the whole time would contradict the verdict. */
  @Test
  void chancesStandBesideTheLitres() throws IOException {
    String small = "reservoir: {volume: 24 L}";
    String text =
        unwrapped(call("away", small, "--from", "2026-12-02", "--to", "2027-01-25"))
            .replaceAll("RESERVOIR \\(.*", "");
    assertThat(text).contains("[ ] Ask somebody to fill the reservoir");
    assertThat(text).containsPattern("AS IT STANDS .* L for it: enough with a chance of");
    assertThat(text.replaceAll(".*ONCE PREPARED", ""))
        .contains("from one filling to the next the water lasts with a chance of 9")
        .doesNotContain("L for it");
    assertThat(call("away", "", "--from", "2026-11-20", "--to", "2026-12-02").err())
        .contains("the absence starts on 2026-11-20, before today, 2026-11-28");
  }

  private static String unwrapped(Call call) {
    assertThat(call.status()).as(call.err()).isZero();
    return call.out().replaceAll("\\s+", " ");
  }

  /** Without a journal the sheet says whose plants it tells of; with one, which it cannot. */
  @Test
  void theSheetSaysWhatItRestsOn() throws IOException {
    assertThat(unwrapped(call("water", "")))
        .contains("a sowing plan begun on Sat 26 Sep 2026 would have there now");
    Path rows =
        Files.writeString(
            folder.resolve("rows.csv"),
            """
            date,event,batch,crop,count,place
            2026-09-26,sow,a,loose-leaf lettuce green,4,4
            2026-10-24,move,a,,2,A1+A2
            2026-10-01,sow,t,dwarf tomato,1,1
            2026-10-30,move,t,,1,B3
            """);
    Path file = Files.writeString(folder.resolve("home.yaml"), HOME);
    for (String[] command :
        new String[][] {
          {"water"}, {"away", "--from", "2026-12-02", "--to", "2026-12-05"},
        }) {
      List<String> args = new ArrayList<>(List.of(command));
      args.add(1, file.toString());
      args.addAll(List.of("--today", "2026-11-28", "--effort", "1", "--journal", rows.toString()));
      args.addAll(List.of("--out", folder.resolve("out").toString()));
      assertThat(unwrapped(Call.of(args.toArray(String[]::new))))
          .contains("What stands in B3 has no growth model");
      assertThat(folder.resolve("out/" + command[0] + ".html"))
          .content()
          .contains("What stands in B3 has no growth model");
      assertThat(folder.resolve("out/" + command[0] + ".json"))
          .content()
          .contains("What stands in B3 has no growth model");
    }
  }

  @Test
  void aNumberOfAnAbsenceIsExplained() throws IOException {
    String[] days = {"--from", "2026-12-09", "--to", "2026-12-14", "--explain", "departure.levelL"};
    assertThat(unwrapped(call("away", "", days)))
        .contains("level on leaving", "Graamans et al. 2017", "a bowl day");
    List<String> more = new ArrayList<>(List.of(days));
    more.add("--json");
    JsonNode sheet = json(call("away", "", more.toArray(String[]::new)));
    assertThat(PublishedSchema.faults("away", sheet)).isEmpty();
    JsonNode steps = sheet.path("explained").path("steps");
    assertThat(steps.get(2).path("value").asDouble())
        .isCloseTo(sheet.path("departure").path("levelL").asDouble(), within(1e-3));
    days[5] = "note";
    assertThat(call("away", "", days).err()).contains("--explain: \"note\" is no number");
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
    assertThat(PublishedSchema.faults("water", sheet)).isEmpty();
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
    JsonNode intervals = sheet.path("use").path("intervals");
    assertThat(intervals).hasSize(3);
    assertThat(intervals.get(0).path("lossL").asDouble()).isCloseTo(58 - 55, within(1e-9));
    assertThat(intervals.get(1).path("lossL").asDouble()).isCloseTo(55 - 50, within(1e-9));
    assertThat(intervals.get(2).path("lossL").asDouble()).isCloseTo(50 - 41, within(1e-9));
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
        .contains("3 readings taught that the bench uses");
    assertThat(call.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
  }

  /** Plants that no bowl needs are not taken for thrown away while nobody is at home. */
  @Test
  void daysAwayCountThePlantsThatStand() throws IOException {
    JsonNode sheet = json(porch("away", "--from", "2027-01-11", "--to", "2027-02-03", "--json"));
    assertThat(PublishedSchema.faults("away", sheet)).isEmpty();
    assertThat(sheet.path("asItStands").path("useL").asDouble(99)).isGreaterThan(10);
  }

  @Test
  void aNumberIsExplained() throws IOException {
    Call call = call("water", "", "--explain", "pots[0].useMlPerDay");
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out()).contains("Graamans et al. 2017", "leaf pores", "mL a day");
    JsonNode sheet = json(call("water", "", "--json", "--explain", "reservoir.days[3].levelL"));
    assertThat(PublishedSchema.faults("water", sheet)).isEmpty();
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
