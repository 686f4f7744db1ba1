package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sallet.learn.Standing;
import sallet.learn.StandingBatch;

/**
 * The last plan: what it promised and what it believed.
 *
 * @param from its first day
 * @param sowings what it sows or goes on with, one for each group of plants
 * @param plannedGrams what it puts into each bowl
 * @param growthFactors growth factor of crops it knew from a journal
 * @param basis fingerprint of the household and the journal it was made from
 */
public record LastPlan(
    LocalDate from,
    List<Group> sowings,
    Map<LocalDate, Double> plannedGrams,
    Map<String, Double> growthFactors,
    String basis) {
  public LastPlan {
    sowings = List.copyOf(sowings);
    plannedGrams = Map.copyOf(plannedGrams);
    growthFactors = Map.copyOf(growthFactors);
  }

  /**
   * Plants of a batch that were to live the same life.
   *
   * @param batch name of the batch
   * @param standing whether they stood when the plan was made
   * @param crop catalogue name
   * @param sown sowing day
   * @param cells cells their batch takes
   * @param toBench day of the move to their pots
   * @param pot one of these pots
   * @param end last day on the bench
   * @param lifted whether they were to be eaten at the end
   * @param count how many, 1 or more
   * @param picks edible grams each plant was to give, by bowl day
   */
  public record Group(
      String batch,
      boolean standing,
      String crop,
      LocalDate sown,
      int cells,
      LocalDate toBench,
      String pot,
      LocalDate end,
      boolean lifted,
      int count,
      Map<LocalDate, Double> picks) {
    public Group {
      picks = Map.copyOf(picks);
    }
  }

  /**
   * Its promises as a plan of a later day can keep them: plants that stand by now are named by
   * their batch, sowings still to come by crop and day.
   */
  public List<Present.Promise> promises(Standing standing) {
    List<Present.Promise> promises = new ArrayList<>();
    for (Group g : sowings) {
      String batch =
          standing.batches().stream()
              .filter(b -> b.batch().equals(g.batch()) || sameSowing(b, g))
              .map(StandingBatch::batch)
              .findFirst()
              .orElse("");
      if (!batch.isEmpty() || !g.sown().isBefore(standing.today())) {
        promises.add(
            new Present.Promise(
                batch,
                g.crop(),
                g.sown(),
                g.toBench(),
                g.pot(),
                g.end(),
                g.lifted(),
                g.count(),
                g.picks()));
      }
    }
    return promises;
  }

  private static boolean sameSowing(StandingBatch batch, Group group) {
    return batch.crop().name().equals(group.crop()) && batch.sown().equals(group.sown());
  }
}
