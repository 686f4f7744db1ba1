package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.app.file.PublishedSchema;

/** The feed from the command line to the sheet. */
class FeedCallTest {
  private static final String PORCH = "../examples/porch.yaml";
  private static final String HARD =
      """
      place: {latitude: 52.5, longitude: 13.4, timeZone: Europe/Berlin}
      feed:
        ec: 1.4 mS/cm
        scale: 0.1 g
        acid: nitric acid
        acidStrength: 3 %
        water: {kind: tap, ph: 7.8, calcium: 52 mg/L, magnesium: 0.3 mmol/L, sodium: 18 mg/L,
                chloride: 28 mg/L, sulfate: 29 mg/L, alkalinity: 7.3 °dH}
        shelf: [{salt: KNO3}, {salt: cands}, {salt: MgSO4.7H2O, left: 500 g}, {salt: mkp}]
      """;

  private static final String BLEND =
      """
      place: {latitude: 52.5, longitude: 13.4, timeZone: Europe/Berlin}
      feed:
        ec: 1.3 mS/cm
        wanted: {calcium: 100 mg/L}
        water: {kind: tap, ph: 7.8, calcium: 110 mg/L, magnesium: 14 mg/L, sodium: 38 mg/L,
                chloride: 60 mg/L, sulfate: 60 mg/L, alkalinity: 14 °dH}
        secondWater: {kind: rain}
        acidDensity: 1.05 g/mL
        meter:
          ppmFactor: 0.5
          reference: 20 °C
          standard: {temperature: 21 °C, read: 1.38 mS/cm}
          fresh: [{computed: 1.31 mS/cm, read: 600 ppm}, {computed: 1.30 mS/cm, read: 590 ppm}]
        running: {drunk: 2 L, evaporated: 0.3 L, topUp: hold EC}
      """;

  @TempDir private Path folder = Path.of(".");

  private Path hard() throws IOException {
    return Files.writeString(folder.resolve("hard.yaml"), HARD);
  }

  private static JsonNode json(Call call) throws IOException {
    assertThat(call.status()).isZero();
    return new ObjectMapper().readTree(call.out());
  }

  @Test
  void theSheetFitsAnEightyColumnTerminalAndTellsWhatToWeigh() {
    Call call =
        Call.of("feed", PORCH, "--stock", "100", "--reading", "840 ppm", "--correct", "pH 6.9");
    assertThat(call.status()).isZero();
    assertThat(call.out())
        .contains("[ ] Weigh")
        .contains("potassium nitrate")
        .contains("1.31 mS/cm")
        .contains("never water into acid")
        .contains("for each litre of tank A");
    assertThat(call.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
  }

  /**
   * Masses of the raft lettuce recipe by stoichiometry: 4.5 KNO3, 2.1 Ca(NO3)2, 1 KH2PO4, 1 MgSO4.
   */
  @ParameterizedTest
  @CsvSource({
    "kno3, 101.102, 4.5",
    "can4, 236.146, 2.1",
    "mkp, 136.084, 1.0",
    "mgso4, 246.466, 1.0"
  })
  void sixtyLitresOfTheRaftRecipe(String salt, double molarMass, double mmol) throws IOException {
    JsonNode sheet = json(Call.of("feed", PORCH, "--mix", "60", "--json"));
    double grams = 0;
    for (JsonNode dose : sheet.path("doses")) {
      grams += dose.path("id").asText().equals(salt) ? dose.path("amount").asDouble() : 0;
    }
    double expected = 60 * mmol * molarMass / 1000;
    assertThat(grams).isBetween(0.97 * expected, 1.03 * expected);
  }

  private Path blend() throws IOException {
    return Files.writeString(folder.resolve("blend.yaml"), BLEND);
  }

  @Test
  void blendReservoirAndMeterReachTheSheet() throws IOException {
    Call call =
        Call.of(
            "feed",
            blend().toString(),
            "--weeks",
            "5",
            "--reading",
            "640 ppm",
            "--out",
            folder.toString());
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out())
        .contains(
            "WHICH SHARE OF RAIN WATER", "THE RESERVOIR WEEK BY WEEK", "Week 5: pour in 16.1 L")
        .contains(
            "Renew the solution at the end of week", "your meter shows", "Your meter: readings")
        .contains("ppm scale 0.5 (NaCl)")
        .doesNotContain("ppm scale 0.7 (");
    assertThat(call.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    assertThat(Files.readString(folder.resolve("feed.html")))
        .contains("Misfit by share of rain water", "The reservoir week by week");
  }

  /** Each number that can be explained is one of the steps that explain it. */
  @Test
  void anExplanationEndsInTheNumberOfTheJson() throws IOException {
    for (String path :
        new String[] {
          "solution.ecMsCm",
          "solution.meterShowsMsCm",
          "solution.ph",
          "solution.osmoticKPa",
          "solution.bufferMeqPerPh",
          "solution.saturationIndex.gypsum",
          "water.alkalinityMeqL",
          "water.ecMsCm",
          "doses[0].amount",
          "nutrients[3].reachedMgL",
          "acid.millilitres",
          "settling.millilitres",
          "correction.dose.millilitres",
          "target.strength",
          "blend.share",
          "weeks[2].mgL.N",
          "traceStock.weighings[1].grams"
        }) {
      JsonNode sheet =
          json(
              Call.of(
                  "feed",
                  blend().toString(),
                  "--weeks=3",
                  "--correct=pH 7.2",
                  "--json",
                  "--explain",
                  path));
      double number =
          sheet.at("/" + path.replaceAll("\\[(\\d+)]", "/$1").replace('.', '/')).asDouble();
      assertThat(sheet.path("explained").path("steps"))
          .as(path)
          .anySatisfy(
              s ->
                  assertThat(s.path("value").asDouble())
                      .isCloseTo(number, within(1e-4 * Math.abs(number) + 1e-9)));
    }
    assertThat(Call.of("feed", PORCH, "--explain", "doses[0].amount").out())
        .contains("atomic weights", "misfit of the recipe");
  }

  @Test
  void theJsonFollowsItsSchema() throws IOException {
    for (String[] more :
        new String[][] {
          {PORCH},
          {PORCH, "--stock", "400", "--reading", "16 CF", "--correct", "EC 1.0 mS/cm"},
          {hard().toString(), "--mix", "40", "--correct", "pH 5.0"},
          {blend().toString(), "--weeks", "5", "--explain", "solution.ph"}
        }) {
      String[] args = new String[more.length + 2];
      args[0] = "feed";
      System.arraycopy(more, 0, args, 1, more.length);
      args[more.length + 1] = "--json";
      JsonNode sheet = json(Call.of(args));
      assertThat(PublishedSchema.faults("feed", sheet)).isEmpty();
    }
  }

  @Test
  void hardWaterGetsItsAcidAndTheWantedEc() throws IOException {
    JsonNode sheet = json(Call.of("feed", hard().toString(), "--mix", "40", "--json"));
    assertThat(sheet.path("solution").path("ecMsCm").asDouble()).isBetween(1.38, 1.42);
    double meq = sheet.path("water").path("alkalinityMeqL").asDouble() - 0.5;
    assertThat(sheet.path("acid").path("meqL").asDouble()).isBetween(meq - 0.001, meq + 0.001);
    double millilitres = 40 * meq / (10 * 3 * 1.01457 / 63.012);
    assertThat(sheet.path("acid").path("millilitres").asDouble())
        .isBetween(0.995 * millilitres, 1.005 * millilitres);
  }

  /** Each acid, base and trace salt carries its caution where it is handled. */
  @Test
  void theCautionStandsInTheStepItself() throws IOException {
    JsonNode sheet = json(Call.of("feed", hard().toString(), "--mix", "40", "--json"));
    assertThat(sheet.path("steps"))
        .filteredOn(s -> s.asText().contains("nitric acid"))
        .isNotEmpty()
        .allMatch(s -> s.asText().contains("never water into acid"));
    JsonNode porch = json(Call.of("feed", PORCH, "--json"));
    assertThat(porch.path("traceStock").path("steps"))
        .filteredOn(s -> s.asText().startsWith("boric acid"))
        .singleElement()
        .matches(s -> s.asText().contains("unborn child"));
  }

  @Test
  void aWeakReservoirGetsSaltsInGramsAndTheCost() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("priced.yaml"),
            """
            place: {latitude: -41.3, longitude: 174.8, timeZone: Pacific/Auckland}
            feed:
              shelf: [{salt: can4, pricePerKg: 5}, {salt: kno3, pricePerKg: 8}, {salt: mgso4},
                      {salt: mkp}, {label: 4-2-6 w/v, left: 500 mL}]
              running: {seen: [{poured: 20 L, read: 1.0 mS/cm}]}
            """);
    JsonNode sheet =
        json(
            Call.of(
                "feed", file.toString(), "--correct", "EC 0.9 mS/cm", "--weeks", "3", "--json"));
    assertThat(sheet.path("cost").path("amount").asDouble()).isPositive();
    assertThat(sheet.path("correction").path("salts")).isNotEmpty();
    assertThat(sheet.path("uptake").path("litresPerKgDry").asDouble()).isBetween(40.0, 3000.0);
    assertThat(sheet.path("weeks").get(2).path("mgLLow").path("N").asDouble())
        .isLessThan(sheet.path("weeks").get(2).path("mgLHigh").path("N").asDouble());
    assertThat(PublishedSchema.faults("feed", sheet)).isEmpty();
    assertThat(Call.of("feed", file.toString(), "--weeks", "3").out())
        .contains("The salts cost", "dry leaf");
  }

  @Test
  void thePageStandsAlone() throws IOException {
    assertThat(Call.of("feed", PORCH, "--out", folder.toString()).status()).isZero();
    String page = Files.readString(folder.resolve("feed.html"));
    assertThat(page).startsWith("<!DOCTYPE html>").contains("<svg").doesNotContain("<script");
    assertThat(page.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http");
    assertThat(folder.resolve("feed.json")).exists();
  }

  @ParameterizedTest
  @CsvSource({
    "--mix, 0",
    "--mix, many",
    "--stock, 1",
    "--stock, 9999",
    "--reading, 840",
    "--reading, 99 mS/cm",
    "--weeks, 99",
    "--explain, nonsense",
    "--correct, salty",
    "--correct, pH 12",
    "--correct, EC 840 ppm"
  })
  void anAbsurdCallIsOneSentenceAndStatusTwo(String option, String value) {
    Call call = Call.of("feed", PORCH, option, value);
    assertThat(call.status()).isEqualTo(2);
    assertThat(call.out()).isEmpty();
    assertThat(call.err().lines()).hasSize(1);
    assertThat(call.err()).doesNotContain("Exception");
  }

  /** Far too alkaline for acid alone: nothing is dosed past the safe share. */
  @Test
  void aDoseOutsideSafeLimitsIsRefusedWithStatusThree() throws IOException {
    Call call = Call.of("feed", hard().toString(), "--mix", "40", "--correct", "pH 3.1", "--json");
    assertThat(call.status()).isEqualTo(3);
    assertThat(
            new ObjectMapper().readTree(call.out()).path("faults").get(0).path("sentence").asText())
        .startsWith("Refused");
  }
}
