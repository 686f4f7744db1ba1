package sallet.learn;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import sallet.crop.Crop;
import sallet.crop.SeedLot;

/**
 * What the household's own journal teaches, each number with what was believed before.
 *
 * @param bench growth factor on assimilation of a crop that was never weighed here
 * @param growth growth factor by catalogue name, of crops that were sown here
 * @param regrowth factor on assimilation for each pick a plant has had; 1 is what the model thinks
 * @param pace factor on the speed of coming up
 * @param seed share of cells that give a plant, by catalogue name, of crops that were sown here
 */
public record Learned(
    LearnedFactor bench,
    Map<String, LearnedFactor> growth,
    LearnedFactor regrowth,
    LearnedFactor pace,
    Map<String, LearnedShare> seed) {

  /** Factor on demand to plan for while picked plants regrow as the model thinks. Judgement. */
  public static final double USUAL_MARGIN = 1.15;

  /** Factor on demand to plan for when they regrow much less. Judgement. */
  public static final double LARGEST_MARGIN = 1.3;

  private static final double REGROWTH_OF_USUAL = 0.9;
  private static final double REGROWTH_OF_LARGEST = 0.8;

  public Learned {
    growth = Collections.unmodifiableMap(new LinkedHashMap<>(growth));
    seed = Collections.unmodifiableMap(new LinkedHashMap<>(seed));
  }

  /** Growth factor of a crop on this bench. */
  public LearnedFactor growthOf(Crop crop) {
    return growth.getOrDefault(crop.name(), bench);
  }

  /** Share of cells that give a usable plant of a crop. */
  public LearnedShare seedOf(Crop crop) {
    LearnedShare known = seed.get(crop.name());
    return known == null ? LearnedShare.prior(SeedLot.expecting(crop.usableShare())) : known;
  }

  /**
   * Factor on demand to plan for: 1.15 while each pick leaves at least 0.9 of the growth, rising in
   * a straight line to 1.3 where it leaves 0.8 or less. The two ends were found by playing seasons
   * in which regrowth was worse than the plan believed; see docs/models/learning.md.
   */
  public double margin() {
    double behind =
        (REGROWTH_OF_USUAL - regrowth.median()) / (REGROWTH_OF_USUAL - REGROWTH_OF_LARGEST);
    return USUAL_MARGIN + Math.max(0, Math.min(1, behind)) * (LARGEST_MARGIN - USUAL_MARGIN);
  }
}
