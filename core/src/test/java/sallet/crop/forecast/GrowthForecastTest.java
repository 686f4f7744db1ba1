package sallet.crop.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.crop.Catalogue;
import sallet.crop.Concern;
import sallet.crop.Crop;
import sallet.crop.Emergence;
import sallet.crop.LifeDays;
import sallet.crop.PlaceDays;
import sallet.crop.PlantLife;
import sallet.crop.PlantParameters;
import sallet.crop.Stay;
import sallet.crop.risk.Risk;

/** Days, grams and their spread. */
class GrowthForecastTest {
  private static final LocalDate SOWN = SteadyRoom.FIRST;
  private static final Crop LOOSE_LEAF = crop("loose-leaf lettuce, green");

  private static Crop crop(String name) {
    return Catalogue.builtIn().find(name).orElseThrow();
  }

  private static GrowthForecast.Course course(String name, SteadyRoom room) {
    return GrowthForecast.of(crop(name), SOWN, room.room(400, 4), Spread.PRIOR)
        .course()
        .orElseThrow();
  }

  /** Quantiles by Hipparchus, type 7, the rule of statistics programs. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void bandsAreTheQuantilesOfTheReferenceLibrary(long seed) {
    double[] values = new Random(seed).doubles(1 + seed * 37).map(Math::exp).toArray();
    Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
    Band band = Band.of(values);
    assertThat(band.low()).isCloseTo(percentile.evaluate(values, 10), within(1e-12));
    assertThat(band.median()).isCloseTo(percentile.evaluate(values, 50), within(1e-12));
    assertThat(band.high()).isCloseTo(percentile.evaluate(values, 90), within(1e-12));
  }

  @Test
  void whatIsNeverReachedStaysInfinite() {
    double never = Double.POSITIVE_INFINITY;
    Band band = Band.of(new double[] {30, 40, never, never, never});
    assertThat(band.low()).isCloseTo(34, within(1e-12));
    assertThat(band.median()).isInfinite();
    assertThatThrownBy(() -> Band.of(new double[0])).hasMessageContaining("at least one value");
  }

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void orderOfPlantsChangesNothing(long seed) {
    GrowthEnsemble plants =
        GrowthEnsemble.of(
            new GrowthEnsemble.Sowing(LOOSE_LEAF, SOWN, Emergence.of(LOOSE_LEAF, 20), 60, 30, 0.3),
            SteadyRoom.GOOD.room(225, 3),
            new Spread(0.85, 0.2, 0.1, 50, seed));
    List<GrowthEnsemble.Member> shuffled = new ArrayList<>(plants.members());
    Collections.shuffle(shuffled, new Random(seed));
    for (int day : List.of(20, 40, 60)) {
      double[] masses = shuffled.stream().mapToDouble(m -> m.freshG(day)).toArray();
      assertThat(Band.of(masses)).isEqualTo(plants.freshG(day));
    }
  }

  @Test
  void theSameSeedGivesTheSameForecast() {
    assertThat(course("mizuna", SteadyRoom.GOOD)).isEqualTo(course("mizuna", SteadyRoom.GOOD));
  }

  /** A member's luck depends on its number alone: more plants do not change those before. */
  @Test
  void morePlantsLeaveTheFirstOnesAsTheyAre() {
    GrowthEnsemble.Sowing sowing =
        new GrowthEnsemble.Sowing(LOOSE_LEAF, SOWN, Emergence.of(LOOSE_LEAF, 20), 40, 0, 0);
    GrowingRoom room = SteadyRoom.GOOD.room(225, 2);
    GrowthEnsemble few = GrowthEnsemble.of(sowing, room, new Spread(0.85, 0.2, 0.1, 5, 3));
    GrowthEnsemble many = GrowthEnsemble.of(sowing, room, new Spread(0.85, 0.2, 0.1, 50, 3));
    for (int i = 0; i < 5; i++) {
      assertThat(many.members().get(i).freshG(40)).isEqualTo(few.members().get(i).freshG(40));
    }
  }

  /** Mean 1 and variation 0.35 of the daily factor, correlated 0.3: what the page says. */
  @Test
  void skiesVaryAboutTheMeanOne() {
    double[] f = Skies.factors(200_000, new SplittableRandom(5));
    double mean = java.util.Arrays.stream(f).average().orElseThrow();
    double variance =
        java.util.Arrays.stream(f).map(x -> (x - mean) * (x - mean)).average().orElseThrow();
    double lagged = 0;
    for (int i = 1; i < f.length; i++) {
      lagged += (f[i] - mean) * (f[i - 1] - mean) / f.length;
    }
    assertThat(mean).isCloseTo(1, within(0.005));
    assertThat(Math.sqrt(variance)).isCloseTo(0.35, within(0.01));
    assertThat(lagged / variance).isCloseTo(0.3, within(0.01));
    assertThat(java.util.Arrays.stream(f).min().orElseThrow()).isGreaterThanOrEqualTo(0.2);
  }

  /** Other weather spreads the plants of a window sill, not those under a lamp alone. */
  @Test
  void onlyDaylightDependsOnTheWeather() {
    GrowingRoom lamp = SteadyRoom.GOOD.room(400, 5);
    GrowingRoom window = new SteadyRoom(12, 0, 21, 17, 20).room(400, 5);
    assertThat(lamp.skies())
        .allSatisfy(sky -> assertThat(sky.dliMol(9)).isCloseTo(12, within(1e-9)));
    assertThat(window.skies().stream().map(sky -> sky.dliMol(9)).distinct()).hasSize(5);
  }

  @Test
  void stagesComeInOrder() {
    for (Crop crop : Catalogue.builtIn().all()) {
      if (crop.plannable()) {
        GrowthForecast.Course course = course(crop.name(), SteadyRoom.GOOD);
        assertThat(course.emerged()).isAfter(SOWN);
        assertThat(course.outOfCell()).isAfter(course.emerged());
        assertThat(course.toBench()).isAfterOrEqualTo(course.outOfCell());
        assertThat(course.lastDay()).isAfter(course.toBench());
        assertThat(course.takes())
            .isNotEmpty()
            .allSatisfy(
                take -> assertThat(take.date()).isBetween(course.toBench(), course.lastDay()));
        assertThat(course.curve())
            .allSatisfy(
                day -> {
                  assertThat(day.freshG().low()).isLessThanOrEqualTo(day.freshG().median());
                  assertThat(day.freshG().median()).isLessThanOrEqualTo(day.freshG().high());
                });
      }
    }
  }

  /**
   * Common practice: in a winter room with a lamp added late first outer leaves come around day 50
   * and full plants around day 60 from sowing. Here: three weeks at a winter window (3 mol), then
   * 150 µmol for 16 h at 18 and 14 °C; first leaves are a plant of 30 g, a full one is of 80 g.
   */
  @Test
  void aWinterRoomTakesAboutAsLongAsGrowersSay() {
    PlaceDays window = new SteadyRoom(2, 0, 17, 13, 15).room(49, 1).bench();
    GrowingRoom lamp = new SteadyRoom(0, 8.64, 18, 14, 15).room(400, 1);
    int up = (int) Math.ceil(LOOSE_LEAF.germination().daysAt(15).orElseThrow());
    LocalDate emergence = SOWN.plusDays(up);
    PlantParameters p = LOOSE_LEAF.growth().orElseThrow();
    PlantLife plant =
        PlantLife.of(
            p,
            LifeDays.of(
                p,
                LOOSE_LEAF.harvest().orElseThrow(),
                0.85,
                emergence,
                List.of(
                    new Stay(emergence, window, 49),
                    new Stay(emergence.plusDays(28), lamp.bench(), 400)),
                emergence.plusDays(90)));
    assertThat(up + plant.daysTo(30).orElseThrow()).isBetween(43, 57);
    assertThat(up + plant.daysTo(80).orElseThrow()).isBetween(52, 68);
  }

  /** Common practice: two weeks between sowings are still plain to see at four to six weeks. */
  @Test
  void anAgeGapOfTwoWeeksIsPlainToSee() {
    GrowthEnsemble plants =
        GrowthEnsemble.of(
            new GrowthEnsemble.Sowing(LOOSE_LEAF, SOWN, Emergence.of(LOOSE_LEAF, 20), 60, 0, 0),
            SteadyRoom.GOOD.room(225, 2),
            Spread.PRIOR);
    for (int age = 28; age <= 42; age += 7) {
      assertThat(plants.freshG(age).median()).isGreaterThan(1.5 * plants.freshG(age - 14).median());
    }
  }

  /** A dimmer room gives no earlier harvest, and a cold shelf none at all. */
  @Test
  void dimAndColdRoomsAreSlower() {
    SteadyRoom dim = new SteadyRoom(0, 6, 21, 17, 20);
    assertThat(course("butterhead lettuce", dim).readyDays().median())
        .isGreaterThan(course("butterhead lettuce", SteadyRoom.GOOD).readyDays().median());
    GrowthForecast cold =
        GrowthForecast.of(
            crop("basil"), SOWN, new SteadyRoom(0, 12, 21, 17, 9).room(400, 1), Spread.PRIOR);
    assertThat(cold.course()).isEmpty();
    assertThat(cold.emergence().concern()).isEqualTo(Concern.ACT);
  }

  /**
   * catalogue.csv, common practice: loose-leaf from day 35, 80 to 250 g; butterhead 45 to 55 days.
   */
  @Test
  void aGoodRoomAgreesWithHandbooks() {
    assertThat(course("loose-leaf lettuce, green", SteadyRoom.GOOD).readyDays().median())
        .isBetween(25.0, 38.0);
    GrowthForecast.Course head = course("butterhead lettuce", SteadyRoom.GOOD);
    long days = ChronoUnit.DAYS.between(SOWN, head.takes().get(0).date());
    assertThat(days).isBetween(38L, 58L);
    assertThat(head.takes()).hasSize(1);
    assertThat(head.takes().get(0).lift()).isTrue();
    double from = head.window().orElseThrow().firstDay();
    assertThat(head.readyDays().median() - ChronoUnit.DAYS.between(SOWN, head.emerged()))
        .isCloseTo(from, within(2.0));
    assertThat(course("mizuna", SteadyRoom.GOOD).window()).isEmpty();
  }

  @Test
  void massesComeOneAfterTheOther() {
    List<OptionalInt> days =
        DaysToMass.of(
                LOOSE_LEAF, SOWN, SteadyRoom.GOOD.room(400, 1), 0.85, List.of(60.0, 120.0, 5000.0))
            .days();
    assertThat(days.get(0).getAsInt()).isLessThan(days.get(1).getAsInt());
    assertThat(days.get(2)).isEmpty();
  }

  @Test
  void saysWhatGrowsWellAndWhatDoesNotAndWhy() {
    List<RoomVerdict> verdicts =
        RoomVerdict.ofAll(
            Catalogue.builtIn().all(), SOWN, SteadyRoom.GOOD.room(400, 2), Spread.PRIOR);
    assertThat(verdicts).hasSize(24);
    assertThat(verdicts).extracting(RoomVerdict::grade).isSorted();
    assertThat(grade(verdicts, "loose-leaf lettuce, green")).isEqualTo(RoomVerdict.Grade.WELL);
    assertThat(grade(verdicts, "spinach")).isEqualTo(RoomVerdict.Grade.POORLY);
    assertThat(verdicts)
        .filteredOn(v -> v.grade() != RoomVerdict.Grade.WELL)
        .allSatisfy(v -> assertThat(v.why()).as(v.crop().name()).isNotEmpty());
    List<RoomVerdict> dark =
        RoomVerdict.ofAll(
            Catalogue.builtIn().all(),
            SOWN,
            new SteadyRoom(0.5, 0, 15, 8, 18).room(400, 2),
            Spread.PRIOR);
    assertThat(grade(dark, "butterhead lettuce")).isEqualTo(RoomVerdict.Grade.NOT);
    assertThat(grade(dark, "indeterminate cherry tomato")).isEqualTo(RoomVerdict.Grade.NOT);
    assertThat(grade(dark, "garden cress")).isEqualTo(RoomVerdict.Grade.NOT);
  }

  private static RoomVerdict.Grade grade(List<RoomVerdict> verdicts, String name) {
    return verdicts.stream()
        .filter(v -> v.crop().name().equals(name))
        .findFirst()
        .orElseThrow()
        .grade();
  }

  @Test
  void risksStandBesideTheForecast() {
    assertThat(course("spinach", SteadyRoom.GOOD).risks().get(0).kind())
        .isEqualTo(Risk.Kind.BOLTING);
    assertThat(course("spinach", SteadyRoom.GOOD).nearSeed()).isTrue();
  }

  @Test
  void refusesWhatHasNoParameters() {
    assertThatThrownBy(
            () ->
                GrowthForecast.of(
                    crop("lamb's lettuce"), SOWN, SteadyRoom.GOOD.room(400, 1), Spread.PRIOR))
        .hasMessage("lamb's lettuce has no growth forecast: no growth parameters yet");
    assertThatThrownBy(() -> new Spread(0, 0.2, 0.1, 10, 1)).hasMessageContaining("above 0");
  }
}
