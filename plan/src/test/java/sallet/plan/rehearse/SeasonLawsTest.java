package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.journal.Entry;
import sallet.journal.Event;
import sallet.learn.GrowingPlaces;
import sallet.learn.Standing;
import sallet.plan.Effort;
import sallet.plan.Season;
import sallet.plan.TaskCalendar;
import sallet.plan.linear.LinearSolver;

class SeasonLawsTest {
  private static final Household HOUSEHOLD = SmallBench.of(240);
  private static final TaskCalendar CALENDAR =
      new TaskCalendar(HOUSEHOLD.eaters(), HOUSEHOLD.absences(), SmallBench.START, 30);
  private static final Scene SCENE =
      Scene.of(HOUSEHOLD, Catalogue.builtIn(), CALENDAR, Hidden.USUAL);

  private static PlayedSeason play(World world, Grower grower) {
    return world.play(grower, () -> false).orElseThrow();
  }

  private static Stream<Grower> habits() {
    return Stream.of(Rhythm.every(1, 2.6), Rhythm.every(2, 4), Rhythm.allAtOnce(18));
  }

  @Test
  void whatIsHarvestedIsEatenOrSpoiltOrStillInTheFridge() {
    for (int seed = 1; seed <= 5; seed++) {
      World world = new World(SCENE, seed);
      PlayedSeason season = play(world, Rhythm.every(1, 2 + seed));
      double harvest = season.weeks().stream().mapToDouble(w -> w.harvestGrams()).sum();
      double gone =
          season.weeks().stream().mapToDouble(w -> w.eatenGrams() + w.spoiltGrams()).sum();
      double left = world.kitchen().fridge().values().stream().mapToDouble(g -> g).sum();
      assertThat(gone + left).as("seed %d", seed).isCloseTo(harvest, within(1e-6));
      assertThat(harvest).isPositive();
    }
  }

  @Test
  void noBowlHoldsMoreThanIsWantedAndNobodyEatsAway() {
    habits()
        .forEach(
            habit ->
                play(new World(SCENE, 11), habit)
                    .weeks()
                    .forEach(
                        w -> assertThat(w.eatenGrams()).isBetween(0.0, w.demandGrams() + 1e-9)));
  }

  @Test
  void theSameSeedGivesTheSameSeasonAndAnotherAnother() {
    PlayedSeason once = play(new World(SCENE, 4), Rhythm.every(1, 3));
    assertThat(play(new World(SCENE, 4), Rhythm.every(1, 3))).isEqualTo(once);
    assertThat(play(new World(SCENE, 5), Rhythm.every(1, 3))).isNotEqualTo(once);
  }

  @Test
  void allHabitsMeetTheSameWeatherAndCrops() {
    List<Double> first =
        habits()
            .map(
                habit -> {
                  World world = new World(SCENE, 9);
                  play(world, habit);
                  return world.luckOf(crop("mizuna"));
                })
            .toList();
    assertThat(new HashSet<>(first)).hasSize(1);
  }

  private static Crop crop(String name) {
    return Catalogue.builtIn().find(name).orElseThrow();
  }

  @Test
  void noPotHoldsTwoPlantsAndEveryRowCanBeTrue() {
    habits()
        .forEach(
            habit -> {
              World world = new World(SCENE, 21);
              play(world, habit);
              Standing standing =
                  Standing.of(
                      world.notebook().journal(),
                      Catalogue.builtIn(),
                      GrowingPlaces.of(HOUSEHOLD, SmallBench.START, CALENDAR.days()),
                      world.today());
              assertThat(standing.contradicts()).isFalse();
              Set<String> pots = new HashSet<>();
              standing
                  .batches()
                  .forEach(
                      b ->
                          b.groups()
                              .forEach(
                                  g -> g.pots().forEach(p -> assertThat(pots.add(p)).isTrue())));
              assertThat(pots).isNotEmpty();
            });
  }

  @Test
  void theNotebookOfAGrowerWhoPlansKnowsEveryPot() {
    TaskCalendar back =
        new TaskCalendar(HOUSEHOLD.eaters(), HOUSEHOLD.absences(), SmallBench.START, 24);
    Scene scene = Scene.of(HOUSEHOLD, Catalogue.builtIn(), back, Hidden.USUAL);
    GrowingPlaces places = GrowingPlaces.of(HOUSEHOLD, SmallBench.START, back.days());
    Weekly weekly =
        new Weekly(
            Season.of(HOUSEHOLD, SmallBench.START, back.days() + 13 * 7),
            places,
            12,
            OptionalDouble.empty(),
            Effort.LEAST,
            LinearSolver.NATIVE);
    for (int seed = 0; seed < 2; seed++) {
      World world = new World(scene, seed);
      play(world, new PlanAgain(weekly));
      Standing standing =
          Standing.of(world.notebook().journal(), Catalogue.builtIn(), places, world.today());
      List<String> believed =
          standing.batches().stream()
              .flatMap(b -> b.groups().stream().flatMap(g -> g.pots().stream()))
              .toList();
      List<String> inTruth = world.at(Plant.Stage.BENCH).stream().map(Plant::pot).toList();
      assertThat(believed).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(inTruth);
      assertThat(believed).isNotEmpty();
    }
  }

  @Test
  void everyPickIsWrittenDownAndWithinTheRule() {
    World world = new World(SCENE, 2);
    PlayedSeason season = play(world, Rhythm.every(1, 3));
    double written =
        world.notebook().journal().entries().stream()
            .filter(e -> List.of(Event.PICK, Event.LIFT).contains(e.event()))
            .mapToDouble((Entry e) -> e.grams().orElseThrow())
            .sum();
    double harvest = season.weeks().stream().mapToDouble(w -> w.harvestGrams()).sum();
    assertThat(written).isCloseTo(harvest, within(1e-6));
  }

  @Test
  void worseRegrowthFillsFewerBowls() {
    Scene poor = Scene.of(HOUSEHOLD, Catalogue.builtIn(), CALENDAR, Hidden.USUAL.withRegrowth(0.7));
    double usual = 0;
    double worse = 0;
    for (int seed = 0; seed < 6; seed++) {
      usual += eaten(play(new World(SCENE, seed), Rhythm.every(1, 2)));
      worse += eaten(play(new World(poor, seed), Rhythm.every(1, 2)));
    }
    assertThat(worse).isLessThan(0.97 * usual);
  }

  private static double eaten(PlayedSeason season) {
    return season.weeks().stream().mapToDouble(w -> w.eatenGrams()).sum();
  }
}
