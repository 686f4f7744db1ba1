package sallet.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Salt;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.Goal;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SafeSolution;
import sallet.feed.recipe.SolutionLimits;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.target.TargetSolution;

final class RecipeTest {
  static final SolutionLimits NONE = new SolutionLimits(1, 1e6, 1e6);
  private static final List<String> MACROS =
      List.of(
          "can4", "cands", "kno3", "mgso4", "mkp", "map", "k2so4", "kcl", "cacl2", "mgno3", "as");

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  static LongStream fewSeeds() {
    return LongStream.range(0, 12);
  }

  static List<Bag> shelf(String... ids) {
    List<Bag> shelf = new ArrayList<>();
    for (String id : ids) {
      shelf.add(Bag.of(Salt.find(id).orElseThrow().product(1)));
    }
    return shelf;
  }

  static List<Bag> fullShelf() {
    return shelf("can4", "cands", "kno3", "mgso4", "mkp", "map", "k2so4", "kcl");
  }

  static RecipeQuestion question(List<Goal> goals, List<Bag> shelf) {
    return new RecipeQuestion(
        goals, Composition.EMPTY, 40, shelf, Optional.empty(), NONE, Optional.of(shelf.size()));
  }

  static List<Goal> lettuce() {
    return RecipeQuestion.goals(TargetSolution.find(TargetSolution.USUAL_ID).orElseThrow(), false);
  }

  private static List<Bag> randomShelf(SplittableRandom random, int size) {
    List<String> ids = new ArrayList<>(MACROS);
    List<Bag> shelf = new ArrayList<>();
    while (shelf.size() < size) {
      String id = ids.remove(random.nextInt(ids.size()));
      shelf.addAll(shelf(id));
    }
    return shelf;
  }

  private static List<Goal> randomGoals(SplittableRandom random) {
    List<Goal> goals = new ArrayList<>();
    for (Goal goal : lettuce()) {
      goals.add(new Goal(goal.nutrient(), goal.mgL() * random.nextDouble(0.4, 1.8), goal.weight()));
    }
    return goals;
  }

  /** Against a general-purpose convex solver, with and without limits that bind. */
  @ParameterizedTest
  @MethodSource("seeds")
  void noSolverFindsABetterFit(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Bag> shelf = randomShelf(random, 3 + random.nextInt(7));
    List<Goal> goals = randomGoals(random);
    SolutionLimits limits =
        seed % 2 == 0
            ? NONE
            : new SolutionLimits(random.nextDouble(0.02, 0.1), 50, random.nextDouble(5, 40));
    Recipe recipe =
        RecipeFinder.find(
            new RecipeQuestion(
                goals,
                Composition.EMPTY,
                40,
                shelf,
                Optional.empty(),
                limits,
                Optional.of(shelf.size())));
    Composition solution = recipe.perLitre();
    assertThat(solution.mg(Nutrient.CHLORIDE)).isLessThan(limits.chlorideMgL() + 1e-4);
    assertThat(solution.mg(Nutrient.AMMONIUM_NITROGEN))
        .isLessThan(limits.ammoniumShare() * solution.mg(Nutrient.NITROGEN) + 1e-4);
    double others = solverObjective(goals, shelf, limits);
    assertThat(recipe.objective()).isLessThan(others * (1 + 1e-4) + 1e-5);
  }

  /** What the other solver finds, drawn in to where all limits hold. */
  private static double solverObjective(List<Goal> goals, List<Bag> shelf, SolutionLimits limits) {
    int n = shelf.size();
    R064Store matrix = R064Store.FACTORY.make(n, n);
    R064Store linear = R064Store.FACTORY.make(n, 1);
    R064Store rows = R064Store.FACTORY.make(2 * n + 2, n);
    R064Store bounds = R064Store.FACTORY.make(2 * n + 2, 1);
    bounds.set(2 * n, 0, limits.chlorideMgL());
    for (int j = 0; j < n; j++) {
      Composition perGram = shelf.get(j).product().perUnit();
      rows.set(j, j, -1);
      rows.set(n + j, j, 1);
      bounds.set(n + j, 0, 3);
      rows.set(2 * n, j, perGram.mg(Nutrient.CHLORIDE));
      rows.set(
          2 * n + 1,
          j,
          perGram.mg(Nutrient.AMMONIUM_NITROGEN)
              - limits.ammoniumShare() * perGram.mg(Nutrient.NITROGEN));
      for (Goal goal : goals) {
        double factor = goal.weight() / goal.mgL();
        double content = factor * perGram.mg(goal.nutrient());
        linear.add(j, 0, content * goal.weight());
        for (int k = 0; k < n; k++) {
          matrix.add(j, k, content * factor * shelf.get(k).product().perUnit().mg(goal.nutrient()));
        }
      }
      matrix.add(j, j, 1e-7);
    }
    Optimisation.Result found =
        ConvexSolver.newBuilder()
            .objective(matrix, linear)
            .inequalities(rows, bounds)
            .build()
            .solve();
    double[] x = new double[n];
    double chloride = 0;
    for (int j = 0; j < n; j++) {
      x[j] = Math.max(0, Math.min(3, found.doubleValue(j)));
      chloride += x[j] * shelf.get(j).product().perUnit().mg(Nutrient.CHLORIDE);
    }
    assumeTrue(chloride < limits.chlorideMgL() + 1e-3, "the other solver broke a limit");
    return objective(goals, shelf, x);
  }

  private static double objective(List<Goal> goals, List<Bag> shelf, double[] gramsPerL) {
    double sum = 0;
    for (Goal goal : goals) {
      double mgL = 0;
      for (int j = 0; j < gramsPerL.length; j++) {
        mgL += gramsPerL[j] * shelf.get(j).product().perUnit().mg(goal.nutrient());
      }
      sum += Math.pow(goal.weight() * goal.miss(mgL), 2);
    }
    return sum;
  }

  /** Three salts on a coarse scale, every pile up to 3 g/L tried. */
  @ParameterizedTest
  @MethodSource("fewSeeds")
  void onASmallShelfNoPileOfWholeStepsFitsBetter(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Bag> shelf = randomShelf(random, 3);
    List<Goal> goals = randomGoals(random);
    WeighingScale coarse = new WeighingScale(2);
    int most = 3 + random.nextInt(3);
    double litres = 10 * most;
    int bags = 1 + random.nextInt(3);
    Recipe recipe =
        RecipeFinder.find(
            new RecipeQuestion(
                goals,
                Composition.EMPTY,
                litres,
                shelf,
                Optional.of(coarse),
                NONE,
                Optional.of(bags)));
    assertThat(recipe.doses()).hasSizeLessThanOrEqualTo(bags);
    for (Recipe.Dose dose : recipe.doses()) {
      assertThat(dose.amount())
          .isEqualTo(2 * Math.rint(dose.amount() / 2))
          .isGreaterThanOrEqualTo(20);
    }
    double best = bruteForce(goals, shelf, litres, bags);
    assertThat(recipe.objective()).isLessThan(1.01 * best + 5e-6);
    assertThat(recipe.bound()).isLessThan(best + 1e-9);
  }

  private static double bruteForce(List<Goal> goals, List<Bag> shelf, double litres, int bags) {
    int most = (int) (3 * litres);
    double best = Double.POSITIVE_INFINITY;
    for (int a = 0; a <= most; a = a == 0 ? 20 : a + 2) {
      for (int b = 0; b <= most; b = b == 0 ? 20 : b + 2) {
        for (int c = 0; c <= most; c = c == 0 ? 20 : c + 2) {
          int used = (a > 0 ? 1 : 0) + (b > 0 ? 1 : 0) + (c > 0 ? 1 : 0);
          if (used <= bags) {
            best =
                Math.min(
                    best,
                    objective(goals, shelf, new double[] {a / litres, b / litres, c / litres}));
          }
        }
      }
    }
    return best;
  }

  @Test
  void theRaftLettuceSolutionNeedsFourBags() {
    Recipe recipe =
        RecipeFinder.find(
            new RecipeQuestion(
                lettuce(),
                Composition.EMPTY,
                60,
                fullShelf(),
                Optional.of(new WeighingScale(0.1)),
                SolutionLimits.usual(),
                Optional.empty()));
    assertThat(recipe.doses()).hasSize(4);
    assertThat(recipe.fits())
        .allSatisfy(f -> assertThat(Math.abs(f.miss() * f.goal().weight())).isLessThan(0.06));
    assertThat(recipe.mend()).isEmpty();
    SafeSolution.check(recipe.perLitre());
  }

  @Test
  void aShelfWithoutMagnesiumIsToldWhichBagMendsMost() {
    Recipe recipe = RecipeFinder.find(question(lettuce(), shelf("can4", "kno3", "mkp")));
    assertThat(recipe.mend().orElseThrow().salt().id()).isEqualTo("mgso4");
    assertThat(recipe.notes()).anyMatch(n -> n.startsWith("Mg comes out at 0.00 mg/L"));
  }

  @Test
  void ammoniumStaysBelowItsShare() {
    RecipeQuestion question =
        new RecipeQuestion(
            lettuce(),
            Composition.EMPTY,
            40,
            shelf("as", "map", "kcl", "cacl2", "mgso4", "kno3"),
            Optional.empty(),
            new SolutionLimits(0.15, 50, 140),
            Optional.of(6));
    Composition solution = RecipeFinder.find(question).perLitre();
    double share = solution.mg(Nutrient.AMMONIUM_NITROGEN) / solution.mg(Nutrient.NITROGEN);
    assertThat(share).isLessThanOrEqualTo(0.15 + 1e-6);
    assertThat(solution.mg(Nutrient.CHLORIDE)).isLessThanOrEqualTo(140 + 1e-4);
  }

  @Test
  void hardWaterIsSaidToExceedTheTarget() {
    Composition hard = Composition.of(Ion.CALCIUM, 3).with(Ion.NITRATE, 6);
    Recipe recipe =
        RecipeFinder.find(
            new RecipeQuestion(
                lettuce(), hard, 40, fullShelf(), Optional.empty(), NONE, Optional.of(4)));
    assertThat(recipe.notes())
        .anyMatch(n -> n.startsWith("The water alone has 120 mg/L Ca, 84 are wanted: about 30 %"));
  }

  @Test
  void aLastSpoonfulIsAllThereIs() {
    List<Bag> shelf = new ArrayList<>(shelf("can4", "kno3", "mgso4"));
    shelf.add(new Bag(Salt.find("mkp").orElseThrow().product(1), 2, 0));
    Recipe recipe = RecipeFinder.find(question(lettuce(), shelf));
    double mkp =
        recipe.doses().stream()
            .filter(d -> d.product().id().equals("mkp"))
            .mapToDouble(Recipe.Dose::amount)
            .sum();
    assertThat(mkp).isCloseTo(2, within(1e-6));
  }

  @Test
  void nonsenseIsAFaultAndNothingIsComputed() {
    assertThatThrownBy(() -> question(List.of(), List.of()))
        .isInstanceOfSatisfying(FeedFault.class, f -> assertThat(f.sentences()).hasSize(3));
    assertThatThrownBy(() -> new WeighingScale(0)).isInstanceOf(FeedFault.class);
    assertThatThrownBy(() -> Goal.usual(Nutrient.CALCIUM, -1)).isInstanceOf(FeedFault.class);
  }

  @Test
  void tooMuchBoronIsRefused() {
    assertThatThrownBy(() -> SafeSolution.check(Composition.of(Ion.BORON, 0.3)))
        .isInstanceOf(UnsafeDose.class)
        .hasMessageContaining("B would be 3.24 mg/L");
  }
}
