package sallet.household;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the nutrient solution is mixed from, as written down: texts with their units, understood by
 * the feed.
 *
 * @param target id or name of the solution to aim at
 * @param ec conductivity wanted, such as "1.2 mS/cm"; empty for the strength as published
 * @param scale smallest step of the kitchen scale, such as "0.1 g"
 * @param coldestTankC lowest temperature where stock tanks stand, °C
 * @param water the source water
 * @param shelf bags and bottles; empty for the usual ones
 * @param acid what lowers pH, such as "phosphoric acid"
 * @param acidPercent its strength, % by mass
 */
public record FeedShelf(
    String target,
    Optional<String> ec,
    String scale,
    double coldestTankC,
    Water water,
    List<Item> shelf,
    String acid,
    double acidPercent) {

  /**
   * The source water.
   *
   * @param kind tap, rain or reverse osmosis
   * @param entries figures of its analysis with their units, by name
   * @param ph measured pH
   * @param ec measured conductivity with its unit
   */
  public record Water(
      String kind, Map<String, String> entries, Optional<Double> ph, Optional<String> ec) {
    public Water {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }
  }

  /**
   * A bag or bottle.
   *
   * @param salt id, name or formula of a salt; empty for a fertiliser by label
   * @param label grade of a fertiliser such as "15.5-0-0 +19 Ca"
   * @param name what the grower calls it
   * @param purity mass share of the salt, 0 to 1
   * @param left how much is left, such as "500 g"; empty for plenty
   * @param pricePerKg price of a kilogram in any one currency, 0 when unknown
   */
  public record Item(
      Optional<String> salt,
      Optional<String> label,
      Optional<String> name,
      double purity,
      Optional<String> left,
      double pricePerKg) {}

  public FeedShelf {
    shelf = List.copyOf(shelf);
  }

  /** Raft lettuce from reverse-osmosis water, the usual salts and a scale of 0.1 g. */
  public static FeedShelf usual() {
    return new FeedShelf(
        "lettuce-raft",
        Optional.empty(),
        "0.1 g",
        15,
        new Water("reverse osmosis", Map.of(), Optional.empty(), Optional.empty()),
        List.of(),
        "phosphoric acid",
        10);
  }
}
