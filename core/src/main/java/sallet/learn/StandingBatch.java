package sallet.learn;

import java.time.LocalDate;
import java.util.List;
import sallet.crop.Crop;

/**
 * What is believed to stand of one sowing at the end of a day.
 *
 * @param batch its name in the journal
 * @param crop what was sown
 * @param sown day of sowing
 * @param seeds seeds sown
 * @param cells cells they took; each gives one plant at most (a clump that shares a pot is one)
 * @param emergence day the seedlings came up or are expected to: the first day of growth
 * @param emergenceSeen whether that day was written down; else it is reckoned
 * @param groups its plants, those of one history together; bench first, then nursery, then cells
 */
public record StandingBatch(
    String batch,
    Crop crop,
    LocalDate sown,
    int seeds,
    int cells,
    LocalDate emergence,
    boolean emergenceSeen,
    List<StandingGroup> groups) {
  public StandingBatch {
    groups = List.copyOf(groups);
    if (groups.isEmpty()) {
      throw new IllegalArgumentException("nothing stands of batch " + batch);
    }
  }

  /** Plants that stand, a clump counted as one; what germinates counts as expected. */
  public double plants() {
    return groups.stream().mapToDouble(StandingGroup::plants).sum();
  }
}
