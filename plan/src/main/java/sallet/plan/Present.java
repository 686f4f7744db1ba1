package sallet.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.crop.PlantState;

/**
 * What there is on the first day of a plan, and what was learned until then.
 *
 * @param plants groups of equal plants
 * @param inHandGrams edible grams by crop picked for the first bowl or left over in the fridge
 * @param growthFactors factor on assimilation by crop; crops not named keep the usual one
 * @param usableShares share of seeds that become a usable transplant by crop; crops not named keep
 *     the catalogue's
 * @param promises what the last plan meant to do; empty when there was none
 */
public record Present(
    List<Plants> plants,
    Map<String, Double> inHandGrams,
    Map<String, Double> growthFactors,
    Map<String, Double> usableShares,
    List<Promise> promises) {

  /** An empty bench, an empty fridge and nothing learned. */
  public static final Present NOTHING =
      new Present(List.of(), Map.of(), Map.of(), Map.of(), List.of());

  public Present {
    plants = List.copyOf(plants);
    inHandGrams = Map.copyOf(inHandGrams);
    growthFactors = Map.copyOf(growthFactors);
    usableShares = Map.copyOf(usableShares);
    promises = List.copyOf(promises);
  }

  /**
   * What the last plan meant to do with some plants, so that this one changes little of it.
   *
   * @param batch batch of plants that stand already; empty for a sowing still to come
   * @param crop catalogue name
   * @param sown sowing day
   * @param toBench day of the move to the pot
   * @param pot name of one of the pots they were to have
   * @param end last day on the bench
   * @param lifted whether they were to be eaten at the end
   * @param count how many, 1 or more
   */
  public record Promise(
      String batch,
      String crop,
      LocalDate sown,
      LocalDate toBench,
      String pot,
      LocalDate end,
      boolean lifted,
      int count) {}

  /**
   * Plants of one batch, equal in state and kind of place.
   *
   * @param batch the sowing they come from
   * @param crop catalogue name
   * @param count how many (a clump that shares a pot counts as one), 1 or more
   * @param sown sowing day, not after the first day of the plan
   * @param emergence first day of growth, seen or expected
   * @param toNursery day they left their cells, if they have
   * @param toBench day they came into their pots, if they have
   * @param pots names of their pots, one for each, once they are there
   * @param cells cells their batch takes while it is in them
   * @param vigour factor on assimilation believed of these plants
   * @param state one plant at the end of the plan's first day, that day's growth done, its picks
   *     not; before emergence it is not read
   * @param lastPick day leaves were last picked, if ever
   */
  public record Plants(
      String batch,
      String crop,
      int count,
      LocalDate sown,
      LocalDate emergence,
      Optional<LocalDate> toNursery,
      Optional<LocalDate> toBench,
      List<String> pots,
      int cells,
      double vigour,
      PlantState state,
      Optional<LocalDate> lastPick) {
    public Plants {
      pots = List.copyOf(pots);
      if (count < 1) {
        throw new IllegalArgumentException("a group needs one plant or more, has " + count);
      }
      if (toBench.isPresent() && pots.size() != count) {
        throw new IllegalArgumentException(
            count + " plants on the bench need as many pots, have " + pots.size());
      }
    }
  }
}
