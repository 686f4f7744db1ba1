package sallet.feed.recipe;

import sallet.feed.FeedFault;
import sallet.feed.ion.Nutrient;

/**
 * One nutrient to be met.
 *
 * @param nutrient what
 * @param mgL wanted concentration, mg/L
 * @param weight how much a miss counts: 1 for the main nutrients, 0.3 where there is slack
 */
public record Goal(Nutrient nutrient, double mgL, double weight) {
  /** A miss of a nutrient not wanted at all is measured against this, mg/L (convention). */
  private static final double SCALE_OF_NONE_MG_L = 10;

  public Goal {
    if (!(mgL >= 0 && mgL <= 2000)) {
      throw new FeedFault(
          "Target %s must be 0 to 2000 mg/L, was %s".formatted(nutrient.symbol(), mgL));
    }
    if (!(weight >= 0 && weight <= 100)) {
      throw new FeedFault(
          "Weight of %s must be 0 to 100, was %s".formatted(nutrient.symbol(), weight));
    }
  }

  /**
   * With the usual weight: sulfate, ammonium and silicon have slack, sodium and chloride more; a
   * trace of ammonium hardly counts.
   */
  public static Goal usual(Nutrient nutrient, double mgL) {
    double weight =
        switch (nutrient) {
          case AMMONIUM_NITROGEN -> 0.3 * Math.min(1, mgL / SCALE_OF_NONE_MG_L);
          case SULFUR, SILICON -> 0.3;
          case SODIUM, CHLORIDE -> 0.2;
          default -> 1;
        };
    return new Goal(nutrient, mgL, weight);
  }

  /** What a miss is measured against, mg/L. */
  double scaleMgL() {
    return mgL > 0 ? mgL : SCALE_OF_NONE_MG_L;
  }

  /** How far a concentration is off, as a share of the target. */
  public double miss(double ourMgL) {
    return (ourMgL - mgL) / scaleMgL();
  }
}
