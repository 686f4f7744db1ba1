package sallet.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.app.file.PublishedSchema;

/** Calls of {@code sallet crop}. */
class CropCallTest {
  private static final String SMALL =
      """
      household: {bowlGrams: 60, kinds: 1}
      place: {latitude: -42.88, longitude: 147.33, timeZone: Australia/Hobart}
      bench: {width: 60 cm, depth: 30 cm, pots: {rows: 2, columns: 3}}
      lamp: {size: {length: 50 cm, width: 20 cm}, power: 50 W}
      crops:
        own:
          - {name: window greens, like: mizuna, speed: 1.1, oldestDays: 70}
      """;

  @TempDir Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("house.yaml"), text);
  }

  private Call call(String... more) throws IOException {
    String[] args = new String[more.length + 4];
    args[0] = "crop";
    args[1] = file(SMALL).toString();
    args[2] = "--sow";
    args[3] = "2026-12-01";
    System.arraycopy(more, 0, args, 4, more.length);
    return Call.of(args);
  }

  private static void isValid(JsonNode json) throws IOException {
    assertThat(PublishedSchema.faults("crop", json)).isEmpty();
  }

  @Test
  void comparesAllCropsAndTheGrowersOwn() throws IOException {
    Call call = call();
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out())
        .contains("window greens", "indeterminate cherry tomato", "garden cress", "a pot and week")
        .contains("CAUTION");
    assertThat(call.out().lines()).allMatch(line -> line.length() <= 80);
    JsonNode json = new ObjectMapper().readTree(call("--json").out());
    isValid(json);
    assertThat(json.path("crops")).hasSize(25);
    assertThat(json.has("detail")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "loose leaf lettuce green",
        "butterhead lettuce",
        "window greens",
        "spinach",
        "basil",
        "garden cress",
        "lamb's lettuce",
        "dwarf tomato"
      })
  void tellsOneCropInFull(String crop) throws IOException {
    Call call = call("--crop", crop);
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(call.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(call.out())
        .contains("WHERE THE NUMBERS COME FROM")
        .doesNotContain("Infinity", "NaN");
    JsonNode json = new ObjectMapper().readTree(call("--crop", crop, "--json").out());
    isValid(json);
    assertThat(json.path("crops")).hasSize(1);
    assertThat(json.path("detail").path("crop").asText()).isNotBlank();
  }

  @Test
  void tellsDaysGramsRisksAndMonthsOfALeafCrop() throws IOException {
    Call call = call("--crop", "mizuna", "--place", "a1");
    assertThat(call.out())
        .contains("pot A1", "SEED", "STAGES", "RISKS", "60 / 120 / 180 g", "█", "pick", "lift");
    JsonNode detail =
        new ObjectMapper().readTree(call("--crop", "mizuna", "--json").out()).path("detail");
    assertThat(detail.path("daysToMass").get(0).path("sowings")).hasSize(12);
    JsonNode curve = detail.path("forecast").path("freshGrams");
    assertThat(curve.get(40).path("median").asDouble())
        .isBetween(curve.get(40).path("low").asDouble(), curve.get(40).path("high").asDouble());
  }

  @Test
  void tellsWhenAHeadIsBestLifted() throws IOException {
    assertThat(call("--crop", "butterhead lettuce").out())
        .contains("best lifted from", "For 6 plants", "Keeps good for");
    assertThat(call("--crop", "mizuna").out()).doesNotContain("best lifted from");
  }

  /** More speed gives more grams: the own crop is mizuna with a factor of 1.1. */
  @Test
  void anOwnCropDiffersFromItsRelativeAsSaid() throws IOException {
    JsonNode own = new ObjectMapper().readTree(call("--crop", "window greens", "--json").out());
    JsonNode like = new ObjectMapper().readTree(call("--crop", "mizuna", "--json").out());
    assertThat(median(own)).isGreaterThan(median(like));
  }

  private static double median(JsonNode report) {
    return report
        .path("detail")
        .path("forecast")
        .path("freshGrams")
        .get(40)
        .path("median")
        .asDouble();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--crop=mizunna | --crop: \"mizunna\" is not in the catalogue of crops (did you mean \"mizuna\"?); docs/crops.md lists their names",
        "--crop=mizuna --pick=120% | --pick: \"120%\" is no pick a plant can bear; write the share of its leaf area, 5 to 40 %",
        "--crop=mizuna --seed-age=-1 | --seed-age: -1 lies outside what is allowed (0 to 20)",
        "--pick=30 | --pick: goes with --crop, which names the crop",
        "--crop=butterhead-lettuce --pick=30 | --pick: butterhead lettuce is harvested as a whole, not picked",
        "--place=Z9 | --place: \"Z9\" is no pot of your bench; the first is A1, the last B3",
        "--sow=1.12.2026 | --sow: \"1.12.2026\" is not a date; write year, month and day like 2027-07-03"
      })
  void aWrongOptionIsToldInASentence(String option, String sentence) throws IOException {
    Call call = Call.of(("crop " + file(SMALL) + " " + option).split(" "));
    assertThat(call.err().strip()).isEqualTo(sentence);
    assertThat(call.status()).isEqualTo(2);
  }

  @Test
  void oldSeedGivesFewerPlants() throws IOException {
    JsonNode fresh = seed("mizuna");
    JsonNode old = seed("mizuna", "--seed-age", "4");
    assertThat(old.path("usableShare").asDouble())
        .isBetween(0.3, fresh.path("usableShare").asDouble() - 0.05);
    assertThat(old.path("medianDays")).isEqualTo(fresh.path("medianDays"));
    assertThat(call("--crop", "mizuna", "--seed-age", "4").out())
        .containsPattern("after 4\\s+years,\\s+which\\s+the\\s+numbers\\s+above\\s+reckon\\s+with");
    assertThat(call("--crop", "mizuna", "--seed-age", "20").out())
        .containsPattern("Too\\s+few\\s+to\\s+count\\s+on");
  }

  private JsonNode seed(String crop, String... more) throws IOException {
    return pickedBy(crop, more).path("detail").path("forecast").path("seed");
  }

  private JsonNode pickedBy(String crop, String... more) throws IOException {
    String[] args = new String[more.length + 3];
    args[0] = "--crop";
    args[1] = crop;
    args[2] = "--json";
    System.arraycopy(more, 0, args, 3, more.length);
    JsonNode json = new ObjectMapper().readTree(call(args).out());
    isValid(json);
    return json;
  }

  /** A lighter pick takes less at first and leaves a heavier plant to lift. */
  @Test
  void aLighterPickLeavesAHeavierPlant() throws IOException {
    JsonNode hard = pickedBy("mizuna").path("detail").path("forecast").path("harvests");
    JsonNode light =
        pickedBy("mizuna", "--pick", "20 %").path("detail").path("forecast").path("harvests");
    assertThat(edible(light, 0)).isLessThan(edible(hard, 0));
    assertThat(edible(light, light.size() - 1)).isGreaterThan(edible(hard, hard.size() - 1));
  }

  private static double edible(JsonNode takes, int i) {
    return takes.get(i).path("edibleGrams").path("median").asDouble();
  }

  /** 12 mol in still air, 17 mol under a fan (common practice). */
  @Test
  void aFanLetsLettuceBearMoreLight() throws IOException {
    JsonNode still = tipBurn(file(SMALL));
    JsonNode fan = tipBurn(file(SMALL + "room: {fan: true}\n"));
    assertThat(index(fan)).isLessThan(index(still));
    assertThat(fan.path("says").asText()).contains("0.3 m/s of air");
  }

  private static JsonNode tipBurn(Path file) throws IOException {
    for (JsonNode risk : detail(file, "butterhead lettuce").path("risks")) {
      if (risk.path("says").asText().contains("of air, calcium")) {
        return risk;
      }
    }
    throw new AssertionError("no tip burn");
  }

  private static double index(JsonNode risk) {
    for (JsonNode driver : risk.path("drivers")) {
      if (driver.path("name").asText().equals("five-day light")) {
        return -driver.path("watchFrom").asDouble();
      }
    }
    throw new AssertionError("no light");
  }

  /** At 30 °C hardly any butterhead seed comes: no number of cells would do. */
  @Test
  void seedTooWarmToCountOnIsSaidSo() throws IOException {
    Path hot =
        file(SMALL + "nursery: {cells: 20, places: 8, hours: 16 h, day: 86 °F, night: 86 °F}\n");
    Call call =
        Call.of("crop", hot.toString(), "--sow", "2026-12-01", "--crop", "butterhead lettuce");
    assertThat(call.out())
        .containsPattern("Too\\s+few\\s+to\\s+count\\s+on")
        .doesNotContain("For 6 plants");
  }

  /** An own crop may also change one of the catalogue. */
  @Test
  void anOwnCropOfAKnownNameChangesThatCrop() throws IOException {
    Path changed = file(SMALL.replace("window greens", "mizuna"));
    JsonNode json =
        new ObjectMapper()
            .readTree(Call.of("crop", changed.toString(), "--sow", "2026-12-01", "--json").out());
    assertThat(json.path("crops")).hasSize(24);
  }

  /**
   * Every drawing of the page says in words what it shows; every crop of the file has its place.
   */
  @ParameterizedTest
  @ValueSource(strings = {"", "--crop=window greens", "--crop=dwarf tomato", "--crop=cress"})
  void writesAPage(String option) throws IOException {
    Path out = folder.resolve("out");
    Call call =
        option.isEmpty() ? call("--out", out.toString()) : call("--out", out.toString(), option);
    assertThat(call.status()).as(call.err()).isZero();
    assertThat(out.resolve("crop.json")).exists();
    assertThat(Files.readString(out.resolve("crop.txt"))).isEqualTo(call.out());
    String page = Files.readString(out.resolve("crop.html"));
    int drawings = page.split("role=\"img\"", -1).length - 1;
    assertThat(drawings).isEqualTo(option.isEmpty() ? 19 : option.contains("greens") ? 1 : 0);
    assertThat(page.split("<desc", -1)).hasSize(drawings + 1);
    assertThat(page)
        .doesNotContain("Infinity", "NaN", "<script", "<link", "src=", "href=")
        .contains("Wash hands and knife");
    if (option.isEmpty()) {
      assertThat(page).contains("Window greens", "Garden cress", "Grows well here");
    }
  }

  @Test
  void theDrawingSaysWhatTheTableSays() throws IOException {
    Path out = folder.resolve("out");
    Call call = call("--out", out.toString(), "--crop", "mizuna");
    String page = Files.readString(out.resolve("crop.html"));
    JsonNode detail =
        new ObjectMapper().readTree(call("--crop", "mizuna", "--json").out()).path("detail");
    JsonNode takes = detail.path("forecast").path("harvests");
    assertThat(page.split("<circle", -1)).hasSize(takes.size());
    long first = Math.round(takes.get(0).path("edibleGrams").path("median").asDouble());
    assertThat(page).contains("<td class=\"number\">" + first + "\u00a0g</td>");
    assertThat(call.out()).contains("goes: ", "first harvest", "Also called Japanese");
  }

  @Test
  void aRelativeIsNamedForAPlantTheCatalogueLacks() throws IOException {
    assertThat(call("--crop", "tatsoi").err()).contains("it is grown most like pak choi");
    assertThat(call("--crop", "cilantro").out()).contains("CORIANDER");
  }

  /** An own crop that bolts at half the sum on shorter days leaves the bench earlier. */
  @Test
  void ownTemperaturesAndBoltingAreUsed() throws IOException {
    String own =
        "{name: window greens, like: mizuna, germination: {coldest: 15 °C, bestFrom: 24 °C, bestTo: 28 °C,"
            + " warmest: 40 °C}, bolting: {sum: 300, day: 10 h}}";
    Path changed = file(SMALL.replaceAll("\\{name: window greens.*}", own));
    JsonNode mine = detail(changed, "window greens");
    JsonNode theirs = detail(changed, "mizuna");
    assertThat(mine.path("stages").path("lastDay").asText())
        .isLessThan(theirs.path("stages").path("lastDay").asText());
    assertThat(mine.path("seed").path("advice").asText()).contains("Aim at 24 to 28 °C");
    assertThat(mine.path("seed").path("medianDays").asDouble())
        .isGreaterThan(theirs.path("seed").path("medianDays").asDouble());
  }

  private static JsonNode detail(Path file, String crop) throws IOException {
    Call call = Call.of("crop", file.toString(), "--sow", "2026-12-01", "--crop", crop, "--json");
    return new ObjectMapper().readTree(call.out()).path("detail").path("forecast");
  }

  /** The own crop that docs/crops.md shows can be written so. */
  @Test
  void theOwnCropOfThePageIsUnderstood() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "crops.md"));
    String own = page.split("```yaml\n", 2)[1].split("```", 2)[0];
    String place = SMALL.substring(0, SMALL.indexOf("crops:"));
    Call call =
        Call.of(
            "crop", file(place + own).toString(), "--sow", "2026-12-01", "--crop=window greens");
    assertThat(call.err()).isEmpty();
    assertThat(call.out()).contains("WINDOW GREENS");
  }

  @Test
  void cupsAreAnotherWayToSayASalad() throws IOException {
    Path cups =
        file(
            SMALL.replace(
                "{bowlGrams: 60, kinds: 1}", "{people: 1, saladsPerWeek: 2, cupsPerSalad: 2}"));
    assertThat(Call.of("crop", cups.toString(), "--sow", "2026-12-01").status()).isZero();
  }
}
