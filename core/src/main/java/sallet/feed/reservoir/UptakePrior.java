package sallet.feed.reservoir;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;
import sallet.feed.ion.Nutrient;

/**
 * What a kind of plant takes from a litre it drinks, before the household's own readings teach
 * better.
 *
 * @param kind kind of plant
 * @param tissue content of its dry mass
 * @param litresPerKgDry usual water for a kilogram of dry mass
 * @param lowLitres in humid winter air; one in ten households is below
 * @param highLitres in dry heat; one in ten is above
 * @param source where the numbers come from
 */
public record UptakePrior(
    String kind,
    Tissue tissue,
    double litresPerKgDry,
    double lowLitres,
    double highLitres,
    String source) {
  private static final String SUFFICIENCY =
      "middle of published sufficiency ranges (memory); water use judgement";

  /** Share of nitrogen taken as ammonium while there is any (common practice). */
  private static final double AMMONIUM_SHARE = 0.08;

  /** Sodium and chloride drunk along, share of their concentration (common practice). */
  private static final double PASSIVE_SHARE = 0.2;

  /** The kinds of plant Sallet has priors for. */
  public static List<UptakePrior> catalogue() {
    return List.of(
        new UptakePrior(
            "lettuce",
            Tissue.lettuce(),
            300,
            150,
            400,
            "Nemali, university lecture notes; water use after Langenfeld et al. 2022"),
        prior("brassica leaves", 45, 5, 40, 20, 4, 8, 300),
        prior("spinach and chard", 45, 5, 60, 10, 9, 4, 300),
        prior("basil and herbs", 45, 6, 35, 15, 6, 3, 300),
        prior("tomato", 40, 5, 40, 20, 5, 6, 300));
  }

  private static UptakePrior prior(
      String kind, double n, double p, double k, double ca, double mg, double s, double litres) {
    Map<Nutrient, Double> g = new EnumMap<>(Nutrient.class);
    g.put(Nutrient.NITROGEN, n);
    g.put(Nutrient.PHOSPHORUS, p);
    g.put(Nutrient.POTASSIUM, k);
    g.put(Nutrient.CALCIUM, ca);
    g.put(Nutrient.MAGNESIUM, mg);
    g.put(Nutrient.SULFUR, s);
    return new UptakePrior(kind, new Tissue(g), litres, litres / 2, litres * 4 / 3, SUFFICIENCY);
  }

  /** The same plants where air is humid: little water, so much salt with each litre. */
  public UptakePrior hungry() {
    return withLitres(lowLitres, lowLitres, lowLitres);
  }

  /** The same plants where air is dry: much water, so little salt with each litre. */
  public UptakePrior thirsty() {
    return withLitres(highLitres, highLitres, highLitres);
  }

  /** The same plants with another thirst, L for a kilogram of dry mass. */
  public UptakePrior withLitres(double middle, double low, double high) {
    return new UptakePrior(kind, tissue, middle, low, high, source);
  }

  /** The prior of a kind, without regard to case. */
  public static Optional<UptakePrior> find(String kind) {
    return catalogue().stream().filter(p -> p.kind.equalsIgnoreCase(kind.strip())).findFirst();
  }

  /**
   * What leaves the tank with each litre drunk, mmol/L.
   *
   * @param tank what the tank holds
   */
  public Composition drunkWith(Composition tank) {
    EnumMap<Ion, Double> mmol = new EnumMap<>(Ion.class);
    tissue
        .gPerKgDry()
        .forEach(
            (nutrient, g) ->
                mmol.put(
                    nutrient.ions().get(0),
                    tissue.uptakeMgL(nutrient, litresPerKgDry) / nutrient.element().weight()));
    double nitrogen = mmol.getOrDefault(Ion.NITRATE, 0.0);
    double ammonium = Math.min(AMMONIUM_SHARE * nitrogen, tank.mmol(Ion.AMMONIUM));
    mmol.put(Ion.AMMONIUM, ammonium);
    mmol.put(Ion.NITRATE, nitrogen - ammonium);
    mmol.put(Ion.SODIUM, PASSIVE_SHARE * tank.mmol(Ion.SODIUM));
    mmol.put(Ion.CHLORIDE, PASSIVE_SHARE * tank.mmol(Ion.CHLORIDE));
    return new Composition(mmol);
  }
}
