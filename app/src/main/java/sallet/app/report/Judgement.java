package sallet.app.report;

import java.util.ArrayList;
import java.util.List;
import sallet.crop.HarvestRule;
import sallet.crop.SeedCount;
import sallet.crop.SeedLot;
import sallet.household.Bench;
import sallet.learn.LearnedFactor;

/** What in a plan is judgement, common practice or a default, and not measured. */
final class Judgement {
  private Judgement() {}

  /** One sentence each. */
  static List<String> of(PlanReport report) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "The plan aims at %s of what you want to eat, to be safe; bowls are told against what you"
                .formatted(Words.percent(report.plan().margin()))
            + " want. The margin is judgement; change it with your own experience.");
    lines.add(
        "Growth comes from a daily model of one plant in the light and warmth of its place. "
            + learned(report));
    lines.add(
        ("Outer leaves are picked once a week from %d days after emergence (common practice), from"
                + " plants of at least %s (judgement), at most %s of the leaf at a time (common"
                + " practice).")
            .formatted(
                HarvestRule.FIRST_PICK_DAYS,
                Words.grams(HarvestRule.PICK_FROM_G),
                Words.percent(HarvestRule.LARGEST_PICK)));
    lines.add(
        ("Seeds are counted so that enough plants come up in %s of cases; how sure a seed lot's"
                + " share is taken to be (strength %s) is judgement.")
            .formatted(Words.percent(SeedCount.CERTAINTY), Math.round(SeedLot.PRIOR_STRENGTH)));
    lines.add(
        "Light is reckoned %s cm above the pots' rims, the height of a half-grown plant (judgement)."
            .formatted(Math.round(Bench.CANOPY_ABOVE_POT_M * 100)));
    lines.add("The minutes beside tasks are judgement.");
    return List.copyOf(lines);
  }

  private static String learned(PlanReport report) {
    int readings =
        report.answer().standing().stream()
            .flatMap(s -> s.learned().growth().values().stream())
            .mapToInt(LearnedFactor::readings)
            .sum();
    return readings == 0
        ? "Nothing has been learned from your own bench yet: weigh a few plants and write it down."
        : "Your own journal has corrected it by "
            + Words.count(readings, "reading")
            + "; sallet journal tells how.";
  }

  /**
   * The harvest rules of a crop, most of them judgement.
   *
   * @param crop catalogue name
   * @param rule the rules
   */
  record CropRule(String crop, HarvestRule rule) {}

  /** What the columns of the crops' rules mean. */
  static final String CROP_RULES =
      "For each crop, mostly judgement: share of seeds that become a usable plant; days after"
          + " emergence from which growth slows, and until which it may stand; days the leaf keeps"
          + " in the fridge; edible share of the leaf.";

  /** Rules of the crops of the plan. */
  static List<CropRule> ofCrops(PlanReport report) {
    return report.crops().stream()
        .flatMap(name -> report.crop(name).stream())
        .flatMap(crop -> crop.harvest().stream().map(rule -> new CropRule(crop.name(), rule)))
        .toList();
  }
}
