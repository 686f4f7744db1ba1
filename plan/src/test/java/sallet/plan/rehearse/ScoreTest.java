package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScoreTest {
  private static PlayedSeason.Week week(double wanted, double eaten, int kinds, double wasted) {
    return new PlayedSeason.Week(
        SmallBench.START, wanted, eaten, kinds, eaten + wasted, wasted / 2, wasted / 2, 3, 2);
  }

  /** By hand: 279 of 300 g, one of three bowls under 80 %, two with 3 kinds, 20 of 299 g wasted. */
  @Test
  void aSeasonIsScoredOverTheWeeksThatCount() {
    PlayedSeason season =
        new PlayedSeason(
            List.of(
                week(100, 0, 0, 50),
                week(100, 100, 3, 20),
                week(100, 100, 4, 0),
                week(0, 0, 0, 0),
                week(100, 79, 2, 0)));
    Score score = Score.of(season, 1, 3);
    assertThat(score.fill()).isEqualTo(279 / 300.0);
    assertThat(score.lowWeeks()).isEqualTo(1 / 3.0);
    assertThat(score.kinds()).isEqualTo(2 / 3.0);
    assertThat(score.waste()).isEqualTo(20 / 299.0);
    assertThat(score.seedsAWeek()).isEqualTo(3);
    assertThat(score.touchedAWeek()).isEqualTo(2);
    assertThat(score.points()).isEqualTo((10 * 21 + 2 * 20 + 15 * 12) / 4.0);
  }
}
