package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.feed.ion.Composition;
import sallet.feed.recipe.Goal;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SolutionLimits;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Speciation;
import sallet.feed.target.TargetSolution;

/** Budgets in CPU time, with room for a busy machine: the best of some batches counts. */
final class SpeedTest {
  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

  @Test
  void aSpeciationTakesAFifthOfAMillisecond() {
    Composition solution = TargetSolution.find("steiner").orElseThrow().composition();
    Speciation model = Speciation.at(22);
    double best = bestMillis(200, () -> model.solve(solution, Carbon.OPEN));
    assertThat(best).isLessThan(0.2);
  }

  /** Thirteen goals and fifteen salts, fewest bags, on a scale of a milligram, hard water. */
  @Test
  void aRecipeOfFifteenSaltsTakesTwentyMilliseconds() {
    TargetSolution target = TargetSolution.find(TargetSolution.USUAL_ID).orElseThrow();
    List<Goal> goals = new ArrayList<>(RecipeQuestion.goals(target, false));
    goals.addAll(RecipeQuestion.goals(target, true));
    RecipeQuestion question =
        question(
            goals,
            ChemistryChecks.totals("Ca=1.3;Mg=0.3;Na=0.8;Cl=0.8;S=0.3"),
            0.001,
            "can4",
            "cands",
            "kno3",
            "mgso4",
            "mkp",
            "map",
            "k2so4",
            "kcl",
            "mgno3",
            "feedta",
            "mnso4",
            "znso4",
            "cuso4",
            "h3bo3",
            "na2moo4");
    assertThat(bestMillis(10, () -> RecipeFinder.find(question))).isLessThan(20);
  }

  /** Seven goals and eleven salts, several of which do nearly the same, pure water. */
  @Test
  void aRecipeOfSaltsThatAreAlikeTakesTwentyMilliseconds() {
    RecipeQuestion question =
        question(
            RecipeTest.lettuce(),
            Composition.EMPTY,
            0.1,
            "can4",
            "cands",
            "kno3",
            "mgso4",
            "mkp",
            "map",
            "k2so4",
            "kcl",
            "cacl2",
            "mgno3",
            "as");
    assertThat(bestMillis(10, () -> RecipeFinder.find(question))).isLessThan(20);
  }

  private static RecipeQuestion question(
      List<Goal> goals, Composition water, double scaleG, String... salts) {
    return new RecipeQuestion(
        goals,
        water,
        60,
        RecipeTest.shelf(salts),
        Optional.of(new WeighingScale(scaleG)),
        SolutionLimits.usual(),
        Optional.empty());
  }

  private static double bestMillis(int times, Runnable work) {
    double best = Double.POSITIVE_INFINITY;
    for (int batch = 0; batch < 12; batch++) {
      long start = CPU.getCurrentThreadCpuTime();
      for (int i = 0; i < times; i++) {
        work.run();
      }
      best = Math.min(best, (CPU.getCurrentThreadCpuTime() - start) / 1e6 / times);
    }
    return best;
  }
}
