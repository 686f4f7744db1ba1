package sallet.crop;

import java.util.List;
import java.util.Optional;

/**
 * A horticultural type as the catalogue knows it.
 *
 * @param name catalogue name, such as "loose-leaf lettuce, red"
 * @param alsoCalled other common names it is found by, such as "red leaf lettuce"
 * @param species botanical name
 * @param growth growth parameters, with the crop's own dry-matter share; empty when it has none
 * @param germination how it germinates
 * @param seed what else is known of its seed
 * @param harvest how it is picked; empty when it cannot be planned
 * @param bolting when it bolts; empty when it is not known to
 * @param whyNotPlannable reason, empty for plannable crops
 * @param guide what handbooks say about growing it
 * @param sources where the numbers come from
 */
public record Crop(
    String name,
    List<String> alsoCalled,
    String species,
    Optional<PlantParameters> growth,
    Germination germination,
    Seed seed,
    Optional<HarvestRule> harvest,
    Optional<Bolting> bolting,
    String whyNotPlannable,
    CropGuide guide,
    Sources sources) {

  public Crop {
    alsoCalled = List.copyOf(alsoCalled);
    if (harvest.isPresent() && growth.isEmpty()) {
      throw new IllegalArgumentException(name + " has a harvest rule but no growth parameters");
    }
    if (harvest.isEmpty() && whyNotPlannable.isBlank()) {
      throw new IllegalArgumentException(name + " must say why it cannot be planned");
    }
  }

  /** Whether the planner can use the crop. */
  public boolean plannable() {
    return growth.isPresent() && harvest.isPresent();
  }

  /** How it is harvested. */
  public HarvestStyle style() {
    return switch (guide.group()) {
      case "micro" -> HarvestStyle.TRAY;
      case "fruit" -> HarvestStyle.FRUIT;
      case "head" -> HarvestStyle.WHOLE_PLANT;
      default ->
          guide.firstCutDays().isEmpty() ? HarvestStyle.WHOLE_PLANT : HarvestStyle.LEAF_BY_LEAF;
    };
  }

  /**
   * Share of seeds that become a usable plant where it is neither too warm nor too cold: the
   * harvest rule's, which holds losses and selection too; for crops without one that of a plain
   * packet.
   */
  public double usableShare() {
    return harvest.map(HarvestRule::usableShare).orElseGet(() -> seed.plainPacket().mean());
  }

  /** The same crop with a share of usable plants of its own, above 0 and at most 1. */
  public Crop withUsableShare(double share) {
    return new Crop(
        name,
        alsoCalled,
        species,
        growth,
        germination,
        seed,
        harvest.map(rule -> rule.withUsableShare(share)),
        bolting,
        whyNotPlannable,
        guide,
        sources);
  }

  /**
   * The same crop from seed some years old: fewer of its seeds become a usable plant, by as much as
   * a plain packet's seed has lost ({@link Seed#shareAfter}). Where it is not known how long the
   * seed keeps the crop stays as it is.
   *
   * @param years age, 0 or more
   */
  public Crop fromSeedOf(double years) {
    double fresh = seed.plainPacket().mean();
    return withUsableShare(usableShare() * seed.shareAfter(fresh, years) / fresh);
  }

  /**
   * Where the numbers of a crop come from, in words for a report.
   *
   * @param guide source of the handbook values and of bolting
   * @param rules source of germination, picking, age and shares
   * @param growth source of the growth parameters, empty when there are none
   */
  public record Sources(String guide, String rules, String growth) {}
}
