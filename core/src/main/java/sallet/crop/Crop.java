package sallet.crop;

import java.util.Optional;

/**
 * A horticultural type as the catalogue knows it.
 *
 * @param name catalogue name, such as "loose-leaf lettuce, red"
 * @param species botanical name
 * @param growth growth parameters, with the crop's own dry-matter share; empty when it has none
 * @param germination how it germinates
 * @param harvest how it is picked; empty when it cannot be planned
 * @param bolting when it bolts; empty when it is not known to
 * @param whyNotPlannable reason, empty for plannable crops
 */
public record Crop(
    String name,
    String species,
    Optional<PlantParameters> growth,
    Germination germination,
    Optional<HarvestRule> harvest,
    Optional<Bolting> bolting,
    String whyNotPlannable) {

  /** Whether the planner can use the crop. */
  public boolean plannable() {
    return growth.isPresent() && harvest.isPresent();
  }
}
