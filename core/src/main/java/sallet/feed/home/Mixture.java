package sallet.feed.home;

import java.util.List;
import java.util.Optional;
import sallet.feed.dose.Bottle;
import sallet.feed.dose.PhDose;
import sallet.feed.ion.Composition;
import sallet.feed.product.Use;
import sallet.feed.recipe.Bag;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.RecipeFinder;
import sallet.feed.recipe.RecipeQuestion;
import sallet.feed.recipe.SolutionLimits;
import sallet.feed.recipe.WeighingScale;
import sallet.feed.reservoir.Strength;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;
import sallet.feed.target.TargetSolution;
import sallet.feed.water.SourceWater;
import sallet.household.FeedShelf;

/**
 * One water with acid against its alkalinity and the main salts that fit it best.
 *
 * @param water the water
 * @param acid acid against its alkalinity, when it has too much
 * @param strength strength of the target against the published solution
 * @param main the main salts
 */
record Mixture(SourceWater water, Optional<PhDose> acid, double strength, Recipe main) {
  /** Alkalinity above which acid goes in first, and what is left of it, meq/L (common practice). */
  private static final double MUCH_ALKALINITY = 1.0;

  private static final double ALKALINITY_LEFT = 0.5;

  /** Keeps the dose off the edge of what is refused. */
  private static final double BARELY = 1.001;

  /** Rounds in which the strength follows the wanted conductivity. */
  private static final int EC_ROUNDS = 4;

  private static final double WEAKEST = 0.05;
  private static final double STRONGEST = 3;

  /** The water after the acid. */
  Composition treated() {
    return acid.map(PhDose::after).orElse(water.composition());
  }

  /** What the salts bring to a litre. */
  Composition salts() {
    Composition sum = Composition.EMPTY;
    for (Recipe.Dose dose : main.doses()) {
      sum = sum.plus(dose.product().perUnit().times(dose.amount() / main.litres()));
    }
    return sum;
  }

  /** Mixes a volume of the household's solution with a water. */
  static Mixture of(FeedShelf shelf, SourceWater water, double litres) {
    return new Mixer(shelf, water, litres).mix();
  }

  private static final class Mixer {
    private final FeedShelf shelf;
    private final SourceWater water;
    private final double litres;
    private final Optional<PhDose> acid;
    private final Composition treated;
    private final WeighingScale scale;
    private final List<Bag> macros;

    Mixer(FeedShelf shelf, SourceWater water, double litres) {
      this.shelf = shelf;
      this.water = water;
      this.litres = litres;
      acid = acid(HomeShelf.acid(shelf));
      treated = acid.map(PhDose::after).orElse(water.composition());
      scale = HomeShelf.scale(shelf);
      macros = HomeShelf.bags(shelf).stream().filter(b -> b.product().use() != Use.TRACE).toList();
    }

    private Optional<PhDose> acid(Bottle bottle) {
      double alkalinity = water.alkalinityMeq();
      if (alkalinity <= MUCH_ALKALINITY) {
        return Optional.empty();
      }
      double left = Math.max(ALKALINITY_LEFT, (1 - PhDose.SAFE_SHARE) * alkalinity * BARELY);
      return Optional.of(PhDose.toAlkalinity(water.composition(), litres, left, bottle));
    }

    Mixture mix() {
      TargetSolution published = HomeShelf.target(shelf);
      Optional<Double> wantedEc = HomeShelf.ecMsCm(shelf);
      double strength = wantedEc.map(published::strengthForEc).map(Mixer::sane).orElse(1.0);
      Recipe main = main(published.atStrength(strength));
      for (int i = 0; i < EC_ROUNDS && wantedEc.isPresent(); i++) {
        double got = Conductivity.msCm25(main.perLitre(), Carbon.OPEN);
        double next = strength * Strength.fromEc(wantedEc.get(), got);
        strength = sane(next);
        main = main(published.atStrength(strength));
      }
      return new Mixture(water, acid, strength, main);
    }

    private static double sane(double strength) {
      return Math.max(WEAKEST, Math.min(STRONGEST, strength));
    }

    private Recipe main(TargetSolution target) {
      return RecipeFinder.find(
          new RecipeQuestion(
              RecipeQuestion.goals(target, false),
              treated,
              litres,
              macros,
              Optional.of(scale),
              SolutionLimits.usual(),
              Optional.empty()));
    }
  }
}
