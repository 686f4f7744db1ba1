package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URISyntaxException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.cases.CaseRow;
import sallet.cases.CheckFilesTest;

/** The catalogue that ships with Sallet. */
class CatalogueTest {
  private final Catalogue catalogue = Catalogue.builtIn();

  private Crop crop(String name) {
    return catalogue.find(name).orElseThrow();
  }

  @Test
  void holdsTwentyFourCropsOfWhichEighteenCanBePlanned() {
    assertThat(catalogue.all()).hasSize(24);
    assertThat(catalogue.all()).filteredOn(Crop::plannable).hasSize(18);
  }

  @Test
  void everyCropNamesItsSourcesAndSaysWhyItCannotBePlanned() {
    assertThat(catalogue.all())
        .allSatisfy(
            crop -> {
              assertThat(crop.sources().guide()).isNotBlank();
              assertThat(crop.sources().rules()).contains("judgement");
              assertThat(crop.sources().growth().isBlank()).isEqualTo(crop.growth().isEmpty());
              assertThat(crop.whyNotPlannable().isBlank()).isEqualTo(crop.plannable());
            });
  }

  /** The reduction of hours to days uses one layer factor for all crops. */
  @Test
  void everyCropHasTheCommonLayerFactor() {
    assertThat(catalogue.all())
        .allSatisfy(
            crop ->
                assertThat(crop.growth().map(PlantParameters::layerFactor))
                    .isIn(Optional.empty(), Optional.of(PlantParameters.LAYER_FACTOR)));
  }

  @ParameterizedTest
  @CsvSource({
    "'loose-leaf lettuce, red', 'loose-leaf lettuce, red'",
    "'loose leaf LETTUCE red', 'loose-leaf lettuce, red'",
    "'Cos romaine lettuce', 'cos (romaine) lettuce'",
    "'kale leaf', 'kale (leaf)'",
    "'lambs  lettuce', 'lamb''s lettuce'",
    "'brassica radish microgreens', 'brassica/radish microgreens'",
    "'swiss chard', 'Swiss chard'",
    "cilantro, coriander",
    "Arugula, salad rocket",
    "roquette, salad rocket",
    "bok-choy, pak choi",
    "silverbeet, Swiss chard",
    "'corn salad', 'lamb''s lettuce'",
    "'Romaine', 'cos (romaine) lettuce'",
    "'red loose-leaf lettuce', 'loose-leaf lettuce, red'"
  })
  void findsNamesAndOtherCommonNamesWithoutRegardToCommasHyphensBracketsAndCase(
      String asked, String name) {
    assertThat(crop(asked).name()).isEqualTo(name);
  }

  @ParameterizedTest
  @CsvSource({
    "mizunna, mizuna",
    "spinich, spinach",
    "cilanto, coriander",
    "arrugula, salad rocket",
    "tomato, dwarf tomato",
    "parsely, parsley"
  })
  void suggestsWhatAMisspeltNameMayMean(String asked, String meant) {
    assertThat(catalogue.find(asked)).isEmpty();
    assertThat(catalogue.suggestions(asked)).first().isEqualTo(meant);
  }

  @Test
  void namesTheRelativeOfAPlantItLacks() {
    assertThat(catalogue.find("tatsoi")).isEmpty();
    assertThat(catalogue.relative("Tatsoi").orElseThrow().crop()).contains("pak choi");
    assertThat(catalogue.relative("spring-onion").orElseThrow().crop()).isEmpty();
    assertThat(catalogue.relative("wheelbarrow")).isEmpty();
  }

  @Test
  void noNameMeansTwoThings() {
    List<String> names =
        Table.rows("common_names.csv").stream()
            .map(row -> row.text("name"))
            .map(name -> name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " "))
            .toList();
    assertThat(names).doesNotHaveDuplicates();
    assertThat(catalogue.all())
        .allSatisfy(crop -> assertThat(names).doesNotContain(crop.name()))
        .flatExtracting(Crop::alsoCalled)
        .hasSizeGreaterThan(50);
  }

  @Test
  void suggestsNothingForAWordFarFromEveryCrop() {
    assertThat(catalogue.suggestions("wheelbarrow")).isEmpty();
    assertThat(catalogue.suggestions("")).isEmpty();
  }

  /** Worked example of the Levenshtein distance in textbooks: kitten, sitting, 3. */
  @Test
  void countsLettersToChange() {
    assertThat(Catalogue.distance("kitten", "sitting")).isEqualTo(3);
    assertThat(Catalogue.distance("", "abc")).isEqualTo(3);
    assertThat(Catalogue.distance("flaw", "lawn")).isEqualTo(2);
  }

  /** Rows of the tables, read by eye: crop_map.csv and catalogue.csv. */
  @Test
  void joinsTheTablesOfACrop() {
    Crop red = crop("loose-leaf lettuce, red");
    assertThat(red.growth().orElseThrow().dryMatterShare()).isEqualTo(0.047);
    assertThat(crop("loose-leaf lettuce, green").growth().orElseThrow().dryMatterShare())
        .isEqualTo(0.042);
    assertThat(red.harvest().orElseThrow())
        .isEqualTo(new HarvestRule(true, 60, 75, 35, 0.93, 7, 0.95, 1, 0.8));
    assertThat(crop("salad rocket").harvest().orElseThrow().plantsPerPot()).isEqualTo(3);
    assertThat(crop("basil").harvest().orElseThrow().fridgeCarryDays()).isZero();
    assertThat(crop("crisphead lettuce").harvest().orElseThrow().leafPick()).isFalse();
    assertThat(crop("spinach").bolting()).contains(new Bolting(450, 13));
    assertThat(crop("garden cress").bolting()).isEmpty();
    assertThat(crop("dwarf tomato").bolting()).isEmpty();
    CropGuide guide = crop("butterhead lettuce").guide();
    assertThat(guide.fullDays()).contains(new Span(45, 55));
    assertThat(guide.babyLeafDays()).contains(new Span(28, 28));
    assertThat(guide.firstCutDays()).isEmpty();
    assertThat(guide.growDliMol()).isEqualTo(new Span(8, 17));
    assertThat(guide.targetDliMol()).isEqualTo(14);
    assertThat(guide.minimumGerminationPercent()).contains(80.0);
    assertThat(guide.yieldG()).contains(new Span(100, 220));
  }

  /** Bases below freezing are numbers too: crop_map.csv has -4.09 °C and 357.3 °C d for parsley. */
  @Test
  void readsThermalTimeOfACrop() {
    Germination parsley = crop("parsley").germination();
    assertThat(parsley.baseC()).isEqualTo(-4.09);
    assertThat(parsley.thermalTimeCd()).isEqualTo(357.3);
    assertThat(parsley.daysAt(8).orElseThrow()).isCloseTo(357.3 / 12.09, within(1e-9));
    assertThat(crop("basil").germination().daysAt(20).orElseThrow())
        .isCloseTo(65 / 9.5, within(1e-9));
    assertThat(crop("Swiss chard").germination().daysAt(20).orElseThrow())
        .isCloseTo(9, within(1e-9));
  }

  @Test
  void growthParametersAreThoseOfTheCheckFile() throws URISyntaxException {
    for (CaseRow row : CheckFilesTest.shipped().rows("crop/plant_model_parameters.csv")) {
      assertThat(catalogue.all())
          .filteredOn(crop -> crop.sources().growth().startsWith(row.text("crop") + ":"))
          .isNotEmpty()
          .allSatisfy(
              crop -> {
                PlantParameters ours = crop.growth().orElseThrow();
                assertThat(ours.withDryMatterShare(row.number("DMC0")))
                    .isEqualTo(PlantRuns.plant(row));
              });
    }
  }

  @Test
  void keepsEntriesInWordsAsRemarks() {
    CropGuide cress = crop("garden cress").guide();
    assertThat(cress.yieldG()).isEmpty();
    assertThat(cress.spacingCm()).isEmpty();
    assertThat(cress.tipBurnFactor()).isEmpty();
    assertThat(cress.remarks())
        .containsExactly(
            "spacing_cm: sheet 3-4 seeds/cm2", "yield_g_per_plant_low: per 100 cm2: 20");
  }

  /** Days to emergence at 20 °C of catalogue.csv stand in where there is no thermal time. */
  @Test
  void givesCropsWithoutThermalTimeTheirDaysAtTwentyDegrees() {
    assertThat(crop("pea shoots").germination().daysAt(20).orElseThrow())
        .isCloseTo(6, within(1e-9));
    assertThat(crop("lamb's lettuce").germination().daysAt(20).orElseThrow())
        .isCloseTo(9, within(1e-9));
  }

  /**
   * Common practice: lettuce seed shows in about 7 to 15 days at 7 to 10 °C, sooner in a warmer
   * room; nothing in the catalogue takes more than a month at 20 °C.
   */
  @Test
  void agreesWithCommonPracticeOnEmergence() {
    Germination lettuce = crop("butterhead lettuce").germination();
    assertThat(lettuce.daysAt(7).orElseThrow()).isBetween(7.0, 15.0);
    assertThat(lettuce.daysAt(10).orElseThrow()).isBetween(7.0, 15.0);
    assertThat(lettuce.daysAt(20).orElseThrow()).isLessThan(7);
    assertThat(catalogue.all())
        .allSatisfy(
            crop -> assertThat(crop.germination().daysAt(20).orElseThrow()).isBetween(1.0, 31.0));
  }

  @Test
  void namesAreUnlikeEnoughToBeFoundAlone() {
    List<String> names = catalogue.all().stream().map(Crop::name).toList();
    assertThat(names).doesNotHaveDuplicates();
    assertThat(names).allSatisfy(name -> assertThat(crop(name).name()).isEqualTo(name));
  }
}
