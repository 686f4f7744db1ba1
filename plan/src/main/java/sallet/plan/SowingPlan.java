package sallet.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A sowing plan for one household.
 *
 * @param from first day of the plan
 * @param taskDays every date with hand work, in order
 * @param margin factor on demand the plan was made for
 * @param weeks one entry for each bowl day, in order
 * @param standing batches that stand already and what becomes of their plants; seeds and cells to
 *     sow are 0
 * @param sowings new batches in order of date
 * @param picksNow what to take from which pot at the first bowl, when that is within a week
 * @param objective what the plan costs, in grams of missing salad times ten
 * @param solver how it was found
 * @param groups groups of pots with nearly equal light and site
 * @param marginals what one more of each place would bring, most first; empty when the search had
 *     no time to find out
 * @param notes sentences the grower should know: whose climate was taken, which wanted crops are
 *     not sown and why
 */
public record SowingPlan(
    LocalDate from,
    List<LocalDate> taskDays,
    double margin,
    List<BowlWeek> weeks,
    List<Sowing> standing,
    List<Sowing> sowings,
    List<PickNow> picksNow,
    Objective objective,
    SolverReport solver,
    List<PotGroup> groups,
    List<Marginal> marginals,
    List<String> notes) {
  public SowingPlan {
    taskDays = List.copyOf(taskDays);
    weeks = List.copyOf(weeks);
    standing = List.copyOf(standing);
    picksNow = List.copyOf(picksNow);
    sowings = List.copyOf(sowings);
    groups = List.copyOf(groups);
    marginals = List.copyOf(marginals);
    notes = List.copyOf(notes);
  }

  /** All batches: those that stand already, then the new ones. */
  public List<Sowing> batches() {
    return Stream.concat(standing.stream(), sowings.stream()).toList();
  }

  /**
   * The same plan with the luck of each bowl.
   *
   * @param luck one for each week
   */
  public SowingPlan withLuck(List<BowlWeek.Luck> luck) {
    return new SowingPlan(
        from,
        taskDays,
        margin,
        IntStream.range(0, weeks.size()).mapToObj(w -> weeks.get(w).withLuck(luck.get(w))).toList(),
        standing,
        sowings,
        picksNow,
        objective,
        solver,
        groups,
        marginals,
        notes);
  }

  /**
   * Advice for one pot at the next bowl.
   *
   * @param date bowl day
   * @param place name of the pot
   * @param batch batch of its plant
   * @param crop catalogue name
   * @param grams edible grams to take
   * @param lift whether the whole plant is taken
   * @param why the reason, a clause
   */
  public record PickNow(
      LocalDate date,
      String place,
      String batch,
      String crop,
      double grams,
      boolean lift,
      String why) {}

  /**
   * What one more place would bring, from the duals of the plan with fractions of plants: right for
   * a small change, seldom too low for a whole place.
   *
   * @param place what there would be one more of, such as "nursery place"
   * @param gramsPerWeek grams of bowl it is worth a week
   */
  public record Marginal(String place, double gramsPerWeek) {}

  /**
   * Pots that the plan treats alike.
   *
   * @param name short name, such as "bright"
   * @param pots names of its pots
   * @param meanDliMol mean light over the plan, mol/m²/d
   * @param siteCm2 area one pot offers, cm²
   */
  public record PotGroup(String name, List<String> pots, double meanDliMol, double siteCm2) {
    public PotGroup {
      pots = List.copyOf(pots);
    }
  }

  /**
   * What the plan costs in points; ten points are one gram of salad missing from a bowl.
   *
   * @param value points of this plan
   * @param gridBound no plan on the decision grid costs less; NaN when not proven
   * @param shortGrams grams missing against demand times margin
   * @param wasteGrams edible grams grown and not eaten
   * @param oneKindGrams grams of one kind above its share of the bowl
   * @param carriedGrams grams eaten a week after the pick
   * @param seeds seeds the weights count (expected, not rounded)
   * @param changes plants sown more or fewer than the last plan promised
   */
  public record Objective(
      double value,
      double gridBound,
      double shortGrams,
      double wasteGrams,
      double oneKindGrams,
      double carriedGrams,
      double seeds,
      int changes) {

    /** Grams of bowl that could at most still be gained on the decision grid. */
    public double gapGrams() {
      return (value - gridBound) / 10;
    }
  }

  /**
   * How the plan was found.
   *
   * @param status one word: "proven" (no plan of the grid is 0.1 g a bowl better), "good" or
   *     "empty"
   * @param wallSeconds time taken, s
   * @param steps what was done, one line each
   */
  public record SolverReport(String status, double wallSeconds, List<String> steps) {
    public SolverReport {
      steps = List.copyOf(steps);
    }
  }
}
