package sallet.feed.recipe;

import sallet.feed.FeedFault;
import sallet.feed.product.Product;

/**
 * A bag or bottle on the shelf.
 *
 * @param product what is in it
 * @param available how much is left, g or mL; infinite when it does not matter
 * @param pricePerKg price of a kilogram or litre in any one currency, 0 when unknown
 */
public record Bag(Product product, double available, double pricePerKg) {
  public Bag {
    if (!(available >= 0)) {
      throw new FeedFault(
          "%s: the amount left must be 0 or more, was %s".formatted(product.name(), available));
    }
    if (!(pricePerKg >= 0)) {
      throw new FeedFault(
          "%s: the price must be 0 or more, was %s".formatted(product.name(), pricePerKg));
    }
  }

  /** Plenty, at no stated price. */
  public static Bag of(Product product) {
    return new Bag(product, Double.POSITIVE_INFINITY, 0);
  }
}
