package sallet.feed.recipe;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Salt;
import sallet.feed.product.Use;

/**
 * Finds the weighable recipe nearest to a target.
 *
 * <p>Neutral salts keep the charge balanced by themselves; a target whose charges do not balance
 * cannot be met exactly, and the weights say which nutrient gives way.
 */
public final class RecipeFinder {
  /** Strongest anyone mixes of one salt, g/L of finished solution. */
  private static final double MOST_G_L = 3;

  /** A fit is as good within this share of the best (judgement), */
  private static final double NEARLY = 0.1;

  /** and 2 % on each of six nutrients (judgement): 6 × 0.02². */
  private static final double AS_GOOD = 6 * 0.02 * 0.02;

  /** Off by more than this, a nutrient counts as missed (judgement). */
  private static final double MISSED = 0.08;

  private static final int MOST_NODES = 400;

  private final RecipeQuestion question;
  private final FitModel model;
  private final double[] most;
  private final double[] smallest;
  private final double[] step;

  private RecipeFinder(RecipeQuestion question) {
    this.question = question;
    int n = question.shelf().size();
    model = new FitModel(question.goals(), question.water(), question.shelf(), question.limits());
    most = new double[n];
    smallest = new double[n];
    step = new double[n];
    for (int j = 0; j < n; j++) {
      most[j] = Math.min(MOST_G_L, question.shelf().get(j).available() / question.litres());
      if (question.scale().isPresent()) {
        smallest[j] = question.scale().get().smallestG() / question.litres();
        step[j] = question.scale().get().readabilityG() / question.litres();
      }
    }
  }

  /** The recipe; of the masses as weighed. */
  public static Recipe find(RecipeQuestion question) {
    return new RecipeFinder(question).recipe();
  }

  private Recipe recipe() {
    BagSearch search = search(question.mostBags().orElse(most.length), Double.POSITIVE_INFINITY);
    double[] best = search.search().orElseThrow(RecipeFinder::noRecipe);
    if (question.mostBags().isEmpty()) {
      double goodEnough = goodEnough(model.objective(best));
      for (int bags = used(best) - 1; bags >= 1; bags--) {
        BagSearch fewer = search(bags, goodEnough);
        Optional<double[]> found = fewer.search();
        if (found.isEmpty()) {
          break;
        }
        best = found.get();
        search = fewer;
      }
    }
    return assemble(best, search.bound());
  }

  /** Whether a fit is so near to the best that fewer bags or less of a water may decide. */
  public static boolean isAsGood(double objective, double best) {
    return objective <= goodEnough(best);
  }

  private static double goodEnough(double best) {
    return best * (1 + NEARLY) + AS_GOOD;
  }

  private static FeedFault noRecipe() {
    return new FeedFault("No amounts of these bags keep all limits; loosen one of them");
  }

  private BagSearch search(int bags, double worst) {
    return new BagSearch(model, most, smallest, step, bags, MOST_NODES, worst);
  }

  private static int used(double[] gramsPerL) {
    return (int) Arrays.stream(gramsPerL).filter(g -> g > BagSearch.NOTHING).count();
  }

  private Recipe assemble(double[] gramsPerL, double bound) {
    List<Recipe.Dose> doses = new ArrayList<>();
    Composition solution = question.water();
    for (int j = 0; j < gramsPerL.length; j++) {
      if (gramsPerL[j] > BagSearch.NOTHING) {
        Bag bag = question.shelf().get(j);
        double raw = gramsPerL[j] * question.litres();
        double amount = question.scale().map(s -> s.round(raw)).orElse(raw);
        doses.add(new Recipe.Dose(bag.product(), amount));
        solution = solution.plus(bag.product().perUnit().times(amount / question.litres()));
      }
    }
    doses.sort(Comparator.comparingDouble(d -> -d.amount()));
    List<Recipe.Fit> fits = new ArrayList<>();
    for (Goal goal : question.goals()) {
      fits.add(
          new Recipe.Fit(goal, question.water().mg(goal.nutrient()), solution.mg(goal.nutrient())));
    }
    double objective = model.objective(gramsPerL);
    return new Recipe(
        question.litres(),
        doses,
        solution,
        objective,
        Math.max(0, bound),
        fits,
        mend(fits, objective),
        notes(fits));
  }

  /** The catalogue salt that would improve the fit most, if something is missed now. */
  private Optional<Recipe.Mend> mend(List<Recipe.Fit> fits, double objective) {
    boolean missed = fits.stream().anyMatch(f -> f.miss() < -MISSED && f.goal().weight() >= 0.3);
    if (!missed) {
      return Optional.empty();
    }
    boolean trace = question.goals().stream().allMatch(g -> g.nutrient().isTrace());
    return Salt.catalogue().stream()
        .filter(s -> s.offered() && s.use() == (trace ? Use.TRACE : Use.MACRO))
        .filter(s -> question.shelf().stream().noneMatch(b -> b.product().id().equals(s.id())))
        .map(s -> new Recipe.Mend(s, objectiveWith(s)))
        .filter(m -> m.objectiveAfter() < 0.8 * objective)
        .min(Comparator.comparingDouble(Recipe.Mend::objectiveAfter));
  }

  private double objectiveWith(Salt salt) {
    List<Bag> more = new ArrayList<>(question.shelf());
    more.add(Bag.of(salt.product(1)));
    FitModel wider = new FitModel(question.goals(), question.water(), more, question.limits());
    double[] upper = Arrays.copyOf(most, more.size());
    upper[more.size() - 1] = MOST_G_L;
    return wider
        .program
        .solve(new double[more.size()], upper)
        .map(wider::objective)
        .orElse(Double.POSITIVE_INFINITY);
  }

  private List<String> notes(List<Recipe.Fit> fits) {
    List<String> notes = new ArrayList<>();
    for (Recipe.Fit fit : fits) {
      String symbol = fit.nutrient().symbol();
      double wanted = fit.goal().mgL();
      if (wanted > 0 && fit.waterMgL() > 1.05 * wanted) {
        notes.add(
            "The water alone has %.0f mg/L %s, %.0f are wanted: about %.0f %% rain or reverse-osmosis water would mend that"
                .formatted(fit.waterMgL(), symbol, wanted, 100 * (1 - wanted / fit.waterMgL())));
      } else if (Math.abs(fit.miss()) > MISSED && fit.goal().weight() >= 0.3) {
        notes.add(
            "%s comes out at %.3g mg/L, %.3g are wanted".formatted(symbol, fit.mgL(), wanted));
      }
    }
    double sodium = question.water().mg(Nutrient.SODIUM);
    if (sodium > question.limits().sodiumMgL()) {
      notes.add(
          "The water alone has %.0f mg/L sodium, more than the limit of %.0f; no salt with sodium is added"
              .formatted(sodium, question.limits().sodiumMgL()));
    }
    return notes;
  }
}
