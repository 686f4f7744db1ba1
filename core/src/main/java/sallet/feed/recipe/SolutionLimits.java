package sallet.feed.recipe;

import sallet.feed.FeedFault;

/**
 * What a recipe must not exceed.
 *
 * @param ammoniumShare ammonium nitrogen over all nitrogen, 0 to 1
 * @param sodiumMgL sodium, mg/L
 * @param chlorideMgL chloride, mg/L
 */
public record SolutionLimits(double ammoniumShare, double sodiumMgL, double chlorideMgL) {
  public SolutionLimits {
    if (!(ammoniumShare >= 0 && ammoniumShare <= 1 && sodiumMgL >= 0 && chlorideMgL >= 0)) {
      throw new FeedFault("Limits must not be negative, and the ammonium share at most 1");
    }
  }

  /**
   * Ammonium to 15 % of nitrogen (common practice), sodium 50 and chloride 140 mg/L (extension
   * table of water limits).
   */
  public static SolutionLimits usual() {
    return new SolutionLimits(0.15, 50, 140);
  }
}
