package sallet.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.PlantState;
import sallet.household.Household;
import sallet.journal.Journal;
import sallet.learn.Standing;
import sallet.learn.StandingBatch;
import sallet.learn.StandingGroup;

/**
 * What there is on the first day of a plan, and what was learned until then.
 *
 * @param plants groups of equal plants
 * @param otherPots pots held by plants the plan knows nothing of
 * @param inHandGrams edible grams by crop picked for the first bowl or left over in the fridge
 * @param growthFactors factor on assimilation by crop; crops not named keep the usual one
 * @param usableShares share of seeds that become a usable transplant by crop; crops not named keep
 *     the catalogue's
 * @param promises what the last plan meant to do; empty when there was none
 * @param firm whether nothing was recorded since the last plan, so that what it promised for the
 *     coming days stands
 */
public record Present(
    List<Plants> plants,
    List<String> otherPots,
    Map<String, Double> inHandGrams,
    Map<String, Double> growthFactors,
    Map<String, Double> usableShares,
    List<Promise> promises,
    boolean firm) {

  /** An empty bench, an empty fridge and nothing learned. */
  public static final Present NOTHING =
      new Present(List.of(), List.of(), Map.of(), Map.of(), Map.of(), List.of(), false);

  public Present {
    plants = List.copyOf(plants);
    otherPots = List.copyOf(otherPots);
    inHandGrams = Map.copyOf(inHandGrams);
    growthFactors = Map.copyOf(growthFactors);
    usableShares = Map.copyOf(usableShares);
    promises = List.copyOf(promises);
  }

  /**
   * What stands by a journal, what it teaches and what it says was picked for the next bowl.
   *
   * @param standing what stands at the end of the plan's first day
   * @param promises what the last plan meant to do
   * @param firm whether nothing was recorded since the last plan
   */
  public static Present of(
      Standing standing,
      Journal journal,
      Household household,
      Catalogue catalogue,
      List<Promise> promises,
      boolean firm) {
    Map<String, Double> growth = new HashMap<>();
    Map<String, Double> shares = new HashMap<>();
    for (Crop crop : catalogue.all()) {
      if (crop.plannable()) {
        growth.put(crop.name(), standing.learned().growthOf(crop).median());
        shares.put(crop.name(), standing.learned().seedOf(crop).now().mean());
      }
    }
    return new Present(
        standing.batches().stream()
            .filter(b -> b.crop().plannable())
            .flatMap(b -> b.groups().stream().flatMap(g -> plants(b, g, standing).stream()))
            .toList(),
        standing.otherPots(),
        new InHand(journal, household, catalogue, standing.today()).grams(),
        growth,
        shares,
        promises,
        firm);
  }

  /** The same with other grams in hand, edible grams by crop. */
  public Present withInHand(Map<String, Double> grams) {
    return new Present(plants, otherPots, grams, growthFactors, usableShares, promises, firm);
  }

  private static Optional<Plants> plants(
      StandingBatch batch, StandingGroup group, Standing standing) {
    LocalDate today = standing.today();
    double regrowth = standing.learned().regrowth().median();
    int count = (int) Math.round(group.plants());
    return count < 1
        ? Optional.empty()
        : Optional.of(
            new Plants(
                batch.batch(),
                batch.crop().name(),
                count,
                batch.sown(),
                batch.emergence(),
                group.toNursery().map(day -> before(day, today)),
                group.toBench().map(day -> before(day, today)),
                group.pots(),
                group.count(),
                group.vigour() * Math.pow(regrowth, group.picks().size()),
                group.plant(),
                group.lastPick()));
  }

  /** A move of today is done: the plan must not ask for it again. */
  private static LocalDate before(LocalDate day, LocalDate today) {
    return day.isBefore(today) ? day : today.minusDays(1);
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
   * @param picks edible grams each plant was to give, by bowl day
   */
  public record Promise(
      String batch,
      String crop,
      LocalDate sown,
      LocalDate toBench,
      String pot,
      LocalDate end,
      boolean lifted,
      int count,
      Map<LocalDate, Double> picks) {
    public Promise {
      picks = Map.copyOf(picks);
    }
  }

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
