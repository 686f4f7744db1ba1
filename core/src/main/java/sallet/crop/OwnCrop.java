package sallet.crop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

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
 * @param germinationC cardinal temperatures of its seed; with them its days follow thermal time, as
 *     many at its best as its relative has at its own, and its share falls in straight lines
 * @param growthC cardinal temperatures of its growth
 * @param bolting when it runs to seed
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
    OptionalDouble edibleShare,
    Optional<Cardinals> germinationC,
    Optional<Cardinals> growthC,
    Optional<Bolting> bolting) {
  public OwnCrop {
    if (!(speed > 0 && emergence > 0)) {
      throw new IllegalArgumentException(
          "factors of an own crop must be above 0, were " + speed + " and " + emergence);
    }
    if (growthC.isPresent() && like.growth().isEmpty()) {
      throw new IllegalArgumentException(
          like.name() + " has no growth parameters whose temperatures could change");
    }
  }

  /** An own crop like another in all but its name. */
  public static OwnCrop like(Crop relative, String name) {
    return new OwnCrop(
        name,
        relative,
        1,
        1,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The crop. */
  public Crop crop() {
    String source = "as " + like.name() + ", changed by the grower";
    return new Crop(
        name,
        like.name().equals(name) ? like.alsoCalled() : List.of(),
        like.species(),
        like.growth().map(this::growth),
        germinationC.map(this::germination).orElseGet(this::germination),
        germinationC.map(this::seed).orElseGet(like::seed),
        like.harvest().map(this::harvest),
        bolting.or(like::bolting),
        like.whyNotPlannable(),
        like.guide(),
        new Crop.Sources(
            source + "; " + like.sources().guide(),
            source + "; " + like.sources().rules(),
            like.growth().isEmpty() ? "" : source + "; " + like.sources().growth()));
  }

  private PlantParameters growth(PlantParameters p) {
    PlantParameters faster = p.withAssimilationFactor(p.assimilationFactor() * speed);
    PlantParameters warmed = growthC.map(faster::withTemperatures).orElse(faster);
    return dryMatterShare.isPresent()
        ? warmed.withDryMatterShare(dryMatterShare.getAsDouble())
        : warmed;
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

  private Germination germination(Cardinals c) {
    Germination g = like.germination();
    double bestDays = g.daysAt(g.optimumC()).orElseThrow() / g.timeFactor();
    return new Germination(
        new TreeMap<>(),
        c.coldestC(),
        c.bestToC(),
        c.warmestC(),
        (c.bestToC() - c.coldestC()) * bestDays,
        g.timeFactor() * emergence);
  }

  private Seed seed(Cardinals c) {
    return new Seed(
        c.coldestC(),
        new Span(c.bestFromC(), c.bestToC()),
        c.warmestC(),
        new TreeMap<>(),
        Optional.empty(),
        like.seed().minimumShare(),
        like.seed().keepsYears());
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
