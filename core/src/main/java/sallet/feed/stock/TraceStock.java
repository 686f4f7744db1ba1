package sallet.feed.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.feed.FeedFault;
import sallet.feed.product.Product;
import sallet.feed.recipe.Recipe;
import sallet.feed.recipe.WeighingScale;

/**
 * A bottle of trace elements made once, so that nobody weighs milligrams a week.
 *
 * @param factor how many times stronger than the solution
 * @param litres size of the bottle, L
 * @param weighings what goes into it
 */
public record TraceStock(int factor, double litres, List<Weighing> weighings) {
  /**
   * One salt.
   *
   * @param grams mass for the bottle, g
   * @param dilution how to measure it when the scale is too coarse
   */
  public record Weighing(Product product, double grams, Optional<SerialDilution> dilution) {}

  public TraceStock {
    weighings = List.copyOf(weighings);
  }

  /** The bottle for a recipe of trace salts. */
  public static TraceStock of(Recipe trace, int factor, double litres, WeighingScale scale) {
    if (!(factor >= 10 && factor <= 5000 && litres > 0 && litres <= 20)) {
      throw new FeedFault("A trace stock is 10 to 5000 times strong and up to 20 L");
    }
    List<Weighing> weighings = new ArrayList<>();
    for (Recipe.Dose dose : trace.doses()) {
      double grams = dose.amount() / trace.litres() * factor * litres;
      weighings.add(
          grams >= scale.smallestG()
              ? new Weighing(dose.product(), scale.round(grams), Optional.empty())
              : new Weighing(
                  dose.product(),
                  grams,
                  Optional.of(SerialDilution.of(dose.product(), grams, scale))));
    }
    return new TraceStock(factor, litres, weighings);
  }

  /** Volume for a litre of solution, mL. */
  public double millilitresPerLitre() {
    return 1000.0 / factor;
  }
}
