package sallet.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantLife;
import sallet.crop.SeedLot;
import sallet.crop.Stay;
import sallet.crop.forecast.Spread;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.journal.Journal;
import sallet.journal.Where;

/** What a journal comes to. */
class StandingTest {
  private static final Catalogue CATALOGUE = Catalogue.builtIn();
  private static final GrowingPlaces PLACES = SteadyPlaces.places();
  private static final Crop MIZUNA = CATALOGUE.find("mizuna").orElseThrow();
  private static final String A = "mizuna-1";
  private static final int UP = 5;
  private static final int NURSERY = 8;
  private static final int BENCH = 20;

  private static Standing standing(Journal journal, int today) {
    return Standing.of(journal, CATALOGUE, PLACES, Rows.date(today));
  }

  /** Five cells, four up, three in the nursery, two of them in pots. */
  private static Rows batch() {
    return new Rows()
        .add(Rows.date(0), Event.SOW, A, 5, new Where.Cells(5), -1, -1)
        .day(UP, Event.EMERGE, A, 4, "")
        .day(NURSERY, Event.MOVE, A, 3, "nursery")
        .day(BENCH, Event.MOVE, A, 2, "A1+B1");
  }

  private static StandingGroup pot(Standing standing, String pot) {
    return standing.batches().stream()
        .flatMap(batch -> batch.groups().stream())
        .filter(group -> group.pots().contains(pot))
        .findFirst()
        .orElseThrow();
  }

  /** The plant of a pot of {@link #batch()} on the growth model itself, never picked. */
  private static PlantLife life(String pot, double vigour, int until) {
    PlantDay[] days =
        LifeDays.of(
            MIZUNA.growth().orElseThrow(),
            MIZUNA.harvest().orElseThrow(),
            vigour,
            Rows.date(UP),
            List.of(
                new Stay(Rows.date(0), PLACES.nursery(), PLACES.cellCm2()),
                new Stay(Rows.date(NURSERY), PLACES.nursery(), PLACES.placeCm2()),
                new Stay(Rows.date(BENCH), PLACES.pot(pot).days(), PLACES.pot(pot).siteCm2())),
            Rows.date(until + 1));
    return PlantLife.of(MIZUNA.growth().orElseThrow(), days);
  }

  @Test
  void withoutAJournalTheBenchIsEmptyAndNothingIsLearned() {
    Standing standing = standing(Journal.EMPTY, 30);
    assertThat(standing.batches()).isEmpty();
    assertThat(standing.remarks()).isEmpty();
    assertThat(standing.contradicts()).isFalse();
    LearnedFactor factor = standing.learned().growthOf(MIZUNA);
    assertThat(factor.median()).isCloseTo(Spread.PRIOR.vigour(), within(1e-12));
    assertThat(factor.spread()).isCloseTo(Math.sqrt(Math.log1p(0.04)), within(1e-12));
    assertThat(factor.readings()).isZero();
    assertThat(standing.learned().pace().median()).isCloseTo(1, within(1e-9));
    assertThat(standing.learned().seedOf(MIZUNA).now())
        .isEqualTo(SeedLot.expecting(MIZUNA.usableShare()));
    assertThat(standing.learned().margin()).isBetween(Learned.LEAST_MARGIN, Learned.USUAL_MARGIN);
  }

  @Test
  void aBatchHalfMovedStandsInGroups() {
    StandingBatch batch = standing(batch().journal(), NURSERY + 2).batches().get(0);
    assertThat(batch.groups())
        .extracting(StandingGroup::stage)
        .containsExactly(Stage.NURSERY, Stage.IN_CELL);
    assertThat(batch.groups()).extracting(StandingGroup::count).containsExactly(3, 1);
    assertThat(batch.emergence()).isEqualTo(Rows.date(UP));
    batch = standing(batch().journal(), BENCH).batches().get(0);
    assertThat(batch.groups())
        .extracting(StandingGroup::stage)
        .containsExactly(Stage.BENCH, Stage.BENCH, Stage.NURSERY);
    assertThat(batch.plants()).isEqualTo(3);
  }

  /** Plants of the bench are told with their past, those that are gone too. */
  @Test
  void livesOfTheBenchAreToldGoneOnesToo() {
    Rows rows = batch().grams(40, Event.LIFT, A, "B1", 80);
    Standing standing = standing(rows.journal(), 45);
    assertThat(standing.lives()).extracting(BenchLife::pot).containsExactlyInAnyOrder("A1", "B1");
    for (BenchLife life : standing.lives()) {
      boolean lifted = life.pot().equals("B1");
      assertThat(life.onBench()).isEqualTo(Rows.date(BENCH));
      assertThat(life.gone()).isEqualTo(lifted ? Optional.of(Rows.date(40)) : Optional.empty());
      assertThat(life.evenings()).hasSize((lifted ? 40 : 45) - UP + 1);
    }
    BenchLife stands =
        standing.lives().stream().filter(l -> l.pot().equals("A1")).findFirst().orElseThrow();
    assertThat(stands.evenings().get(45 - UP)).isEqualTo(pot(standing, "A1").plant());
  }

  @Test
  void unpickedPlantsStandAsTheGrowthModelHasThem() {
    Standing standing = standing(batch().journal(), 45);
    for (String pot : List.of("A1", "B1")) {
      PlantLife life = life(pot, Spread.PRIOR.vigour(), 45);
      assertThat(pot(standing, pot).freshG().median())
          .isCloseTo(life.freshG(life.days()), within(1e-9));
    }
    assertThat(pot(standing, "A1").freshG().median())
        .isGreaterThan(pot(standing, "B1").freshG().median());
  }

  @Test
  void aPickTakesItsGramsAndLeavesTheRest() {
    Rows rows = batch().grams(40, Event.PICK, A, "A1", 5);
    double before = pot(standing(batch().journal(), 40), "A1").freshG().median();
    StandingGroup after = pot(standing(rows.journal(), 40), "A1");
    double edible = MIZUNA.harvest().orElseThrow().edibleShare();
    assertThat(after.freshG().median()).isCloseTo(before - 5 / edible, within(1e-9));
    assertThat(after.picks()).hasSize(1);
    assertThat(after.lastPick()).contains(Rows.date(40));
    assertThat(after.picks().get(0).share()).isCloseTo(5 / edible / before, within(1e-9));
    assertThat(pot(standing(rows.journal(), 40), "B1").picks()).isEmpty();
  }

  @Test
  void aPickOfMoreThanAPlantWasThoughtToHaveMakesItLarger() {
    double thought = pot(standing(batch().journal(), 40), "A1").freshG().median();
    Standing standing = standing(batch().grams(40, Event.PICK, A, "A1", thought).journal(), 40);
    StandingGroup after = pot(standing, "A1");
    assertThat(after.freshG().median()).isPositive();
    assertThat(after.picks().get(0).share()).isLessThanOrEqualTo(GrowingPlant.MOST_TAKEN);
    assertThat(standing.learned().growthOf(MIZUNA).median()).isGreaterThan(Spread.PRIOR.vigour());
  }

  @Test
  void theWeighedPlantStandsNearlyAtItsWeightAndItsBandIsNarrow() {
    double thought = pot(standing(batch().journal(), 45), "A1").freshG().median();
    double weighed = 1.3 * thought;
    Standing standing = standing(batch().grams(45, Event.WEIGH, A, "A1", weighed).journal(), 45);
    StandingGroup plant = pot(standing, "A1");
    assertThat(plant.freshG().median()).isBetween(1.25 * thought, weighed);
    assertThat(plant.spread()).isLessThan(0.06);
    StandingGroup other = pot(standing, "B1");
    assertThat(other.freshG().median())
        .isGreaterThan(pot(standing(batch().journal(), 45), "B1").freshG().median());
    assertThat(other.spread()).isGreaterThan(2 * plant.spread());
  }

  /**
   * One reading of a sum of independent normals shares its news by their variances (Gelman and
   * others 2013, Bayesian Data Analysis, section 2.5): the crop's factor keeps C - C²/S, S being
   * the plant's variance and the noise of the reading over the elasticity.
   */
  @Test
  void oneWeighingIsTheTextbookUpdate() {
    double thought = life("A1", Spread.PRIOR.vigour(), 45).freshG(45 - UP + 1);
    Standing standing =
        standing(batch().grams(45, Event.WEIGH, A, "A1", 1.2 * thought).journal(), 45);
    StandingGroup plant = pot(standing, "A1");
    double up = life("A1", plant.vigour() * Math.exp(0.01), 45).freshG(45 - UP + 1);
    double down = life("A1", plant.vigour() * Math.exp(-0.01), 45).freshG(45 - UP + 1);
    double elasticity = Math.log(up / down) / 0.02;
    double crop = Math.log1p(0.2 * 0.2);
    double all = crop + 0.08 * 0.08 + Math.log1p(0.1 * 0.1);
    double sum = all + 0.1 * 0.1 / (elasticity * elasticity);
    LearnedFactor learned = standing.learned().growthOf(MIZUNA);
    assertThat(learned.spread()).isCloseTo(Math.sqrt(crop - crop * crop / sum), within(2e-3));
    double cropShift = Math.log(learned.median() / Spread.PRIOR.vigour());
    double plantShift = Math.log(plant.vigour() / Spread.PRIOR.vigour());
    assertThat(cropShift / plantShift).isCloseTo(crop / all, within(1e-6));
    assertThat(learned.readings()).isEqualTo(1);
    assertThat(standing.learned().bench().median())
        .isBetween(Spread.PRIOR.vigour(), learned.median());
  }

  @Test
  void aCrownWiderThanThoughtRaisesTheFactor() {
    Rows rows = batch().add(Rows.date(40), Event.WIDTH, A, 0, Rows.where("A1"), -1, 30);
    Learned learned = standing(rows.journal(), 40).learned();
    assertThat(learned.growthOf(MIZUNA).median()).isGreaterThan(Spread.PRIOR.vigour());
    assertThat(learned.growthOf(MIZUNA).spread())
        .isGreaterThan(
            standing(batch().grams(40, Event.WEIGH, A, "A1", 20).journal(), 40)
                .learned()
                .growthOf(MIZUNA)
                .spread());
  }

  @Test
  void aWeightThatCannotBeIsLeftOutAndTold() {
    Standing standing = standing(batch().grams(45, Event.WEIGH, A, "A1", 5000).journal(), 45);
    assertThat(standing.remarks()).hasSize(1);
    assertThat(standing.remarks().get(0).sentence()).contains("is more than", "left out");
    assertThat(standing.learned().growthOf(MIZUNA).readings()).isZero();
  }

  /** One plant far off is a slip of the pen; two plants of a crop far off alike are a fast crop. */
  @Test
  void aWeightBeyondBeliefIsBelievedOnceAnotherPlantConfirmsIt() {
    double alone = life("A1", 3.5 * Spread.PRIOR.vigour(), 45).freshG(45 - UP + 1);
    double other = life("B1", 3.5 * Spread.PRIOR.vigour(), 45).freshG(45 - UP + 1);
    Rows rows = batch().grams(45, Event.WEIGH, A, "A1", alone);
    assertThat(standing(rows.journal(), 45).learned().growthOf(MIZUNA).readings()).isZero();
    rows = rows.grams(45, Event.WEIGH, A, "A1", alone);
    assertThat(standing(rows.journal(), 45).remarks()).as("the same plant twice").hasSize(2);
    Standing confirmed = standing(rows.grams(45, Event.WEIGH, A, "B1", other).journal(), 45);
    assertThat(confirmed.remarks()).isEmpty();
    assertThat(confirmed.learned().growthOf(MIZUNA).readings()).isEqualTo(3);
    assertThat(confirmed.learned().growthOf(MIZUNA).median())
        .isGreaterThan(1.5 * Spread.PRIOR.vigour());
    Rows small =
        batch().grams(45, Event.WEIGH, A, "A1", alone).grams(45, Event.WEIGH, A, "B1", 0.1);
    assertThat(standing(small.journal(), 45).remarks()).as("one large, one small").hasSize(2);
    Rows slip =
        batch().grams(45, Event.WEIGH, A, "A1", alone).grams(45, Event.WEIGH, A, "B1", 5000);
    assertThat(standing(slip.journal(), 45).remarks()).as("a slip confirms nothing").hasSize(2);
  }

  @Test
  void noNumberOfPlantsConfirmsAWeightThatCannotBe() {
    Rows rows = batch().grams(45, Event.WEIGH, A, "A1", 5000).grams(45, Event.WEIGH, A, "B1", 5000);
    assertThat(standing(rows.journal(), 45).remarks()).hasSize(2);
  }

  @Test
  void cellsThatGaveAPlantAreCounted() {
    LearnedShare share = standing(batch().journal(), 30).learned().seedOf(MIZUNA);
    assertThat(share.now()).isEqualTo(SeedLot.expecting(MIZUNA.usableShare()).seen(4, 5));
    assertThat(share.came()).isEqualTo(4);
  }

  @Test
  void seedNotYetUpIsExpectedAndASlowSowingSlowsTheNext() {
    Journal sown =
        new Rows().add(Rows.date(0), Event.SOW, A, 5, new Where.Cells(5), -1, -1).journal();
    StandingBatch batch = standing(sown, 1).batches().get(0);
    StandingGroup cells = batch.groups().get(0);
    assertThat(cells.stage()).isEqualTo(Stage.GERMINATING);
    assertThat(cells.plants()).isCloseTo(5 * MIZUNA.usableShare(), within(0.01));
    assertThat(cells.freshG().high()).isZero();
    int usual = (int) (batch.emergence().toEpochDay() - batch.sown().toEpochDay());
    Rows slow =
        new Rows()
            .add(Rows.date(0), Event.SOW, A, 5, new Where.Cells(5), -1, -1)
            .day(usual + 3, Event.EMERGE, A, 4, "")
            .add(Rows.date(20), Event.SOW, "mizuna-2", 5, new Where.Cells(5), -1, -1);
    Standing later = standing(slow.journal(), 21);
    assertThat(later.learned().pace().median()).isLessThan(0.85);
    assertThat(later.batches().get(1).emergence()).isAfter(Rows.date(20 + usual));
  }

  @TestFactory
  Stream<DynamicTest> contradictionsAreClearSentences() {
    return Stream.of(
        told(
            "more moved than sown",
            r -> r.day(9, Event.MOVE, A, 3, "nursery"),
            "3 are moved to the nursery, but 2 of the 5 cells of mizuna-1 are left"),
        told(
            "picked before moved",
            r -> r.grams(15, Event.PICK, A, "A2", 5),
            "no plant of mizuna-1 stands in A2 then"),
        told(
            "unknown batch",
            r -> r.day(9, Event.MOVE, "rocket-9", 1, "nursery"),
            "nothing was sown under the name rocket-9 by then; batches so far: mizuna-1"),
        told(
            "before sowing",
            r -> r.day(-1, Event.LOST, A, 1, ""),
            "nothing was sown under the name mizuna-1 by then; write its sow row first"),
        told(
            "sown twice",
            r -> r.day(30, Event.SOW, A, 2, ""),
            "mizuna-1 was sown already on 2027-03-01; give every sowing a name of its own"),
        told(
            "pot taken",
            r -> r.day(22, Event.MOVE, A, 1, "A1"),
            "A1 holds a plant of mizuna-1 already; write what became of it (lift or lost)"),
        told(
            "pots and plants differ",
            r -> r.day(22, Event.MOVE, A, 2, "A2"),
            "1 pot is named for 2 plants; name one pot for each"),
        told(
            "too many come up",
            r -> r.day(6, Event.EMERGE, A, 4, ""),
            "8 have come up of 5 seeds of mizuna-1; count only what is new"),
        told(
            "too many picked",
            r -> r.day(40, Event.LIFT, A, 5, ""),
            "5 plants of mizuna-1, but 2 stand there; name one pot for each or leave the count"
                + " out"));
  }

  private static DynamicTest told(String name, Consumer<Rows> row, String sentence) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          Rows rows = batch();
          row.accept(rows);
          Standing standing = standing(rows.journal(), 60);
          assertThat(standing.contradicts()).isTrue();
          assertThat(standing.remarks()).extracting(Remark::sentence).contains(sentence);
        });
  }

  @Test
  void rowsOfLaterDaysAreNotCounted() {
    Standing standing = standing(batch().journal(), NURSERY - 1);
    assertThat(standing.batches().get(0).groups()).hasSize(2);
    assertThat(standing.remarks())
        .containsExactly(
            new Remark(4, false, "2 rows from here on are dated after 2027-03-08 and not counted"));
  }

  @Test
  void seedlingsMoreThanCountedAreBelieved() {
    Standing standing =
        standing(batch().day(NURSERY, Event.MOVE, A, 2, "nursery").journal(), BENCH);
    assertThat(standing.contradicts()).isFalse();
    assertThat(standing.remarks()).hasSize(1);
    assertThat(standing.batches().get(0).plants()).isEqualTo(5);
  }

  @Test
  void spareSeedlingsAreGoneAWeekAfterTheFirstMove() {
    assertThat(standing(batch().journal(), NURSERY + 7).batches().get(0).plants()).isEqualTo(4);
    assertThat(standing(batch().journal(), NURSERY + 8).batches().get(0).plants()).isEqualTo(3);
  }

  @Test
  void liftedAndLostPlantsStandNoMoreAndTheirReadingStays() {
    Rows rows =
        batch()
            .day(30, Event.LOST, A, 1, "nursery")
            .grams(45, Event.LIFT, A, "A1", 60)
            .day(46, Event.LOST, A, 0, "B1");
    Standing standing = standing(rows.journal(), 50);
    assertThat(standing.batches()).isEmpty();
    assertThat(standing.learned().growthOf(MIZUNA).readings()).isEqualTo(1);
  }

  @Test
  void cropsWithoutAModelOnlyTakeTheirPots() {
    Rows rows =
        new Rows()
            .add(Rows.date(0), Event.SOW, "dwarf tomato-1", 1, new Where.Cells(1), -1, -1)
            .day(20, Event.MOVE, "dwarf tomato-1", 1, "A4");
    Standing standing = standing(rows.journal(), 30);
    assertThat(standing.batches()).isEmpty();
    assertThat(standing.otherPots()).containsExactly("A4");
    assertThat(standing.contradicts()).isFalse();
  }

  /** Rows of one day may be written batch by batch in any order. */
  @Test
  void theOrderOfBatchesWithinADayDoesNotMatter() {
    List<Crop> crops =
        HiddenTruth.crops().stream().map(name -> CATALOGUE.find(name).orElseThrow()).toList();
    for (int seed = 0; seed < 20; seed++) {
      List<Entry> rows = new HiddenTruth(seed, 0, crops).journal().entries();
      Standing asWritten = Standing.of(new Journal(rows), CATALOGUE, PLACES, HiddenTruth.today());
      List<String> batches = new ArrayList<>(rows.stream().map(Entry::batch).distinct().toList());
      Collections.shuffle(batches, new Random(seed));
      List<Entry> shuffled =
          batches.stream()
              .flatMap(batch -> rows.stream().filter(row -> row.batch().equals(batch)))
              .toList();
      Standing other = Standing.of(new Journal(shuffled), CATALOGUE, PLACES, HiddenTruth.today());
      assertThat(summary(other)).as("seed %d", seed).isEqualTo(summary(asWritten));
    }
  }

  private static String summary(Standing standing) {
    StringBuilder all = new StringBuilder();
    for (StandingBatch batch : standing.batches()) {
      batch.groups().forEach(g -> all.append(batch.batch() + g.pots() + g.plant() + g.freshG()));
    }
    return all + standing.learned().toString() + standing.remarks();
  }

  /** By hand: 1 + 1.5 (1 - r exp(-s/2)) for a regrowth of r and its spread s, from 1.05 to 1.3. */
  @Test
  void theMarginFallsAsRegrowthIsKnownAndRisesWhereItIsPoor() {
    assertThat(margin(1, 0.1)).isCloseTo(1.073, within(0.001));
    assertThat(margin(1, 0)).isEqualTo(1.05);
    assertThat(margin(1.1, 0)).isEqualTo(1.05);
    assertThat(margin(0.9, 0)).isCloseTo(1.15, within(1e-12));
    assertThat(margin(0.9, 0.05)).isGreaterThan(margin(0.9, 0));
    assertThat(margin(0.8, 0)).isCloseTo(1.3, within(1e-12));
    assertThat(margin(0.7, 0)).isEqualTo(1.3);
  }

  private static double margin(double regrowth, double spread) {
    Learned learned = standing(Journal.EMPTY, 1).learned();
    return new Learned(
            learned.bench(),
            learned.growth(),
            new LearnedFactor(1, 0.1, 0, regrowth, spread),
            learned.pace(),
            learned.seed())
        .margin();
  }

  @Test
  void theFirstDayIsThatOfTheFirstBatch() {
    LocalDate today = Rows.date(30);
    assertThat(Standing.firstDay(batch().journal(), today)).isEqualTo(Rows.date(0));
    assertThat(Optional.of(Standing.firstDay(Journal.EMPTY, today))).contains(today);
  }
}
