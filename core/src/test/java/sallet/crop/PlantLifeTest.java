package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plant's life from day to day. */
class PlantLifeTest {
  private static final LocalDate FIRST = SteadyPlace.FIRST;
  private static final PlantParameters LOOSE_LEAF =
      Catalogue.builtIn().find("loose-leaf lettuce, green").orElseThrow().growth().orElseThrow();

  private static PlantDay[] life(HarvestRule rule, List<Stay> stays, int days) {
    return LifeDays.of(LOOSE_LEAF, rule, 0.85, FIRST, stays, FIRST.plusDays(days));
  }

  private static int daysTo(double wantedG, PlantDay[] life) {
    PlantState plant = PlantState.atEmergence(LOOSE_LEAF);
    for (int i = 0; i < life.length; i++) {
      plant = PlantModel.step(plant, LOOSE_LEAF, life[i]);
      if (plant.freshG(life[i].dryMatterShare()) >= wantedG) {
        return i + 1;
      }
    }
    return 0;
  }

  /**
   * Days from emergence to 60 and 120 g of loose-leaf lettuce at 21/17 °C, 16 h and 450 ppm by
   * light and site, 0 for never: computed by an independent program, docs/models/growth.md. Its
   * nursery is not stated; the eleven days in a 16 cm² cell of the scenarios agree to a day.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 144, 0, 0", "2, 225, 87, 0", "2, 400, 74, 109",
    "4, 144, 65, 0", "4, 225, 52, 87", "4, 400, 47, 63",
    "6, 144, 49, 95", "6, 225, 41, 62", "6, 400, 38, 49",
    "8, 144, 41, 72", "8, 225, 36, 51", "8, 400, 33, 42",
    "10, 144, 37, 60", "10, 225, 32, 45", "10, 400, 30, 38",
    "12, 144, 33, 53", "12, 225, 30, 41", "12, 400, 28, 35",
    "15, 144, 30, 47", "15, 225, 27, 37", "15, 400, 26, 32"
  })
  void reachesTheMassOfTheTable(double dliMol, double siteCm2, int daysTo60, int daysTo120) {
    Stay cell = new Stay(FIRST, new SteadyPlace(150, 16, 22, 20, 420).days(110), 16);
    PlaceDays bench = SteadyPlace.ofDli(dliMol, 16, 21, 17, 450).days(110);
    PlantDay[] life =
        life(PlantRuns.NO_AGEING, List.of(cell, new Stay(FIRST.plusDays(11), bench, siteCm2)), 110);
    assertThat(daysTo(60, life)).isCloseTo(daysTo60, within(1));
    assertThat(daysTo(120, life)).isCloseTo(daysTo120, within(1));
  }

  /**
   * The household factor alone (0.85, variation 0.2) gives 109 to 256 g around 188 g after six
   * weeks at 12 mol, as drawn by an independent program of the same equations; scenario P01 is such
   * a place. 1 % for the middle, 12 % for the ends, which came there from a sample of unknown size.
   */
  @ParameterizedTest
  @CsvSource({"-1.2816, 109, 0.12", "0, 188, 0.01", "1.2816, 256, 0.12"})
  void theFactorsSpreadGivesTheBandOfAnIndependentProgram(
      double normal, double freshG, double tolerance) {
    Stay cell = new Stay(FIRST, new SteadyPlace(150, 16, 22, 20, 420).days(42), 16);
    Stay pot = new Stay(FIRST.plusDays(11), new SteadyPlace(208, 16, 22, 18, 420).days(42), 400);
    double vigour = 0.85 * Math.exp(Math.sqrt(Math.log1p(0.2 * 0.2)) * normal);
    PlantDay[] days =
        LifeDays.of(
            LOOSE_LEAF, PlantRuns.NO_AGEING, vigour, FIRST, List.of(cell, pot), FIRST.plusDays(42));
    assertThat(PlantLife.of(LOOSE_LEAF, days).freshG(42))
        .isCloseTo(freshG, within(tolerance * freshG));
  }

  /** Ageing of 0.93 a week from day 35: 0.93 on day 42, 0.93² on day 49. */
  @Test
  void ageSlowsAssimilationAndNothingElse() {
    HarvestRule ageing = new HarvestRule(true, 80, 75, 35, 0.93, 7, 0.95, 1, 0.8);
    Stay stay = new Stay(FIRST, new SteadyPlace(150, 16, 22, 20, 420).days(60), 225);
    PlantDay[] old = life(ageing, List.of(stay), 60);
    PlantDay[] ever = life(PlantRuns.NO_AGEING, List.of(stay), 60);
    assertThat(old[35]).isEqualTo(ever[35]);
    assertThat(old[42].assimilateGPerCm2() / ever[42].assimilateGPerCm2())
        .isCloseTo(0.93, within(1e-12));
    assertThat(old[49].assimilateGPerCm2() / ever[49].assimilateGPerCm2())
        .isCloseTo(0.8649, within(1e-12));
    assertThat(old[49].growthFactor()).isEqualTo(ever[49].growthFactor());
  }

  @Test
  void plantsOfOneClumpShareTheSite() {
    HarvestRule three = new HarvestRule(true, 15, 50, 35, 0.93, 7, 0.95, 3, 0.7);
    Stay stay = new Stay(FIRST, new SteadyPlace(150, 16, 22, 20, 420).days(5), 225);
    assertThat(life(three, List.of(stay), 5)[4].siteCm2()).isEqualTo(75);
  }

  /** The five-day memory after a step from 8.64 to 4.32 mol: 8.64 - 4.32/5 on the first day. */
  @Test
  void leavesRememberTheLightOfTheLastPlace() {
    PlaceDays bright = new SteadyPlace(150, 16, 20, 20, 420).days(20);
    PlaceDays dim = new SteadyPlace(75, 16, 20, 20, 420).days(20);
    PlantDay[] moved =
        life(
            PlantRuns.NO_AGEING,
            List.of(new Stay(FIRST, bright, 100), new Stay(FIRST.plusDays(10), dim, 100)),
            11);
    double expected = LOOSE_LEAF.dryMatterShare() * Math.pow((8.64 - 4.32 / 5) / 12, 0.2);
    assertThat(moved[10].dryMatterShare()).isCloseTo(expected, within(1e-12));
  }

  @Test
  void aLifeIsAsLongAsAsked() {
    Stay stay = new Stay(FIRST, new SteadyPlace(150, 16, 22, 20, 420).days(5), 225);
    assertThat(life(PlantRuns.NO_AGEING, List.of(stay), 0)).isEmpty();
    assertThat(Arrays.asList(life(PlantRuns.NO_AGEING, List.of(stay), 5))).hasSize(5);
  }

  @Test
  void refusesWhatCannotBe() {
    PlaceDays place = new SteadyPlace(150, 16, 22, 20, 420).days(5);
    Stay stay = new Stay(FIRST, place, 225);
    assertThatThrownBy(() -> PlantState.atEmergence(LOOSE_LEAF).picked(1.2))
        .hasMessage("a pick takes 0 to 100 %, was 120.0 %");
    assertThatThrownBy(() -> PlantState.atEmergence(LOOSE_LEAF).picked(-0.1))
        .hasMessageContaining("was -10.0 %");
    assertThatThrownBy(() -> new Stay(FIRST, place, 0)).hasMessageContaining("above 0 cm²");
    assertThatThrownBy(() -> life(PlantRuns.NO_AGEING, List.of(stay), 6))
        .hasMessage("the place is known from 2027-01-01 for 5 days, not on 2027-01-06");
    assertThatThrownBy(
            () -> life(PlantRuns.NO_AGEING, List.of(new Stay(FIRST.plusDays(2), place, 225)), 5))
        .hasMessage("the plant has no place on 2027-01-01");
    assertThatThrownBy(
            () ->
                life(
                    PlantRuns.NO_AGEING,
                    List.of(
                        new Stay(FIRST.minusDays(4), place, 16),
                        new Stay(FIRST.minusDays(1), place, 225)),
                    5))
        .hasMessage("a plant cannot move on 2026-12-31, before it comes up on 2027-01-01");
    assertThatThrownBy(
            () ->
                life(
                    PlantRuns.NO_AGEING,
                    List.of(
                        stay,
                        new Stay(FIRST.plusDays(3), place, 225),
                        new Stay(FIRST.plusDays(2), place, 225)),
                    5))
        .hasMessage("a plant cannot move on 2027-01-03, before its move on 2027-01-04");
    assertThatThrownBy(() -> LOOSE_LEAF.withDryMatterShare(1.2))
        .hasMessage("dry-matter share must be above 0 and at most 1, was 1.2");
    assertThatThrownBy(() -> new HarvestRule(true, 80, 75, 35, 1.1, 7, 0.95, 1, 0.8))
        .hasMessage("ageing factor must be above 0 and at most 1, was 1.1");
    assertThatThrownBy(() -> new Bolting(0, 13)).hasMessageContaining("above 0 °C d");
    assertThatThrownBy(() -> new Bolting(450, 25)).hasMessageContaining("0 to 24 h");
    assertThatThrownBy(() -> new Span(3, 2)).hasMessageContaining("must not fall");
  }
}
