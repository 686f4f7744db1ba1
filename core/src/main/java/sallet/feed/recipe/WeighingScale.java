package sallet.feed.recipe;

import sallet.feed.FeedFault;

/**
 * The scale in the kitchen.
 *
 * @param readabilityG smallest step it shows, g
 */
public record WeighingScale(double readabilityG) {
  /** Ten steps: below that a weighing is a guess (common practice). */
  private static final int HONEST_STEPS = 10;

  public WeighingScale {
    if (!(readabilityG > 0 && readabilityG <= 100)) {
      throw new FeedFault(
          "The scale's step must be above 0 to 100 g, was %s g".formatted(readabilityG));
    }
  }

  /** Smallest mass worth weighing, g. */
  public double smallestG() {
    return HONEST_STEPS * readabilityG;
  }

  /** The nearest mass the scale can show, g. */
  public double round(double grams) {
    return Math.rint(grams / readabilityG) * readabilityG;
  }
}
