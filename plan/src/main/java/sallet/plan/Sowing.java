package sallet.plan;

import java.time.LocalDate;
import java.util.List;

/**
 * One batch: one sowing of one crop on one day.
 *
 * @param batch name of the batch, unique in the plan
 * @param date sowing day, a task day
 * @param crop catalogue name
 * @param seeds seeds to sow
 * @param cells cells they take (a clump shares one cell)
 * @param emergence day the seedlings are expected, the first day of growth
 * @param courses plants of this batch that live the same life, at least one
 */
public record Sowing(
    String batch,
    LocalDate date,
    String crop,
    int seeds,
    int cells,
    LocalDate emergence,
    List<Course> courses) {
  public Sowing {
    courses = List.copyOf(courses);
  }

  /** Pots' worth of plants the plan counts on. */
  public int plants() {
    return courses.stream().mapToInt(Course::plants).sum();
  }

  /**
   * Plants of one batch with the same moves, picks and end.
   *
   * @param plants how many (a clump that shares a pot counts as one)
   * @param toNursery day they move from the cell to a nursery place, a task day
   * @param toBench day they move to their pots, a task day
   * @param group index of their pot group in the plan
   * @param pots names of their pots, one each
   * @param picks what is taken from each plant, in order of date
   * @param end last day on the bench, when the plant is lifted or cleared; the pot is free from
   *     then on
   * @param lifted whether the plant is eaten at the end; else it is cleared away
   * @param clearedGrams edible grams thrown away per plant at the end; 0 for a plant that still
   *     stands at the last bowl of the plan
   */
  public record Course(
      int plants,
      LocalDate toNursery,
      LocalDate toBench,
      int group,
      List<String> pots,
      List<Pick> picks,
      LocalDate end,
      boolean lifted,
      double clearedGrams) {
    public Course {
      pots = List.copyOf(pots);
      picks = List.copyOf(picks);
    }

    /** Whether the plants spend time in the nursery; else they go from cell to pot at once. */
    public boolean throughNursery() {
      return toBench.isAfter(toNursery);
    }

    /** Whether no bowl needs these plants that stand already, from a plan's first day on. */
    public boolean spare(LocalDate firstDay) {
      return picks.isEmpty() && !lifted && end.equals(firstDay);
    }

    /** Whether the plants are neither eaten nor cleared: they outlive the plan's last bowl. */
    public boolean outlivesPlan() {
      return !lifted && clearedGrams == 0;
    }
  }

  /**
   * What one plant (or clump) gives on one bowl day.
   *
   * @param date bowl day
   * @param share share of the leaf area taken, 0 to 1; 1 when the plant is lifted
   * @param gramsPerPlant edible grams from each plant
   */
  public record Pick(LocalDate date, double share, double gramsPerPlant) {}
}
