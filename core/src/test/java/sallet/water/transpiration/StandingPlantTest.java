package sallet.water.transpiration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.crop.PlantState;
import sallet.household.Household;
import sallet.water.home.Households;
import sallet.water.transpiration.StandingPlant.Known;

/** Plants through time, from seed or from what is known of them. */
class StandingPlantTest {
  private static final Household HOME = Households.of(60, 50);
  private static final StandingPlant GROWN = Households.lettuce(HOME, 1).get(0);

  private static StandingPlant known(StandingPlant plant, LocalDate from, List<PlantState> states) {
    return new StandingPlant(
        plant.pot(),
        plant.crop(),
        plant.vigour(),
        plant.emergence(),
        plant.stays(),
        plant.picks(),
        plant.onBench(),
        plant.until(),
        Optional.of(new Known(from, states)));
  }

  /** Known to be just as reckoned: nothing changes, before and after. */
  @Test
  void aPlantThatIsAsReckonedGoesOnAsReckoned() {
    List<PlantState> all = GROWN.states();
    LocalDate from = GROWN.emergence().plusDays(10);
    StandingPlant same = known(GROWN, from, all.subList(10, 31));
    assertThat(same.states()).isEqualTo(all.subList(10, all.size()));
    assertThat(same.firstDay()).isEqualTo(from);
    assertThat(same.freshG(Households.DAY)).isCloseTo(GROWN.freshG(Households.DAY), within(1e-9));
  }

  /** One found with half the leaves has fewer all along. */
  @Test
  void aPlantFoundSmallerStaysSmaller() {
    PlantState now = GROWN.states().get(30);
    StandingPlant half = known(GROWN, Households.DAY, List.of(now.picked(0.5)));
    LeafCover reckoned = LeafCover.of(List.of(GROWN), Households.DAY, 12, 20);
    LeafCover found = LeafCover.of(List.of(half), Households.DAY, 12, 20);
    assertThat(found.leafCm2(0, 0)).isCloseTo(0.5 * reckoned.leafCm2(0, 0), within(1e-9));
    for (int day = 0; day < 20; day++) {
      assertThat(found.leafCm2(0, day)).isLessThan(reckoned.leafCm2(0, day));
    }
  }

  /** A pick on the eve of the last known state is still to be done, once. */
  @Test
  void picksOfTheLastKnownDayAreDoneOnce() {
    PlantState now = GROWN.states().get(30);
    StandingPlant known = known(GROWN, Households.DAY, List.of(now));
    StandingPlant picked = known.picked(Households.DAY.minusDays(1), 0.3);
    assertThat(picked.states().get(0).leafCm2()).isCloseTo(0.7 * now.leafCm2(), within(1e-9));
    assertThat(picked.picked(Households.DAY.minusDays(5), 0.3).states().get(0).leafCm2())
        .isCloseTo(0.7 * now.leafCm2(), within(1e-9));
  }
}
