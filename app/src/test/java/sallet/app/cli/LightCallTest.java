package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import sallet.app.file.PublishedSchema;

/** The command {@code light} as a grower or a program calls it. */
class LightCallTest {
  private static final Path ROOT = Files.exists(Path.of("examples")) ? Path.of("") : Path.of("..");

  @TempDir private Path dir;

  private static String example(String name) {
    return ROOT.resolve("examples").resolve(name).toString();
  }

  private static void assertValid(String json) throws IOException {
    assertThat(PublishedSchema.faults("light", new ObjectMapper().readTree(json))).isEmpty();
  }

  @Test
  void everyExampleGivesValidJson() throws IOException {
    for (String name : List.of("porch.yaml", "cellar.yaml", "minimal.yaml", "loft.yaml")) {
      Call call =
          Call.of("light", example(name), "--date", "2026-12-21", "--json", "--explain", "A1@12");
      assertThat(call.status()).as(name + call.err()).isZero();
      assertValid(call.out());
    }
  }

  /** The month's mean in the JSON is the mean of its days in the table of days. */
  @Test
  void jsonAndTableSayTheSame() throws IOException {
    Call call =
        Call.of(
            "light",
            example("loft.yaml"),
            "--date",
            "2026-12-01",
            "--json",
            "--out",
            dir.resolve("light").toString());
    assertThat(call.status()).isZero();
    JsonNode month = new ObjectMapper().readTree(call.out()).path("months").get(0);
    double sum = 0;
    List<String> rows = Files.readAllLines(dir.resolve("light/light.csv"));
    for (String row : rows) {
      String[] cells = row.split(",", -1);
      if (cells[0].startsWith("2026-12") && cells[1].equals("B3")) {
        sum += Double.parseDouble(cells[4]);
      }
    }
    int b3 = 9;
    assertThat(sum / 31)
        .isEqualTo(
            month.path("windowMol").get(b3).asDouble() + month.path("lampMol").get(b3).asDouble(),
            within(0.002));
    assertThat(rows).hasSize(1 + 365 * 21);
  }

  @Test
  void thePageIsWellFormedAndAsksNobody()
      throws IOException, ParserConfigurationException, SAXException {
    Call call =
        Call.of("light", example("loft.yaml"), "--date", "2026-12-01", "--out", dir.toString());
    assertThat(call.status()).isZero();
    String page = Files.readString(dir.resolve("light.html"));
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page.replace("<!DOCTYPE html>", ""))));
    assertThat(page.replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http", "<script", "url(//");
    assertThat(page).contains("<title id=\"year-title\">", "Lamp over the bench");
  }

  @Test
  void theTextShowsTheYearOrTheDay() {
    Call year = Call.of("light", example("porch.yaml"), "--date", "2026-11-28", "--year");
    assertThat(year.out()).contains("Light on Sat 28 Nov 2026", "Lamp height", "What to watch");
    Call day = Call.of("light", example("porch.yaml"), "--date", "2026-11-28");
    assertThat(day.out()).contains("Length of the day").doesNotContain("Lamp height");
    Call told =
        Call.of("light", example("porch.yaml"), "--date", "2026-11-28", "--explain", "b3@12");
    assertThat(told.out()).contains("Light of pot B3", "window 1: patch of sun", "Perez");
  }

  @Test
  void wrongCallsAreRefused() {
    Call pot = Call.of("light", example("porch.yaml"), "--explain", "Z9@12");
    assertThat(pot.status()).isEqualTo(2);
    assertThat(pot.err()).contains("is no pot and hour; write one like A1@12");
    Call hour = Call.of("light", example("porch.yaml"), "--explain", "A1@24");
    assertThat(hour.status()).isEqualTo(2);
    Call target = Call.of("light", example("porch.yaml"), "--target", "99");
    assertThat(target.err()).contains("--target: 99 lies outside what is allowed (1 to 40)");
  }

  private Path plan(String json) throws IOException {
    return Files.writeString(dir.resolve("plan.json"), json);
  }

  private static JsonNode weeks(Call call) throws IOException {
    assertThat(call.status()).as(call.err()).isZero();
    assertValid(call.out());
    return new ObjectMapper().readTree(call.out()).path("weeks");
  }

  /** Catalogue: butterhead lettuce wants 14 mol, spinach 15; each wanted crop has its pots. */
  @Test
  void withoutAPlanTheWantedCropsSetTheMark() throws IOException {
    Call call = Call.of("light", example("porch.yaml"), "--date", "2026-12-21", "--json");
    JsonNode week = weeks(call).get(0).path("targetMol");
    assertThat(week).hasSize(18);
    JsonNode crops = new ObjectMapper().readTree(call.out()).path("months").get(0).path("crops");
    for (int i = 0; i < 18; i++) {
      double wanted =
          switch (crops.get(i).asText()) {
            case "spinach" -> 15;
            case "butterhead lettuce", "Swiss chard" -> 14;
            case "loose-leaf lettuce, green" -> 12;
            default -> 13;
          };
      assertThat(week.get(i).asDouble()).as(crops.get(i).asText()).isEqualTo(wanted);
    }
    assertThat(call.out()).contains("\"origin\" : \"wishes\"");
  }

  /** Only the two pots of the plan count, and only while its plants stand in them. */
  @Test
  void aPlanSaysWhatEachPotIsToGet() throws IOException {
    Path plan =
        plan(
            """
            {"sowings": [{"crop": "spinach", "courses": [
              {"toBench": "2026-12-01", "end": "2026-12-20", "pots": ["A1", "C6"]}]}]}
            """);
    Call call =
        Call.of(
            "light",
            example("porch.yaml"),
            "--date",
            "2026-12-01",
            "--json",
            "--plan",
            plan.toString());
    JsonNode weeks = weeks(call);
    JsonNode first = weeks.get(0).path("targetMol");
    assertThat(first.get(0).asDouble()).isEqualTo(15);
    assertThat(first.get(17).asDouble()).isEqualTo(15);
    assertThat(first.get(1).isNull()).isTrue();
    double mean =
        (weeks.get(0).path("dliMol").get(0).asDouble()
                + weeks.get(0).path("dliMol").get(17).asDouble())
            / 2;
    assertThat(mean).isBetween(12.0, 18.0);
    assertThat(weeks.get(10).path("fullHours").asDouble()).as("a bare bench").isZero();
  }

  @Test
  void aPlanThatDoesNotFitIsRefused() throws IOException {
    String porch = example("porch.yaml");
    assertThat(Call.of("light", porch, "--plan", plan("no").toString()).err())
        .contains("is no plan as \"sallet plan --json\" prints it: it is no JSON from line 1");
    assertThat(Call.of("light", porch, "--plan", plan("{}").toString()).err())
        .contains("it has no list \"sowings\"");
    String course = "{\"sowings\": [{\"crop\": \"%s\", \"courses\": [%s]}]}";
    String stay = "{\"toBench\": \"2026-12-01\", \"end\": \"2026-12-20\", \"pots\": [\"%s\"]}";
    assertThat(
            Call.of("light", porch, "--plan", plan(course.formatted("spinach", "{}")).toString())
                .err())
        .contains("a date of a course is missing or wrong");
    Call pot =
        Call.of(
            "light",
            porch,
            "--plan",
            plan(course.formatted("spinach", stay.formatted("Z9"))).toString());
    assertThat(pot.status()).isEqualTo(2);
    assertThat(pot.err()).contains("\"Z9\" is no pot of your bench");
    assertThat(
            Call.of(
                    "light",
                    porch,
                    "--plan",
                    plan(course.formatted("plastic", stay.formatted("A1"))).toString())
                .err())
        .contains("\"plastic\" is not a crop of the catalogue or your file");
    assertThat(Call.of("light", porch, "--plan", "nowhere.json", "--target", "12").err())
        .contains("--target: stands beside --plan; give one of the two");
  }

  /** Each wrong thing is one sentence with the line it stands in, and in a file its line there. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          latitude: 40                       | latitude: 95                 | place.latitude (line 1): 95 lies outside what is allowed (-90 to 90)
          sky: fair                          | sunshine: [9 h, 9 h, 9 h, 9 h, 9 h, 9 h, 9 h, 9 h, 9 h, 9 h, 9 h] | place.weather.sunshine (line 1): has 11 values; give 12, January to December
          from: 1.0 m                        | from: 2.0 m                  | room.windows[0].from (line 2): the window reaches from 2 to 3.8 m, beyond its wall (0 to 3 m)
          x: 0.2 m                           | x: 1.9 m                     | bench.pots[0].x (line 3): 1.9 m lies outside the tray (0 to 1.2 m)
          power: 90 W                        | photometry: a.ies            | lamp.photometry (line 4): a.ies, line 2: the file has angles of type A
          power: 90 W                        | photometry: b.ies            | lamp.photometry (line 4): b.ies, line 2: the file has angles of type B
          power: 90 W                        | photometry: cut.ies          | lamp.photometry (line 4): cut.ies, line 3: the file ends where
          power: 90 W                        | photometry: other.ies        | lamp.photometry (line 4): other.ies, line 1: this is no photometry file
          power: 90 W                        | photometry: other.ldt        | lamp.photometry (line 4): other.ldt, line 2: this is no EULUMDAT file
          sky: fair                          | file: cut.epw                | place.weather.file (line 1): cut.epw, line 9: the file ends after 1 hours; a year has 8760
          sky: fair                          | file: other.epw              | place.weather.file (line 1): other.epw, line 1: this is no hourly weather file
          """)
  void wrongInputIsToldInOneSentence(String right, String wrong, String sentence)
      throws IOException {
    String good =
        """
        place: {latitude: 40, longitude: -86, timeZone: America/New_York, weather: {sky: fair}}
        room: {size: {width: 3.0 m, depth: 2.4 m, height: 2.4 m}, windows: [{wall: south, from: 1.0 m, width: 1.8 m, height: 1.2 m, sill: 0.9 m}]}
        bench: {width: 1.2 m, depth: 0.6 m, height: 0.7 m, pots: [{name: A1, x: 0.2 m, y: 0.2 m}]}
        lamp: {power: 90 W}
        """;
    String head = "TILT=NONE\n1 -1 1 2 1 %d 2 0 0 0\n1 1 10\n";
    Files.writeString(dir.resolve("a.ies"), head.formatted(3));
    Files.writeString(dir.resolve("b.ies"), head.formatted(2));
    Files.writeString(dir.resolve("cut.ies"), head.formatted(1));
    Files.writeString(
        dir.resolve("cut.epw"),
        "LOCATION,Somewhere,-,-,-,0,40,-86,-5,200\n"
            + "-\n".repeat(7)
            + "1999,1,1,1,0,x,1,1,50,99000,0,0,0,0,0,0\n");
    for (String name : List.of("other.ies", "other.ldt", "other.epw")) {
      Files.writeString(dir.resolve(name), "a letter,\nnot what it is called\n");
    }
    Path file = dir.resolve("home.yaml");
    assertThat(good).contains(right);
    Files.writeString(file, good.replace(right, wrong));
    Call call = Call.of("light", file.toString(), "--date", "2026-12-01");
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.err().lines()).singleElement().asString().startsWith(sentence);
  }
}
