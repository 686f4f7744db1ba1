package sallet.feed.reservoir;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import sallet.feed.ion.Element;
import sallet.feed.ion.Nutrient;

/**
 * What plants are made of, g per kg of dry mass, and what they therefore drink.
 *
 * @param gPerKgDry nutrient content
 */
public record Tissue(Map<Nutrient, Double> gPerKgDry) {
  public Tissue {
    EnumMap<Nutrient, Double> copy = new EnumMap<>(Nutrient.class);
    copy.putAll(gPerKgDry);
    gPerKgDry = Collections.unmodifiableMap(copy);
  }

  /**
   * Healthy lettuce: N 4.5, P 0.5, K 5, Mg 0.3, S 0.3 % of dry mass (Nemali, university lecture
   * notes), Ca 1 % (common practice 0.8 to 1.5).
   */
  public static Tissue lettuce() {
    return new Tissue(
        Map.of(
            Nutrient.NITROGEN, 45.0,
            Nutrient.PHOSPHORUS, 5.0,
            Nutrient.POTASSIUM, 50.0,
            Nutrient.CALCIUM, 10.0,
            Nutrient.MAGNESIUM, 3.0,
            Nutrient.SULFUR, 3.0));
  }

  private double g(Nutrient nutrient) {
    return gPerKgDry.getOrDefault(nutrient, 0.0);
  }

  /**
   * Concentration that replaces exactly what is drunk, mg/L (mass balance, after Langenfeld et al.
   * 2022, Sustainability 14:10204).
   *
   * @param litresPerKgDry water drunk for a kilogram of dry mass: 150 to 250 in winter, 300 usual,
   *     400 and more in dry heat
   */
  public double uptakeMgL(Nutrient nutrient, double litresPerKgDry) {
    return g(nutrient) * 1000 / litresPerKgDry;
  }

  /** Nutrient carried away by a harvest, g. */
  public double removedG(Nutrient nutrient, double freshKg, double dryShare) {
    return freshKg * dryShare * g(nutrient);
  }

  /**
   * Alkalinity the roots leave behind, meq per litre drunk: anions taken up beyond cations,
   * phosphorus as H2PO4, sulfur as SO4. An upper bound: part of the charge stays in the leaf as
   * organic acids, real values are perhaps a third. Negative when much ammonium is taken up: pH
   * falls.
   *
   * @param ammoniumShare share of nitrogen taken up as ammonium, 0 to 1
   */
  public double alkalinityLeftMeqL(double ammoniumShare, double litresPerKgDry) {
    double anions =
        g(Nutrient.NITROGEN) * (1 - ammoniumShare) / Element.NITROGEN.weight()
            + g(Nutrient.PHOSPHORUS) / Element.PHOSPHORUS.weight()
            + 2 * g(Nutrient.SULFUR) / Element.SULFUR.weight();
    double cations =
        g(Nutrient.NITROGEN) * ammoniumShare / Element.NITROGEN.weight()
            + g(Nutrient.POTASSIUM) / Element.POTASSIUM.weight()
            + 2 * g(Nutrient.CALCIUM) / Element.CALCIUM.weight()
            + 2 * g(Nutrient.MAGNESIUM) / Element.MAGNESIUM.weight();
    return 1000 * (anions - cations) / litresPerKgDry;
  }
}
