package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.PlantState;

/** Plants that stand, as groups of a planning question. */
class StandingPlantsTest {
  private static final Instance INSTANCE = twoGroups();
  private static final Surroundings AT = INSTANCE.at();
  private static final LocalDate FROM = INSTANCE.calendar().from();
  private static final List<Crop> CROPS =
      List.of(
          Catalogue.builtIn().find("mizuna").orElseThrow(),
          Catalogue.builtIn().find("basil").orElseThrow());

  /** A tiny bench with two groups of pots, A1 and up, and B1. */
  private static Instance twoGroups() {
    for (long seed = 0; ; seed++) {
      Instance instance = new TinyBench(seed).standing(0).instance();
      if (instance.at().groups().size() == 2) {
        return instance;
      }
    }
  }

  private static List<StandingPlants> groups(Present.Plants... plants) {
    Present present =
        new Present(List.of(plants), List.of(), Map.of(), Map.of(), Map.of(), List.of(), false);
    return StandingPlants.of(present, CROPS, AT, FROM);
  }

  private static Present.Plants plants(
      String crop, int age, List<String> pots, Optional<LocalDate> lastPick) {
    LocalDate up = FROM.minusDays(age);
    return new Present.Plants(
        "batch",
        crop,
        Math.max(1, pots.size()),
        up.minusDays(4),
        up,
        age > 2 ? Optional.of(up.plusDays(2)) : Optional.empty(),
        pots.isEmpty() ? Optional.empty() : Optional.of(up.plusDays(14)),
        pots,
        3,
        0.9,
        new PlantState(2, 0.3, 0.1, 500, 12),
        lastPick);
  }

  @Test
  void plantsInPotsArePartedByGroup() {
    List<StandingPlants> both = groups(plants("basil", 30, List.of("A1", "B1"), Optional.empty()));
    assertThat(both).extracting(StandingPlants::pots).containsExactly(List.of("A1"), List.of("B1"));
    assertThat(both).extracting(StandingPlants::group).containsExactly(0, 1);
    assertThat(both).extracting(StandingPlants::crop).containsOnly(1);
    assertThat(both).extracting(StandingPlants::count).containsOnly(1);
  }

  @Test
  void aPickRestsAPlantForFiveDays() {
    Optional<LocalDate> before = Optional.of(FROM.minusDays(2));
    assertThat(groups(plants("mizuna", 30, List.of("A1"), before)).get(0).firstPick())
        .isEqualTo(FROM.plusDays(3));
    Optional<LocalDate> longAgo = Optional.of(FROM.minusDays(5));
    assertThat(groups(plants("mizuna", 30, List.of("A1"), longAgo)).get(0).firstPick())
        .isEqualTo(FROM);
  }

  /**
   * Mizuna, 2.1 g of dry shoot. Dry share at a steady 10 mol or so and 19 °C within 2.5 and 12 %:
   * 17 to 84 g fresh; edible share at most 1.
   */
  @Test
  void throwingAPlantAwayCostsTwiceItsEdibleGrams() {
    StandingPlants one = groups(plants("mizuna", 30, List.of("A1"), Optional.empty())).get(0);
    double plantsPerPot = CROPS.get(0).harvest().orElseThrow().plantsPerPot();
    assertThat(one.standingGrams()).isBetween(plantsPerPot * 10, plantsPerPot * 84);
    assertThat(one.discardPoints()).isEqualTo(2 * one.standingGrams());
  }

  @Test
  void seedsThatAreNotUpCostNothingToThrowAway() {
    StandingPlants seeds = groups(plants("mizuna", -2, List.of(), Optional.empty())).get(0);
    assertThat(seeds.up()).isFalse();
    assertThat(seeds.firstDay()).isEqualTo(FROM.plusDays(2));
    assertThat(seeds.discardPoints()).isZero();
  }

  @Test
  void cropsThatCannotBePlannedAreLeftOut() {
    assertThat(groups(plants("garden cress", 30, List.of("A1"), Optional.empty()))).isEmpty();
  }
}
