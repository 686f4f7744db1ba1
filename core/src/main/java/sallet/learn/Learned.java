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

  /** Factor on demand to plan for before anything was learned. Judgement. */
  public static final double USUAL_MARGIN = 1.15;

  /** Largest factor on demand to plan for. Judgement. */
  public static final double LARGEST_MARGIN = 1.3;

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
   * Factor on demand to plan for. A margin is there for plants that regrow worse than the model
   * thinks: it goes in a straight line with what each pick may leave of the growth, taken one
   * standard deviation below its median. That gives 1.15 before any reading, about 1 once readings
   * show that picked plants grow on as expected, 1.16 where each pick is known to leave 0.9, and
   * 1.3 where it leaves 0.8 or less. Found by playing seasons; see docs/models/learning.md.
   */
  public double margin() {
    double before = 1 - Math.exp(-regrowth.priorSpread());
    double behind = 1 - regrowth.median() * Math.exp(-regrowth.spread());
    double margin = 1 + (USUAL_MARGIN - 1) * behind / before;
    return Math.max(1, Math.min(LARGEST_MARGIN, margin));
  }
}
