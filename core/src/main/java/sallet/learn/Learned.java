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

  /**
   * Factor on demand to plan for where nothing is recorded that could correct a plan. Judgement.
   */
  public static final double USUAL_MARGIN = 1.15;

  /** Smallest factor on demand to plan for. Judgement. */
  public static final double LEAST_MARGIN = 1.05;

  /** Largest factor on demand to plan for. Judgement. */
  public static final double LARGEST_MARGIN = 1.3;

  /** Factor on demand for each part that a pick sets a plant back. Judgement. */
  private static final double MARGIN_PER_SETBACK = 1.5;

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
   * Factor on demand to plan for, in a household that records and plans again. A margin is there
   * for plants that regrow worse than the model thinks: it goes in a straight line with what each
   * pick may leave of the growth, taken half a standard deviation below its median. That gives 1.07
   * before any reading, 1.05 once readings show that picked plants grow on as expected, 1.15 where
   * each pick is known to leave 0.9, and 1.3 where it leaves 0.8 or less. Found by playing seasons;
   * see docs/models/learning.md.
   */
  public double margin() {
    double setback = 1 - regrowth.median() * Math.exp(-regrowth.spread() / 2);
    double margin = 1 + MARGIN_PER_SETBACK * setback;
    return Math.max(LEAST_MARGIN, Math.min(LARGEST_MARGIN, margin));
  }
}
