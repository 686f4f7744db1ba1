package sallet.plan.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import sallet.crop.Catalogue;
import sallet.crop.forecast.Band;
import sallet.household.Household;
import sallet.journal.Journal;
import sallet.learn.Learned;
import sallet.learn.Standing;
import sallet.plan.BowlWeek;
import sallet.plan.Effort;
import sallet.plan.Planner;
import sallet.plan.Present;
import sallet.plan.SowingPlan;

class LuckTest {
  private static final double SAME = 1e-6;
  private static final Household HOUSEHOLD = SmallBench.of(240);
  private static final Catalogue CATALOGUE = Catalogue.builtIn();
  private static final SowingPlan PLAN =
      Planner.plan(
          new Planner.Request(HOUSEHOLD, CATALOGUE, SmallBench.START, 14, 1.15, Effort.LEAST),
          step -> {});

  private static SowingPlan told() {
    Learned nothing = Standing.of(Journal.EMPTY, CATALOGUE, HOUSEHOLD, SmallBench.START).learned();
    return Luck.told(PLAN, HOUSEHOLD, CATALOGUE, Present.NOTHING, nothing);
  }

  @Test
  void bandsAreInOrderAndTheSameEachTime() {
    SowingPlan told = told();
    for (BowlWeek week : told.weeks()) {
      for (Band band :
          List.of(week.luck().orElseThrow().harvestGrams(), week.luck().get().bowlGrams())) {
        assertThat(band.low()).isBetween(0.0, band.median());
        assertThat(band.high()).isGreaterThanOrEqualTo(band.median());
      }
      assertThat(week.luck().get().bowlGrams().high())
          .isLessThanOrEqualTo(week.plannedGrams() + 1e-6);
    }
    assertThat(told().weeks()).isEqualTo(told.weeks());
  }

  /**
   * Of seasons drawn anew four in five lie within the bands. Where many seasons give the very same
   * harvest a season counts at a place drawn among its equals.
   */
  @Test
  void fourOfFiveNewSeasonsLieWithinTheBand() {
    Scene scene =
        Luck.scene(PLAN, HOUSEHOLD, CATALOGUE, Hidden.USUAL, Prospect.of(Hidden.USUAL, CATALOGUE));
    List<PlayedSeason> members = seasons(scene, 1, 200);
    List<PlayedSeason> truths = seasons(scene, 10_000, 100);
    SplittableRandom dice = new SplittableRandom(2);
    int within = 0;
    int all = 0;
    for (int w = 0; w < PLAN.weeks().size(); w++) {
      int week = w;
      if (PLAN.weeks().get(w).harvestGrams() > 0) {
        for (PlayedSeason truth : truths) {
          double grams = harvest(truth, week);
          double below = members.stream().filter(m -> harvest(m, week) < grams - SAME).count();
          double upTo = members.stream().filter(m -> harvest(m, week) <= grams + SAME).count();
          double equal = upTo - below;
          double rank = (below + dice.nextDouble() * equal) / members.size();
          within += rank >= 0.1 && rank <= 0.9 ? 1 : 0;
          all++;
        }
      }
    }
    assertThat(all).isGreaterThan(500);
    assertThat(within / (double) all).isBetween(0.7, 0.9);
  }

  private static double harvest(PlayedSeason season, int week) {
    return season.weeks().get(week).harvestGrams();
  }

  private static List<PlayedSeason> seasons(Scene scene, long first, int count) {
    return LongStream.range(first, first + count)
        .parallel()
        .mapToObj(seed -> Luck.season(scene, Present.NOTHING, PLAN, seed))
        .toList();
  }
}
