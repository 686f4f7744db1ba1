package sallet.crop;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A grower's own crop, told by what sets it apart from one of the catalogue.
 *
 * @param name the grower's name for it; the name of a crop of the catalogue overrides that crop
 * @param like the crop it is like
 * @param speed factor on assimilation
 * @param emergence factor on the time to emergence
 * @param dryMatterShare dry share of fresh mass
 * @param liftG fresh mass from which the whole plant may be lifted, g
 * @param oldestDays last day on the bench, days after emergence
 * @param usableShare share of seeds that become a usable plant
 * @param edibleShare edible share of the harvested fresh mass
 */
public record OwnCrop(
    String name,
    Crop like,
    double speed,
    double emergence,
    OptionalDouble dryMatterShare,
    OptionalDouble liftG,
    OptionalInt oldestDays,
    OptionalDouble usableShare,
    OptionalDouble edibleShare) {
  public OwnCrop {
    if (!(speed > 0 && emergence > 0)) {
      throw new IllegalArgumentException(
          "factors of an own crop must be above 0, were " + speed + " and " + emergence);
    }
  }

  /** The crop. */
  public Crop crop() {
    String source = "as " + like.name() + ", changed by the grower";
    return new Crop(
        name,
        like.species(),
        like.growth().map(this::growth),
        germination(),
        like.seed(),
        like.harvest().map(this::harvest),
        like.bolting(),
        like.whyNotPlannable(),
        like.guide(),
        new Crop.Sources(
            source + "; " + like.sources().guide(),
            source + "; " + like.sources().rules(),
            like.growth().isEmpty() ? "" : source + "; " + like.sources().growth()));
  }

  private PlantParameters growth(PlantParameters p) {
    PlantParameters faster = p.withAssimilationFactor(p.assimilationFactor() * speed);
    return dryMatterShare.isPresent()
        ? faster.withDryMatterShare(dryMatterShare.getAsDouble())
        : faster;
  }

  private Germination germination() {
    Germination g = like.germination();
    return new Germination(
        g.tableDays(),
        g.baseC(),
        g.optimumC(),
        g.ceilingC(),
        g.thermalTimeCd(),
        g.timeFactor() * emergence);
  }

  private HarvestRule harvest(HarvestRule rule) {
    return new HarvestRule(
        rule.leafPick(),
        liftG.orElse(rule.liftFromG()),
        oldestDays.orElse(rule.overAgeDays()),
        rule.ageingFromDays(),
        rule.ageingPerWeek(),
        rule.fridgeCarryDays(),
        edibleShare.orElse(rule.edibleShare()),
        rule.plantsPerPot(),
        usableShare.orElse(rule.usableShare()));
  }
}
