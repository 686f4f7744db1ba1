package sallet.learn;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sallet.crop.Crop;
import sallet.crop.PlantState;

/**
 * A plant, or the clump of a pot, that stands on the bench or stood there.
 *
 * @param batch its name in the journal
 * @param crop what it is
 * @param pot name of its pot
 * @param emergence first day of growth
 * @param onBench day it came into its pot
 * @param gone day it was lifted or lost; empty while it stands
 * @param evenings one plant of the clump at the end of each day from emergence to the day it was
 *     gone or the last known day, as believed now
 */
public record BenchLife(
    String batch,
    Crop crop,
    String pot,
    LocalDate emergence,
    LocalDate onBench,
    Optional<LocalDate> gone,
    List<PlantState> evenings) {
  public BenchLife {
    evenings = List.copyOf(evenings);
  }
}
