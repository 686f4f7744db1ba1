package sallet.learn;

import java.time.LocalDate;
import java.util.List;

/**
 * What the journal of a household comes to at the end of a day.
 *
 * @param today the day
 * @param batches what is believed to stand, by day of sowing and then name
 * @param learned what the journal teaches
 * @param remarks contradictions first; with one, batches are what is left without those rows
 */
public record Standing(
    LocalDate today, List<StandingBatch> batches, Learned learned, List<Remark> remarks) {
  public Standing {
    batches = List.copyOf(batches);
    remarks = List.copyOf(remarks);
  }
}
