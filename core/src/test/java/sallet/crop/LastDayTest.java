package sallet.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How long a plant may stand: over age or near to running to seed. */
class LastDayTest {
  private static final LocalDate FIRST = SteadyPlace.FIRST;
  private static final HarvestRule RULE = new HarvestRule(true, 15, 50, 35, 0.93, 7, 0.95, 3, 0.55);

  /** Limit 450 °C d as for spinach, critical day 13 h. */
  private static final Bolting SPINACH = new Bolting(450, 13);

  private static Stay at(int fromDay, int litHours, int days) {
    return new Stay(
        FIRST.plusDays(fromDay), new SteadyPlace(150, litHours, 20, 20, 450).days(days), 225);
  }

  /**
   * By hand: a 16 h day of 20 °C adds 15 °C d at full weight; 0.8 x 450 = 360 is reached by the
   * 24th day, 23 days after the first.
   */
  @Test
  void aLongDayEndsTheBenchBeforeAge() {
    assertThat(LastDay.onBench(RULE, Optional.of(SPINACH), FIRST, List.of(at(0, 16, 90))))
        .isEqualTo(FIRST.plusDays(23));
  }

  /** A 11 h day has no weight: (11 - 13)/4 + 0.5 = 0. */
  @Test
  void aShortDayLeavesTheAgeLimit() {
    assertThat(LastDay.onBench(RULE, Optional.of(SPINACH), FIRST, List.of(at(0, 11, 90))))
        .isEqualTo(FIRST.plusDays(50));
    assertThat(LastDay.onBench(RULE, Optional.empty(), FIRST, List.of(at(0, 16, 90))))
        .isEqualTo(FIRST.plusDays(50));
  }

  /** Ten 11 h days add nothing; a 13 h day adds half of 15 °C d, 48 of them make 360. */
  @Test
  void theSumFollowsThePlantFromPlaceToPlace() {
    HarvestRule old = new HarvestRule(true, 15, 90, 35, 0.93, 7, 0.95, 3, 0.55);
    assertThat(
            LastDay.onBench(
                old, Optional.of(SPINACH), FIRST, List.of(at(0, 11, 90), at(10, 13, 90))))
        .isEqualTo(FIRST.plusDays(57));
  }

  @Test
  void daysBeyondThoseKnownAddNothing() {
    assertThat(LastDay.daysUntilNearSeed(SPINACH, FIRST, List.of(at(0, 16, 20)), 50)).isEmpty();
    assertThat(LastDay.onBench(RULE, Optional.of(SPINACH), FIRST, List.of(at(0, 16, 20))))
        .isEqualTo(FIRST.plusDays(50));
  }

  @Test
  void refusesAPlantWithoutAPlace() {
    assertThatThrownBy(() -> LastDay.daysUntilNearSeed(SPINACH, FIRST, List.of(at(3, 16, 20)), 50))
        .hasMessage("the plant has no place on 2027-01-01");
  }
}
