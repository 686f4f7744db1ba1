package sallet.feed.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Nutrient;
import sallet.feed.target.TargetSolution;

/**
 * What is asked of the recipe.
 *
 * @param goals nutrients to meet, each at most once
 * @param water water to mix with, any acid already in it, per litre
 * @param litres volume to mix, L
 * @param shelf bags and bottles at hand
 * @param scale the scale, or nothing when any amount will do
 * @param limits what must not be exceeded
 * @param mostBags how many bags at most, or nothing for as few as fit nearly as well as all
 */
public record RecipeQuestion(
    List<Goal> goals,
    Composition water,
    double litres,
    List<Bag> shelf,
    Optional<WeighingScale> scale,
    SolutionLimits limits,
    Optional<Integer> mostBags) {
  public RecipeQuestion {
    goals = List.copyOf(goals);
    shelf = List.copyOf(shelf);
    List<String> faults = new ArrayList<>();
    if (!(litres > 0 && litres <= 10_000)) {
      faults.add("The volume to mix must be above 0 to 10000 L, was %s L".formatted(litres));
    }
    if (goals.isEmpty()) {
      faults.add("No target is stated");
    }
    if (goals.stream().map(Goal::nutrient).distinct().count() < goals.size()) {
      faults.add("A nutrient is stated twice in the target");
    }
    if (shelf.isEmpty()) {
      faults.add("The shelf is empty; name at least one salt or fertiliser");
    }
    if (shelf.stream().map(b -> b.product().id()).distinct().count() < shelf.size()) {
      faults.add("A product stands on the shelf twice");
    }
    if (mostBags.isPresent() && mostBags.get() < 1) {
      faults.add("At least one bag must be allowed, was " + mostBags.get());
    }
    if (!faults.isEmpty()) {
      throw new FeedFault(faults);
    }
  }

  /**
   * Goals for the main (false) or the trace (true) nutrients of a target, with the usual weights.
   */
  public static List<Goal> goals(TargetSolution target, boolean trace) {
    List<Goal> goals = new ArrayList<>();
    for (Map.Entry<Nutrient, Double> entry : target.mgL().entrySet()) {
      Nutrient nutrient = entry.getKey();
      boolean nitrate = nutrient == Nutrient.NITRATE_NITROGEN;
      if (nutrient.isTrace() == trace && !nitrate) {
        goals.add(Goal.usual(nutrient, entry.getValue()));
      }
    }
    if (!trace && target.mgL().containsKey(Nutrient.NITRATE_NITROGEN)) {
      goals.add(0, Goal.usual(Nutrient.NITROGEN, target.nitrogenMgL()));
    }
    return goals;
  }
}
