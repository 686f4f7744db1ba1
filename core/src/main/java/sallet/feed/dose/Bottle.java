package sallet.feed.dose;

import sallet.feed.FeedFault;
import sallet.feed.product.Reagent;

/**
 * A bottle of acid or base.
 *
 * @param reagent what is in it
 * @param percent its strength, % by mass
 * @param densityGmL its density at 20 °C, g/mL
 */
public record Bottle(Reagent reagent, double percent, double densityGmL) {
  private static final double LIGHTEST_G_ML = 0.95;
  private static final double HEAVIEST_G_ML = 1.9;

  public Bottle {
    if (!(densityGmL >= LIGHTEST_G_ML && densityGmL <= HEAVIEST_G_ML)) {
      throw new FeedFault(
          "%s: the density must be %s to %s g/mL, was %s"
              .formatted(reagent.plainName(), LIGHTEST_G_ML, HEAVIEST_G_ML, densityGmL));
    }
  }

  /** With the density that belongs to the strength (handbook tables). */
  public static Bottle of(Reagent reagent, double percent) {
    return new Bottle(reagent, percent, reagent.densityGmL(percent));
  }

  /** Thinned to a strength, when it is stronger. */
  public Bottle thinnedTo(double weakerPercent) {
    return percent <= weakerPercent ? this : of(reagent, weakerPercent);
  }

  /** Amount in a litre, mol/L. */
  public double molarity() {
    return reagent.molarity(percent, densityGmL);
  }
}
