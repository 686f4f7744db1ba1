package sallet.feed.product;

import java.util.Arrays;
import java.util.Optional;
import sallet.feed.ion.Formula;
import sallet.feed.ion.Nutrient;

/** The oxides in which labels state nutrients. */
public enum Oxide {
  P2O5(Nutrient.PHOSPHORUS),
  K2O(Nutrient.POTASSIUM),
  CaO(Nutrient.CALCIUM),
  MgO(Nutrient.MAGNESIUM),
  SO3(Nutrient.SULFUR),
  Na2O(Nutrient.SODIUM),
  SiO2(Nutrient.SILICON);

  private final Nutrient nutrient;

  Oxide(Nutrient nutrient) {
    this.nutrient = nutrient;
  }

  /** The nutrient in it. */
  public Nutrient nutrient() {
    return nutrient;
  }

  /** Mass of the element in one mass unit of the oxide, by atomic weights. */
  public double toElement() {
    return Formula.parse(name()).massFraction(nutrient.element());
  }

  /** The oxide of a symbol, without regard to case. */
  public static Optional<Oxide> of(String symbol) {
    return Arrays.stream(values())
        .filter(o -> o.name().equalsIgnoreCase(symbol.strip()))
        .findFirst();
  }
}
