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
 * @param goal the solution to aim at
 * @param scale smallest step of the kitchen scale, such as "0.1 g"
 * @param coldestTankC lowest temperature where stock tanks stand, °C
 * @param water the source water
 * @param second a second water to blend with, such as rain
 * @param shelf bags and bottles; empty for the usual ones
 * @param acid what lowers pH
 * @param meter the conductivity meter
 * @param running how the reservoir is run between fresh solutions
 */
public record FeedShelf(
    Goal goal,
    String scale,
    double coldestTankC,
    Water water,
    Optional<Second> second,
    List<Item> shelf,
    Acid acid,
    Meter meter,
    Running running) {

  /**
   * The solution to aim at.
   *
   * @param solution id or name of a published one
   * @param changed concentrations wanted instead of the published ones, with their units, by name
   * @param ec conductivity wanted, such as "1.2 mS/cm"; empty for the strength as published
   */
  public record Goal(String solution, Map<String, String> changed, Optional<String> ec) {
    public Goal {
      changed = Collections.unmodifiableMap(new LinkedHashMap<>(changed));
    }
  }

  /**
   * A source water.
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
   * A second water.
   *
   * @param share its share of the mixture, 0 to 1; empty for the best one
   */
  public record Second(Water water, Optional<Double> share) {}

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

  /**
   * A bottle of acid.
   *
   * @param name such as "phosphoric acid"
   * @param percent its strength, % by mass
   * @param density as printed on it, such as "1.05 g/mL"; empty for that of the strength
   */
  public record Acid(String name, double percent, Optional<String> density) {}

  /**
   * A conductivity meter.
   *
   * @param ppmFactor ppm it shows for a µS/cm, such as "0.5"; empty when nobody knows
   * @param referenceC temperature its readings are compensated to, °C
   * @param standard a reading of a potassium chloride standard
   * @param fresh readings of freshly mixed solutions
   */
  public record Meter(
      Optional<String> ppmFactor,
      double referenceC,
      Optional<Standard> standard,
      List<Fresh> fresh) {
    public Meter {
      fresh = List.copyOf(fresh);
    }
  }

  /**
   * A standard solution as the meter saw it.
   *
   * @param strength of the standard, such as "0.01 mol/kg"
   * @param temperatureC its temperature, °C
   * @param read what the meter showed without compensation, such as "1.3 mS/cm"
   */
  public record Standard(String strength, double temperatureC, String read) {}

  /**
   * A fresh solution as the meter saw it.
   *
   * @param computed what Sallet had said, such as "1.31 mS/cm"
   * @param read what the meter showed
   */
  public record Fresh(String computed, String read) {}

  /**
   * How the reservoir is run.
   *
   * @param plants kind of plant that drinks most
   * @param drunkLPerDay water the plants drink, L a day; empty for an estimate from the tray
   * @param evaporatedLPerDay water lost to the air, L a day
   * @param topUp what is poured in: hold EC, solution or water
   * @param seen what was poured in and read before
   */
  public record Running(
      String plants,
      Optional<Double> drunkLPerDay,
      double evaporatedLPerDay,
      String topUp,
      List<Seen> seen) {
    public Running {
      seen = List.copyOf(seen);
    }
  }

  /**
   * A reservoir kept at its mark, as the meter saw it.
   *
   * @param pouredL all that was poured in since the solution was fresh, L
   * @param strength mean strength of that, 1 being full, 0 water
   * @param read what the meter showed afterwards
   */
  public record Seen(double pouredL, double strength, String read) {}

  public FeedShelf {
    shelf = List.copyOf(shelf);
  }

  /** Raft lettuce from reverse-osmosis water, the usual salts and a scale of 0.1 g. */
  public static FeedShelf usual() {
    return new FeedShelf(
        new Goal("lettuce-raft", Map.of(), Optional.empty()),
        "0.1 g",
        15,
        new Water("reverse osmosis", Map.of(), Optional.empty(), Optional.empty()),
        Optional.empty(),
        List.of(),
        new Acid("phosphoric acid", 10, Optional.empty()),
        new Meter(Optional.empty(), 25, Optional.empty(), List.of()),
        new Running("lettuce", Optional.empty(), 0, "hold EC", List.of()));
  }
}
