package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sallet.crop.PlantLife.Picking;

/** Leaf by leaf, whole heads, trays, and how long it keeps. */
class HarvestTest {
  private static final LocalDate FIRST = SteadyPlace.FIRST;
  private static final Crop LOOSE_LEAF = crop("loose-leaf lettuce, green");

  private static Crop crop(String name) {
    return Catalogue.builtIn().find(name).orElseThrow();
  }

  private static PlantDay[] life(Crop crop, HarvestRule rule, double dliMol, int days) {
    Stay cell = new Stay(FIRST, new SteadyPlace(150, 16, 22, 20, 420).days(days), 16);
    PlaceDays bench = SteadyPlace.ofDli(dliMol, 16, 20, 16, 500).days(days);
    return LifeDays.of(
        crop.growth().orElseThrow(),
        rule,
        0.85,
        FIRST,
        List.of(cell, new Stay(FIRST.plusDays(11), bench, 225)),
        FIRST.plusDays(days));
  }

  /**
   * Weekly picks of 40 % from day 35 at 6 mol, 225 cm² and 500 ppm, as an independent program of
   * the same equations gives them: 17.7, 20.9, 23.2, 24.8, 25.9 g (scenario P02).
   */
  @Test
  void weeklyPicksAreThoseOfTheScenario() {
    PlantLife plant =
        PlantLife.of(
            LOOSE_LEAF.growth().orElseThrow(),
            life(LOOSE_LEAF, PlantRuns.NO_AGEING, 5.9904, 70),
            new Picking(35, 7, 0.4));
    List<Double> grams = List.of(17.7, 20.9, 23.2, 24.8, 25.9);
    for (int i = 0; i < grams.size(); i++) {
      assertThat(plant.picks().get(i).day()).isEqualTo(35 + 7 * i);
      assertThat(plant.picks().get(i).freshG()).isCloseTo(grams.get(i), within(0.05));
    }
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** At least 60 % of the leaf area and five leaves stay, whatever is asked for. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aPickNeverLeavesLessThanTheFloor(long seed) {
    Random random = new Random(seed);
    List<Crop> crops = Catalogue.builtIn().all().stream().filter(Crop::plannable).toList();
    Crop crop = crops.get(random.nextInt(crops.size()));
    Picking picking =
        new Picking(1 + random.nextInt(40), 1 + random.nextInt(14), 0.4 * random.nextDouble());
    PlantLife plant =
        PlantLife.of(
            crop.growth().orElseThrow(),
            life(crop, crop.harvest().orElseThrow(), 2 + 16 * random.nextDouble(), 90),
            picking);
    for (PlantLife.Pick pick : plant.picks()) {
      assertThat(pick.leavesLeft()).as("%s %s", crop.name(), pick).isGreaterThanOrEqualTo(5 - 1e-9);
      assertThat(pick.share()).isBetween(0.0, 0.4);
      assertThat(pick.freshG()).isGreaterThan(0);
    }
  }

  @Test
  void theFloorBindsOnPlantsOfFewLeaves() {
    assertThat(HarvestRule.largestPick(4)).isZero();
    assertThat(HarvestRule.largestPick(5)).isZero();
    assertThat(HarvestRule.largestPick(6.25)).isCloseTo(0.2, within(1e-12));
    assertThat(HarvestRule.largestPick(30)).isEqualTo(0.4);
  }

  /** Parts add up: what stands and what was taken make the leaf that was there. */
  @Test
  void countsLeavesOffAlongWithThePick() {
    PlantState plant = new PlantState(2, 0.3, 0.1, 800, 20);
    PlantState rest = plant.pickedLeaves(0.3);
    assertThat(rest.leaves()).isCloseTo(14, within(1e-12));
    assertThat(rest.leafCm2()).isCloseTo(560, within(1e-9));
    assertThat(rest.rootG()).isEqualTo(0.3);
  }

  /** Takes of a plant in failing light fall; one that falls below 60 % of the best ends it. */
  @Test
  void saysWhenANewPlantIsTheBetterUseOfThePot() {
    PlaceDays bright = SteadyPlace.ofDli(14, 16, 20, 16, 450).days(120);
    PlaceDays dim = SteadyPlace.ofDli(2, 16, 20, 16, 450).days(120);
    PlantDay[] days =
        LifeDays.of(
            LOOSE_LEAF.growth().orElseThrow(),
            PlantRuns.NO_AGEING,
            0.85,
            FIRST,
            List.of(new Stay(FIRST, bright, 225), new Stay(FIRST.plusDays(50), dim, 225)),
            FIRST.plusDays(110));
    PlantLife plant =
        PlantLife.of(LOOSE_LEAF.growth().orElseThrow(), days, new Picking(35, 7, 0.4));
    int renew = plant.renewDay().orElseThrow();
    assertThat(renew).isGreaterThan(50);
    double best =
        plant.picks().stream()
            .filter(pick -> pick.day() < renew)
            .mapToDouble(PlantLife.Pick::freshG)
            .max()
            .orElseThrow();
    assertThat(
            plant.picks().stream().filter(p -> p.day() == renew).findFirst().orElseThrow().freshG())
        .isLessThan(0.6 * best);
    assertThat(PlantLife.of(LOOSE_LEAF.growth().orElseThrow(), days, Picking.NONE).renewDay())
        .isEmpty();
  }

  @Test
  void aHeadHasAWindowFromHeavyEnoughToFullSize() {
    Crop butterhead = crop("butterhead lettuce");
    HarvestRule rule = butterhead.harvest().orElseThrow();
    PlantLife plant =
        PlantLife.of(butterhead.growth().orElseThrow(), life(butterhead, rule, 14, 70));
    HeadWindow window = HeadWindow.of(plant, rule, butterhead.guide().yieldG()).orElseThrow();
    assertThat(plant.freshG(window.firstDay())).isGreaterThanOrEqualTo(100);
    assertThat(plant.freshG(window.firstDay() - 1)).isLessThan(100);
    assertThat(plant.freshG(window.lastDay() - 1)).isLessThan(220);
    assertThat(window.lastDay()).isGreaterThan(window.firstDay());
    assertThat(
            HeadWindow.of(
                PlantLife.of(butterhead.growth().orElseThrow(), life(butterhead, rule, 1, 70)),
                rule,
                Optional.empty()))
        .isEmpty();
  }

  /** catalogue.csv: garden cress yields 20, 35 and 60 g by 100 cm² at 4, 8 and 12 mol. */
  @Test
  void traysYieldByAreaAndLight() {
    Crop cress = crop("garden cress");
    TrayYield tray = cress.guide().tray().orElseThrow();
    assertThat(tray).isEqualTo(new TrayYield(20, 35, 60));
    assertThat(tray.gramsAt(8, cress.guide())).hasValue(35);
    assertThat(tray.gramsAt(6, cress.guide())).hasValue(27.5);
    assertThat(tray.gramsAt(30, cress.guide())).hasValue(60);
    assertThat(tray.gramsAt(3, cress.guide())).isEmpty();
    assertThat(LOOSE_LEAF.guide().tray()).isEmpty();
  }

  /** Common practice: 1 to 2.5 kg of baby leaf by m²; loose-leaf lettuce aims at 12 mol. */
  @Test
  void babyLeafYieldsByAreaLikeATray() {
    CropGuide guide = LOOSE_LEAF.guide();
    assertThat(TrayYield.BABY_LEAF.gramsAt(6, guide)).hasValue(10);
    assertThat(TrayYield.BABY_LEAF.gramsAt(12, guide)).hasValue(17);
    assertThat(TrayYield.BABY_LEAF.gramsAt(17, guide)).hasValue(25);
    assertThat(TrayYield.BABY_LEAF.gramsAt(5, guide)).isEmpty();
  }

  /** Postharvest table, seen: loose-leaf lettuce 7 to 14 days at 5 °C; one day is the precision. */
  @Test
  void lettuceKeepsAboutAsLongAsThePostharvestTableSays() {
    Span at5 = FridgeLife.daysAt(LOOSE_LEAF, 5).orElseThrow();
    assertThat(at5.low()).isCloseTo(7, within(1.0));
    assertThat(at5.high()).isCloseTo(14, within(1.0));
    assertThat(FridgeLife.daysAt(LOOSE_LEAF, 1).orElseThrow().low()).isGreaterThan(at5.low());
    assertThat(FridgeLife.daysAt(LOOSE_LEAF, 15)).isEmpty();
    assertThat(FridgeLife.daysAt(crop("basil"), 4)).isEmpty();
    assertThat(FridgeLife.daysAt(crop("kale (leaf)"), 5)).contains(new Span(7, 10));
    assertThat(FridgeLife.daysAt(crop("kale (leaf)"), 9)).isEmpty();
  }

  /** USDA: two cups of raw leaf are one cup-equivalent of vegetables. */
  @Test
  void cupsAndEdibleSharesBecomeGrams() {
    assertThat(Servings.gramsOfCups(2)).isEqualTo(72);
    assertThat(Servings.harvestFor(70, crop("kale (leaf)").harvest().orElseThrow()))
        .isCloseTo(100, within(1e-9));
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> new Picking(30, 7, 1.2))
        .hasMessageStartingWith("a pick takes 0 to 40 % of the leaf area")
        .hasMessageEndingWith("was 120.0 %");
    assertThatThrownBy(() -> new Picking(0, 7, 0.2)).hasMessageContaining("were 0 and 7");
    assertThatThrownBy(() -> new TrayYield(30, 20, 40)).hasMessageContaining("must rise");
  }
}
