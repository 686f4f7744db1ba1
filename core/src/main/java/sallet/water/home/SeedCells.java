package sallet.water.home;

import java.util.Optional;
import sallet.household.Nursery;
import sallet.water.medium.Medium;
import sallet.water.medium.PotShape;

/** The water of seed cells: low vessels stay wet, so they are flooded seldom and shallow. */
final class SeedCells {
  /** Height of a cell. Judgement. */
  private static final double HEIGHT_CM = 4;

  /** Share of the full content at which to flood again. Judgement. */
  private static final double REFLOOD = 0.8;

  private SeedCells() {}

  static Optional<WaterSheet.Cells> of(HomeBench bench) {
    Nursery nursery = bench.household().nursery();
    if (nursery.cells() == 0) {
      return Optional.empty();
    }
    Medium medium = Medium.named(bench.household().bench().medium());
    PotShape cell = PotShape.straight(nursery.cellAreaCm2() * HEIGHT_CM / 1000, HEIGHT_CM);
    double full = medium.wetting() * cell.drainedContent(medium.retention()) * cell.volumeMl();
    return Optional.of(
        new WaterSheet.Cells(HEIGHT_CM, full, REFLOOD * full, cell.airShare(medium.retention())));
  }
}
