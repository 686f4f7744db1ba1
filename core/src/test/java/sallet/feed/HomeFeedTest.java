package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sallet.feed.home.FeedExplanation;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.FeedWish;
import sallet.feed.home.HomeFeed;
import sallet.feed.home.WaterBlend;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Label;
import sallet.feed.product.Product;
import sallet.feed.product.Salt;
import sallet.feed.product.Use;
import sallet.feed.recipe.Recipe;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.target.TargetSolution;
import sallet.household.FeedShelf;

/** A household's water, shelf and meter as the sheet uses them. */
final class HomeFeedTest {
  private static final FeedShelf USUAL = FeedShelf.usual();
  private static final FeedShelf.Water HARD =
      new FeedShelf.Water(
          "tap",
          Map.of(
              "calcium", "110 mg/L",
              "magnesium", "14 mg/L",
              "sodium", "38 mg/L",
              "chloride", "60 mg/L",
              "sulfate", "60 mg/L",
              "alkalinity", "14 °dH"),
          Optional.of(7.8),
          Optional.empty());
  private static final FeedShelf.Water RAIN =
      new FeedShelf.Water("rain", Map.of(), Optional.empty(), Optional.empty());

  private static FeedShelf shelf(
      FeedShelf.Water water, Optional<FeedShelf.Second> second, FeedShelf.Meter meter) {
    return new FeedShelf(
        USUAL.goal(),
        USUAL.scale(),
        USUAL.coldestTankC(),
        water,
        second,
        USUAL.shelf(),
        USUAL.acid(),
        meter,
        USUAL.running());
  }

  private static FeedWish wish(String reading, int weeks) {
    return new FeedWish(
        60, Optional.empty(), Optional.of(reading), Optional.of("pH 7.2"), weeks, 0.72);
  }

  private static FeedSheet blended(Optional<Double> share) {
    FeedShelf shelf = shelf(HARD, Optional.of(new FeedShelf.Second(RAIN, share)), USUAL.meter());
    return HomeFeed.sheet(shelf, wish("840 ppm", 2));
  }

  @Test
  void hardWaterIsBlendedWithTheLeastRainThatWillDo() {
    WaterBlend blend = blended(Optional.empty()).blend().orElseThrow();
    assertThat(blend.trials()).hasSize(21);
    WaterBlend.Trial first = blend.trials().get(0);
    WaterBlend.Trial last = blend.trials().get(20);
    assertThat(first.miss()).isGreaterThan(0.3);
    assertThat(last.miss()).isLessThan(0.05);
    for (WaterBlend.Trial trial : blend.trials()) {
      double mixed =
          (1 - trial.share()) * first.alkalinityMeqL() + trial.share() * last.alkalinityMeqL();
      assertThat(trial.alkalinityMeqL()).isCloseTo(mixed, within(1e-9));
      assertThat(trial.miss() > 0.05).isEqualTo(trial.share() < blend.share());
    }
    assertThat(blend.shareWithoutAcid().orElseThrow())
        .isCloseTo(
            1 - (1 - last.alkalinityMeqL()) / (first.alkalinityMeqL() - last.alkalinityMeqL()),
            within(0.05));
  }

  @Test
  void theHouseholdsOwnShareIsTaken() {
    FeedSheet sheet = blended(Optional.of(0.33));
    assertThat(sheet.blend().orElseThrow().share()).isEqualTo(0.33);
    assertThat(sheet.water().name()).isEqualTo("67 % tap water and 33 % rain water");
  }

  /** Hard water keeps a tenth of its alkalinity: pH settles too high and is mended next day. */
  @Test
  void whatSettlesTooHighIsMendedTheNextDay() {
    FeedShelf nitric =
        new FeedShelf(
            USUAL.goal(),
            USUAL.scale(),
            USUAL.coldestTankC(),
            HARD,
            Optional.empty(),
            USUAL.shelf(),
            new FeedShelf.Acid("nitric acid", 3, Optional.empty()),
            USUAL.meter(),
            USUAL.running());
    FeedSheet sheet = HomeFeed.sheet(nitric, wish("1 mS/cm", 0));
    assertThat(sheet.state().phLater()).isGreaterThan(6.3);
    assertThat(sheet.settling().orElseThrow().phLater()).isLessThan(sheet.state().phLater());
    assertThat(HomeFeed.sheet(USUAL, wish("1 mS/cm", 0)).settling()).isEmpty();
  }

  /**
   * 640 ppm on the 0.5 scale are 1.28 mS/cm at 20 °C, by 2 % a degree 1.4222 at 25 °C; two batches
   * at +4 % against a prior of 5 % and batches of 3 %: times 1.04^(w), w the batches' weight.
   */
  @Test
  void aReadingIsUnderstoodByTheHouseholdsOwnMeter() {
    double read = 1.3 / 1.04;
    FeedShelf.Fresh fresh = new FeedShelf.Fresh("1.3 mS/cm", "%.9f mS/cm at 25 °C".formatted(read));
    FeedShelf.Meter meter =
        new FeedShelf.Meter(
            Optional.of("0.5"),
            20,
            Optional.of(new FeedShelf.Standard("0.01 mol/kg", 25, "1.27 mS/cm")),
            List.of(fresh, fresh));
    FeedSheet sheet = HomeFeed.sheet(shelf(RAIN, Optional.empty(), meter), wish("640 ppm", 0));
    double weight = 2 / 0.0009 / (2 / 0.0009 + 1 / 0.0025);
    double factor = Math.pow(1.04, weight);
    assertThat(sheet.running().readings())
        .singleElement()
        .satisfies(
            r -> assertThat(r.meaning().msCm()).isCloseTo(1.28 / 0.9 * factor, within(1e-6)));
    assertThat(sheet.state().meterShowsMsCm())
        .isCloseTo(sheet.state().ecMsCm() * 0.9 / factor, within(1e-9));
    assertThat(sheet.notes())
        .anyMatch(n -> n.contains("learned from 2 fresh solutions"))
        .anyMatch(n -> n.contains("multiply its readings by 1.110"));
  }

  @Test
  void aReadingFarFromWhatWasComputedTeachesNothing() {
    FeedShelf.Meter meter =
        new FeedShelf.Meter(
            Optional.empty(),
            25,
            Optional.empty(),
            List.of(new FeedShelf.Fresh("1.3 mS/cm", "2.6 mS/cm")));
    assertThatThrownBy(
            () -> HomeFeed.sheet(shelf(RAIN, Optional.empty(), meter), wish("1 mS/cm", 0)))
        .isInstanceOf(FeedFault.class)
        .hasMessageContaining("off by more than half");
  }

  @Test
  void everyPathOfTheSheetIsExplainedWithFiniteNumbersAndAReason() {
    FeedSheet sheet = blended(Optional.empty());
    assertThat(FeedExplanation.paths(sheet)).hasSizeGreaterThan(40);
    for (String path : FeedExplanation.paths(sheet)) {
      assertThat(FeedExplanation.of(sheet, path)).as(path).isNotEmpty();
      assertThat(FeedExplanation.of(sheet, path))
          .allSatisfy(s -> assertThat(s.value()).as(path + s.name()).isFinite())
          .allSatisfy(s -> assertThat(s.how() + s.source()).as(path + s.name()).isNotBlank());
    }
    assertThatThrownBy(() -> FeedExplanation.of(sheet, "doses[99].amount"))
        .isInstanceOf(FeedFault.class)
        .hasMessageContaining("solution.ecMsCm");
  }

  private static FeedShelf with(List<FeedShelf.Item> items, List<FeedShelf.Seen> seen) {
    return new FeedShelf(
        USUAL.goal(),
        USUAL.scale(),
        USUAL.coldestTankC(),
        USUAL.water(),
        Optional.empty(),
        items,
        USUAL.acid(),
        USUAL.meter(),
        new FeedShelf.Running("lettuce", Optional.of(1.5), 0, "water", seen));
  }

  private static FeedShelf.Item item(String salt, double pricePerKg) {
    return new FeedShelf.Item(
        Optional.of(salt), Optional.empty(), Optional.empty(), 1, Optional.empty(), pricePerKg);
  }

  private static FeedWish correcting(String text) {
    return new FeedWish(60, Optional.empty(), Optional.empty(), Optional.of(text), 0, 0.72);
  }

  @Test
  void theSaltsCostWhatTheirKilogramsCost() {
    FeedShelf shelf =
        with(
            List.of(item("can4", 5), item("kno3", 8), item("mgso4", 0), item("mkp", 0)), List.of());
    FeedSheet sheet = HomeFeed.sheet(shelf, wish("1 mS/cm", 0));
    double expected = 0;
    for (Recipe.Dose dose : sheet.main().doses()) {
      double price =
          dose.product().id().equals("can4") ? 5 : dose.product().id().equals("kno3") ? 8 : 0;
      expected += dose.amount() * price / 1000;
    }
    assertThat(sheet.cost().orElseThrow().amount()).isCloseTo(expected, within(1e-9)).isPositive();
    assertThat(sheet.cost().orElseThrow().unpriced()).hasSize(2);
    assertThat(HomeFeed.sheet(USUAL, wish("1 mS/cm", 0)).cost()).isEmpty();
  }

  /** Of salts or of stock, a low reservoir gets back to the recipe: 80 % of it and a fifth more. */
  @Test
  void aWeakReservoirIsMendedBySaltsAsWellAsByStock() {
    FeedSheet plain = HomeFeed.sheet(USUAL, wish("1 mS/cm", 0));
    Composition weak = plain.perLitre().times(0.8);
    double ec = Conductivity.msCm25(weak, Carbon.OPEN);
    FeedSheet.Correction correction =
        HomeFeed.sheet(USUAL, correcting("EC %.4f mS/cm".formatted(ec)))
            .running()
            .correction()
            .orElseThrow();
    Composition mended = weak;
    for (Recipe.Dose dose : correction.salts()) {
      mended = mended.plus(dose.product().perUnit().times(dose.amount() / 60));
    }
    assertThat(correction.salts()).hasSize(4);
    assertThat(Conductivity.msCm25(mended, Carbon.OPEN))
        .isCloseTo(plain.state().ecMsCm(), within(0.02 * plain.state().ecMsCm()));
    assertThat(correction.traceMl()).isCloseTo(0.2 * 60, within(0.5));
    assertThat(correction.strength().orElseThrow().stockMl())
        .isCloseTo(1000 * 60 * 0.2 / 99, within(5.0));
  }

  @Test
  void anAcidIsNoBagToMixFrom() {
    for (String salt : List.of("HNO3", "koh", "NaCl")) {
      FeedShelf shelf = with(List.of(item("kno3", 0), item(salt, 0)), List.of());
      assertThatThrownBy(() -> HomeFeed.sheet(shelf, wish("1 mS/cm", 0)))
          .isInstanceOf(FeedFault.class)
          .hasMessageContaining("nothing to mix a recipe from");
    }
  }

  /** By hand: equal acid in both; densities at 20 °C of 5 % (from memory) and 10 % (handbook). */
  @Test
  void aThinAcidIsToldWithHowToMakeIt() {
    FeedSheet.Correction high =
        HomeFeed.sheet(USUAL, correcting("pH 7.2")).running().correction().orElseThrow();
    double millilitres = high.dose().orElseThrow().millilitres();
    double ofBottle = millilitres * 5 * 1.0254 / (10 * 1.0531);
    assertThat(high.dose().orElseThrow().notes())
        .anyMatch(
            n ->
                n.startsWith(
                    "For phosphoric acid of 5 %%: pour %.1f mL of that of 10 %%"
                        .formatted(ofBottle)));
    FeedSheet.Correction low =
        HomeFeed.sheet(USUAL, correcting("pH 4.6")).running().correction().orElseThrow();
    assertThat(low.dose().orElseThrow().notes()).anyMatch(n -> n.contains("dissolve 20 g"));
  }

  @Test
  void concentrationsMayBeWantedOtherwise() {
    TargetSolution raft = TargetSolution.find("lettuce-raft").orElseThrow();
    TargetSolution mine =
        raft.changed(Map.of(Nutrient.NITROGEN, 100.0, Nutrient.AMMONIUM_NITROGEN, 10.0));
    assertThat(mine.nitrogenMgL()).isEqualTo(100);
    assertThat(mine.mgL().get(Nutrient.NITRATE_NITROGEN)).isEqualTo(90);
    assertThat(mine.mgL().get(Nutrient.CALCIUM)).isEqualTo(raft.mgL().get(Nutrient.CALCIUM));
    assertThatThrownBy(
            () -> raft.changed(Map.of(Nutrient.NITROGEN, 5.0, Nutrient.AMMONIUM_NITROGEN, 10.0)))
        .isInstanceOf(FeedFault.class);
  }

  /** By hand with IUPAC weights: 24.305 / (120.36 + n × 18.015). */
  @ParameterizedTest
  @CsvSource({"MgSO4, 20.19", "MgSO4.H2O, 17.56", "MgSO4·4H2O, 12.63"})
  void aSaltWithOtherWaterIsKnownByItsFormula(String formula, double percentMagnesium) {
    Salt salt = Salt.withWaterOf(formula).orElseThrow();
    assertThat(salt.product(1).perUnit().mg(Nutrient.MAGNESIUM) / 10)
        .isCloseTo(percentMagnesium, within(0.01));
    assertThat(Salt.withWaterOf("NaCN.H2O")).isEmpty();
  }

  /** 14.4 and 1.1 % of nitrogen are 10.28 and 0.785 mmol/g by the weight of nitrogen. */
  @Test
  void aLabelTellsTheFormsOfNitrogenAndWhatHoldsTheIron() {
    Product nitrate = Label.grade("a", "15.5-0-0 +14.4 NO3-N +1.1 NH4-N +19 Ca").product(Use.MACRO);
    assertThat(nitrate.perUnit().mmol(Ion.NITRATE)).isCloseTo(144 / 14.007, within(1e-6));
    assertThat(nitrate.perUnit().mmol(Ion.AMMONIUM)).isCloseTo(11 / 14.007, within(1e-6));
    Label iron = Label.grade("b", "0-0-0 +6 Fe EDDHA");
    assertThat(iron.isTrace()).isTrue();
    assertThat(iron.product(Use.TRACE).perUnit().mmol(Ion.IRON_EDDHA))
        .isCloseTo(60 / 55.845, within(1e-6));
    Product bottle = Label.grade("c", "4-2-6 w/v").product(Use.MACRO);
    assertThat(bottle.measure()).isEqualTo(Product.Measure.MILLILITRE);
    assertThat(bottle.perUnit().mg(Nutrient.POTASSIUM)).isCloseTo(60 * 0.8301, within(0.01));
    assertThatThrownBy(() -> Label.grade("d", "5-0-0 +1 Mg +2 Mg")).isInstanceOf(FeedFault.class);
  }
}
