package sallet.feed.ion;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import sallet.feed.FeedFault;

/**
 * Amounts of ions: in a litre of solution (mmol/L), or in a gram or millilitre of a product (mmol).
 * At the strength plants drink, a litre of solution and a kilogram of water differ by less than 0.4
 * %, and Sallet does not tell them apart.
 *
 * @param mmol amount of each ion, not negative; ions that are absent are not listed
 */
public record Composition(Map<Ion, Double> mmol) {
  /** Nothing dissolved. */
  public static final Composition EMPTY = new Composition(Map.of());

  public Composition {
    EnumMap<Ion, Double> kept = new EnumMap<>(Ion.class);
    mmol.forEach(
        (ion, amount) -> {
          if (!Double.isFinite(amount) || amount < -1e-9) {
            throw new FeedFault(
                "%s must be zero or more, was %s mmol".formatted(ion.symbol(), amount));
          }
          if (amount > 0) {
            kept.put(ion, amount);
          }
        });
    mmol = Collections.unmodifiableMap(kept);
  }

  /** One ion. */
  public static Composition of(Ion ion, double mmol) {
    return new Composition(Map.of(ion, mmol));
  }

  /** Amount of an ion, mmol; 0 when absent. */
  public double mmol(Ion ion) {
    return mmol.getOrDefault(ion, 0.0);
  }

  /** Mass of a nutrient, mg. */
  public double mg(Nutrient nutrient) {
    double sum = 0;
    for (Ion ion : nutrient.ions()) {
      sum += mmol(ion);
    }
    return sum * nutrient.element().weight();
  }

  /** Both together. */
  public Composition plus(Composition other) {
    EnumMap<Ion, Double> sum = new EnumMap<>(Ion.class);
    sum.putAll(mmol);
    other.mmol.forEach((ion, amount) -> sum.merge(ion, amount, Double::sum));
    return new Composition(sum);
  }

  /** A multiple of this, such as a dilution. */
  public Composition times(double factor) {
    EnumMap<Ion, Double> product = new EnumMap<>(Ion.class);
    mmol.forEach((ion, amount) -> product.put(ion, amount * factor));
    return new Composition(product);
  }

  /** The same with another amount of one ion. */
  public Composition with(Ion ion, double amountMmol) {
    EnumMap<Ion, Double> changed = new EnumMap<>(Ion.class);
    changed.putAll(mmol);
    changed.put(ion, amountMmol);
    return new Composition(changed);
  }

  /** What two volumes give when poured together, per litre. */
  public static Composition mix(Composition a, double litresA, Composition b, double litresB) {
    double litres = litresA + litresB;
    return a.times(litresA / litres).plus(b.times(litresB / litres));
  }

  /** Positive charge, meq, weak bases in their counted form. */
  public double cationsMeq() {
    return mmol.entrySet().stream()
        .mapToDouble(e -> Math.max(0, e.getKey().charge()) * e.getValue())
        .sum();
  }

  /** Negative charge, meq, weak acids in their counted form (so without bicarbonate). */
  public double anionsMeq() {
    return mmol.entrySet().stream()
        .mapToDouble(e -> Math.max(0, -e.getKey().charge()) * e.getValue())
        .sum();
  }

  /**
   * Alkalinity, meq: strong acid needed to bring carbon to CO2, phosphate to H2PO4 and ammonia to
   * ammonium. It equals the charge of the counted forms; negative means free acid.
   */
  public double alkalinityMeq() {
    return cationsMeq() - anionsMeq();
  }
}
