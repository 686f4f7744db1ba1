package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The command {@code light} as a grower or a program calls it. */
class LightCallTest {
  private static final Path ROOT = Files.exists(Path.of("examples")) ? Path.of("") : Path.of("..");

  @TempDir private Path dir;

  private static String example(String name) {
    return ROOT.resolve("examples").resolve(name).toString();
  }

  private static void assertValid(String json) throws IOException {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Files.readString(ROOT.resolve("docs/schema/light.schema.json")));
    assertThat(schema.validate(new ObjectMapper().readTree(json))).isEmpty();
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
}
