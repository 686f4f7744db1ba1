package sallet.learn;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sallet.crop.PlantState;
import sallet.crop.Stay;
import sallet.crop.forecast.Band;

/**
 * Plants of a batch with the same history at the same kind of place, at the end of a day: that
 * day's growth, moves and picks are done, the next step of growth is tomorrow's.
 *
 * @param stage how far they have come
 * @param count places they take: pots, nursery places or cells (a clump takes one)
 * @param plants plants among them; fewer than {@code count} while seeds are yet to come up
 * @param pots names of their pots, one each; empty off the bench
 * @param stays where they stood since emergence, in order of time; the last is where they stand
 * @param toNursery day they moved to the nursery
 * @param toBench day they moved to their pots
 * @param picks picks so far, in order of time
 * @param vigour factor on assimilation believed of these plants, median
 * @param plant the median plant (one plant of a clump); a seedling of its first day when it is yet
 *     to come up
 * @param freshG fresh grams of one plant, or of the clump of a pot; 0 while it is yet to come up
 * @param spread standard deviation of the logarithm of its fresh grams
 */
public record StandingGroup(
    Stage stage,
    int count,
    double plants,
    List<String> pots,
    List<Stay> stays,
    Optional<LocalDate> toNursery,
    Optional<LocalDate> toBench,
    List<Taken> picks,
    double vigour,
    PlantState plant,
    Band freshG,
    double spread) {
  public StandingGroup {
    pots = List.copyOf(pots);
    stays = List.copyOf(stays);
    picks = List.copyOf(picks);
    if (count < 1 || (stage == Stage.BENCH && pots.size() != count)) {
      throw new IllegalArgumentException(
          "a group needs a plant, and on the bench a pot for each; had %d and %d pots"
              .formatted(count, pots.size()));
    }
  }

  /** The last day leaves were picked; empty when they never were. */
  public Optional<LocalDate> lastPick() {
    return picks.isEmpty() ? Optional.empty() : Optional.of(picks.get(picks.size() - 1).date());
  }

  /**
   * A pick that was done.
   *
   * @param date when
   * @param share share of the leaf area it took, as believed, 0 to 1
   * @param edibleG edible grams from each plant (or clump)
   */
  public record Taken(LocalDate date, double share, double edibleG) {}
}
