package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.product.Salt;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SolutionLimits;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.stock.SerialDilution;
import sallet.feed.stock.StockPlan;
import sallet.feed.stock.StockTank;
import sallet.feed.stock.TraceStock;
import sallet.feed.target.TargetSolution;

final class StockTest {
  private static Recipe recipe(String... ids) {
    return RecipeFinder.find(RecipeTest.question(RecipeTest.lettuce(), RecipeTest.shelf(ids)));
  }

  @Test
  void calciumIsKeptFromSulfateAndPhosphateAndNothingIsLost() {
    Recipe recipe = recipe("can4", "kno3", "mgso4", "mkp");
    StockPlan plan = StockPlan.of(recipe, 100, 15);
    assertThat(plan.troubles()).isEmpty();
    Composition sum = Composition.EMPTY;
    for (StockTank tank : plan.tanks()) {
      Composition content = tank.composition();
      boolean enemies = content.mmol(Ion.SULFATE) + content.mmol(Ion.PHOSPHATE) > 0;
      assertThat(content.mmol(Ion.CALCIUM) > 0 && enemies).isFalse();
      sum = sum.plus(content.times(plan.millilitresPerLitre() / 1000));
    }
    assertThat(Seeds.difference(sum, recipe.perLitre())).isLessThan(1e-9);
  }

  /**
   * In one tank an independent code finds lettuce ×10 just clear (brushite −0.04, gypsum −0.37) and
   * ×25 over (0.52, 0.09) at 20 °C.
   */
  @Test
  void everythingInOneTankKeepsClearToAboutTenfoldOnly() {
    Recipe recipe = recipe("can4", "kno3", "mgso4", "mkp");
    assertThat(StockPlan.largestSingleTankFactor(recipe, 20)).isBetween(5, 20);
  }

  @Test
  void atoxicFactorNamesTheSaltAndTheFactorThatWorks() {
    StockPlan plan = StockPlan.of(recipe("can4", "k2so4", "mgso4", "mkp"), 400, 10);
    assertThat(plan.troubles()).anyMatch(t -> t.startsWith("Tank B: the salts fill"));
    assertThat(plan.largestFactor()).isBetween(25, 250);
  }

  @Test
  void traceSaltsAreWeighedOnceOrDilutedTwice() {
    TargetSolution target = TargetSolution.find("lettuce-raft").orElseThrow();
    Recipe trace =
        RecipeFinder.find(
            new RecipeQuestion(
                RecipeQuestion.goals(target, true),
                Composition.EMPTY,
                1,
                RecipeTest.shelf("feedta", "mnso4", "znso4", "cuso4", "h3bo3", "na2moo4"),
                Optional.empty(),
                SolutionLimits.usual(),
                Optional.of(6)));
    assertThat(trace.fits()).allSatisfy(f -> assertThat(f.miss()).isCloseTo(0, within(1e-3)));
    TraceStock stock = TraceStock.of(trace, 1000, 1, new WeighingScale(0.01));
    assertThat(stock.weighings()).hasSize(6);
    for (TraceStock.Weighing weighing : stock.weighings()) {
      assertThat(weighing.grams() >= 0.1 || weighing.dilution().isPresent()).isTrue();
      weighing
          .dilution()
          .ifPresent(
              d ->
                  assertThat(d.weighG() * d.takeMl() / d.intoMl())
                      .isCloseTo(weighing.grams(), within(1e-9)));
    }
  }

  @Test
  void aMassThatCannotBeMeasuredIsRefused() {
    assertThatThrownBy(
            () ->
                SerialDilution.of(
                    Salt.find("na2moo4").orElseThrow().product(1), 0.002, new WeighingScale(1)))
        .isInstanceOf(UnsafeDose.class)
        .hasMessageContaining("cannot be measured");
  }

  @Test
  void absurdFactorsAreFaults() {
    Recipe recipe = recipe("can4", "kno3", "mgso4", "mkp");
    for (int factor : List.of(0, 1, 1000)) {
      assertThatThrownBy(() -> StockPlan.of(recipe, factor, 15)).isInstanceOf(FeedFault.class);
    }
  }
}
