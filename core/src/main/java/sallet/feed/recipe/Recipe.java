package sallet.feed.recipe;

import java.util.List;
import java.util.Optional;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Product;
import sallet.feed.product.Salt;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;

/**
 * What to weigh, and what it makes: always computed from the masses as weighed.
 *
 * @param litres volume, L
 * @param doses what to take, the largest first
 * @param perLitre the finished solution, water included
 * @param objective fit of the masses as weighed: Σ (weight × miss)²
 * @param bound no masses of these bags can fit better than this
 * @param fits each goal
 * @param mend the one salt not on the shelf that would mend most, when much is missing
 * @param notes what the grower should know
 */
public record Recipe(
    double litres,
    List<Dose> doses,
    Composition perLitre,
    double objective,
    double bound,
    List<Fit> fits,
    Optional<Mend> mend,
    List<String> notes) {

  /**
   * One bag.
   *
   * @param amount g or mL for the whole volume
   */
  public record Dose(Product product, double amount) {}

  /**
   * One goal and what became of it.
   *
   * @param waterMgL part the water brings
   * @param mgL concentration in the finished solution
   */
  public record Fit(Goal goal, double waterMgL, double mgL) {
    /** How far off, as a share of the target. */
    public double miss() {
      return goal.miss(mgL);
    }

    public Nutrient nutrient() {
      return goal.nutrient();
    }
  }

  /**
   * A salt to buy.
   *
   * @param objectiveAfter the fit with it
   */
  public record Mend(Salt salt, double objectiveAfter) {}

  public Recipe {
    doses = List.copyOf(doses);
    fits = List.copyOf(fits);
    notes = List.copyOf(notes);
  }

  /** How far off it is on the weighted mean, as a share: √(objective / Σ weight²). */
  public double meanMiss() {
    double weights = fits.stream().mapToDouble(f -> f.goal().weight() * f.goal().weight()).sum();
    return Math.sqrt(objective / weights);
  }

  /** The finished solution once it has stood in air. */
  public SolutionState state(double temperatureC) {
    return Speciation.at(temperatureC).solve(perLitre, Carbon.OPEN);
  }
}
