package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.feed.ion.Composition;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SolutionLimits;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Speciation;
import sallet.feed.target.TargetSolution;

/** Budgets with room for a busy machine: the best of some batches counts. */
final class SpeedTest {
  @Test
  void aSpeciationTakesAFifthOfAMillisecond() {
    Composition solution = TargetSolution.find("steiner").orElseThrow().composition();
    Speciation model = Speciation.at(22);
    double best = bestMillis(200, () -> model.solve(solution, Carbon.OPEN));
    assertThat(best).isLessThan(0.2);
  }

  /** Seven goals and eleven salts, fewest bags, on a 0.1 g scale, hard water. */
  @Test
  void aRecipeTakesTwentyMilliseconds() {
    RecipeQuestion question =
        new RecipeQuestion(
            RecipeTest.lettuce(),
            ChemistryChecks.totals("Ca=1.3;Mg=0.3;Na=0.8;Cl=0.8;S=0.3"),
            60,
            RecipeTest.shelf(
                "can4", "cands", "kno3", "mgso4", "mkp", "map", "k2so4", "kcl", "cacl2", "mgno3",
                "as"),
            Optional.of(new WeighingScale(0.1)),
            SolutionLimits.usual(),
            Optional.empty());
    assertThat(bestMillis(20, () -> RecipeFinder.find(question))).isLessThan(20);
  }

  private static double bestMillis(int times, Runnable work) {
    double best = Double.POSITIVE_INFINITY;
    for (int batch = 0; batch < 12; batch++) {
      long start = System.nanoTime();
      for (int i = 0; i < times; i++) {
        work.run();
      }
      best = Math.min(best, (System.nanoTime() - start) / 1e6 / times);
    }
    return best;
  }
}
