package sallet.feed.recipe;

import java.util.Map;
import java.util.TreeMap;
import sallet.feed.UnsafeDose;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Nutrient;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;

/**
 * The limits past which a working solution is refused (common practice: about three times the usual
 * traces, twice the usual strength).
 */
public final class SafeSolution {
  private static final double HIGHEST_EC_MS_CM = 4;
  private static final Map<Nutrient, Double> HIGHEST_MG_L =
      new TreeMap<>(
          Map.of(
              Nutrient.IRON, 10.0,
              Nutrient.MANGANESE, 2.5,
              Nutrient.ZINC, 1.0,
              Nutrient.COPPER, 0.5,
              Nutrient.BORON, 1.5,
              Nutrient.MOLYBDENUM, 0.3,
              Nutrient.SODIUM, 400.0,
              Nutrient.CHLORIDE, 500.0));

  private SafeSolution() {}

  /**
   * Lets a working solution pass.
   *
   * @throws UnsafeDose naming the first limit it breaks
   */
  public static void check(Composition perLitre) {
    HIGHEST_MG_L.forEach(
        (nutrient, highest) -> {
          if (perLitre.mg(nutrient) > highest) {
            throw new UnsafeDose(
                "Refused: %s would be %.2f mg/L, safe is up to %.1f"
                    .formatted(nutrient.symbol(), perLitre.mg(nutrient), highest));
          }
        });
    double ec = Conductivity.msCm25(perLitre, Carbon.OPEN);
    if (ec > HIGHEST_EC_MS_CM) {
      throw new UnsafeDose(
          "Refused: EC would be %.1f mS/cm, leaf crops are burnt above %.0f"
              .formatted(ec, HIGHEST_EC_MS_CM));
    }
  }
}
