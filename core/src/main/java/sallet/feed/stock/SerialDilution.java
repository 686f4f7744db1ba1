package sallet.feed.stock;

import sallet.feed.UnsafeDose;
import sallet.feed.product.Product;
import sallet.feed.recipe.WeighingScale;

/**
 * How to measure a mass too small for the scale: weigh more, dissolve it, take a part.
 *
 * @param product what
 * @param neededG mass that is needed, g
 * @param weighG mass to weigh, g
 * @param intoMl volume to make it up to, mL
 * @param takeMl part to take, mL
 */
public record SerialDilution(
    Product product, double neededG, double weighG, double intoMl, double takeMl) {
  /** Smallest volume a kitchen syringe measures to a few percent, mL (common practice). */
  private static final double SMALLEST_ML = 5;

  private static final double SMALLEST_WEIGHING_G = 1;

  /**
   * The dilution for a mass.
   *
   * @throws UnsafeDose when a litre of dilution is not enough: the mass cannot be measured honestly
   */
  public static SerialDilution of(Product product, double neededG, WeighingScale scale) {
    double weigh = scale.round(Math.max(SMALLEST_WEIGHING_G, scale.smallestG()));
    for (double into : new double[] {100, 250, 500, 1000}) {
      double take = neededG / weigh * into;
      boolean dissolves =
          product.solubility().map(s -> weigh / into * 1000 < 0.5 * s.gL(15)).orElse(true);
      if (take >= SMALLEST_ML && dissolves) {
        return new SerialDilution(product, neededG, weigh, into, take);
      }
    }
    throw new UnsafeDose(
        "Refused: %.2g g of %s cannot be measured with a scale of %s g; use a finer scale, a larger stock or a ready-made trace mix"
            .formatted(neededG, product.name(), scale.readabilityG()));
  }
}
