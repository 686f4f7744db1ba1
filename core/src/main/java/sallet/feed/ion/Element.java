package sallet.feed.ion;

import java.util.Arrays;
import java.util.Optional;

/**
 * The chemical elements that occur in fertilisers, acids and waters.
 *
 * <p>Weights: IUPAC abridged standard atomic weights (Prohaska et al. 2022, Pure Appl. Chem.
 * 94:573), g/mol.
 */
public enum Element {
  HYDROGEN("H", 1.008),
  BORON("B", 10.81),
  CARBON("C", 12.011),
  NITROGEN("N", 14.007),
  OXYGEN("O", 15.999),
  FLUORINE("F", 18.998),
  SODIUM("Na", 22.990),
  MAGNESIUM("Mg", 24.305),
  ALUMINIUM("Al", 26.982),
  SILICON("Si", 28.085),
  PHOSPHORUS("P", 30.974),
  SULFUR("S", 32.06),
  CHLORINE("Cl", 35.45),
  POTASSIUM("K", 39.098),
  CALCIUM("Ca", 40.078),
  MANGANESE("Mn", 54.938),
  IRON("Fe", 55.845),
  COBALT("Co", 58.933),
  NICKEL("Ni", 58.693),
  COPPER("Cu", 63.546),
  ZINC("Zn", 65.38),
  SELENIUM("Se", 78.971),
  MOLYBDENUM("Mo", 95.95),
  IODINE("I", 126.90);

  private final String symbol;
  private final double weight;

  Element(String symbol, double weight) {
    this.symbol = symbol;
    this.weight = weight;
  }

  /** Chemical symbol. */
  public String symbol() {
    return symbol;
  }

  /** Standard atomic weight, g/mol. */
  public double weight() {
    return weight;
  }

  /** The element of a symbol such as "Ca"; upper and lower case count. */
  public static Optional<Element> of(String symbol) {
    return Arrays.stream(values()).filter(e -> e.symbol.equals(symbol)).findFirst();
  }
}
