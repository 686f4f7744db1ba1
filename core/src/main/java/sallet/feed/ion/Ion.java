package sallet.feed.ion;

/**
 * What a solution is counted in. Weak acids and bases are counted in the form that carries no
 * alkalinity (dihydrogen phosphate, carbon dioxide, ammonium, boric acid), so the charge of a
 * composition is its alkalinity: potassium bicarbonate is one potassium and one carbon, nitric acid
 * is one nitrate, potassium hydroxide is one potassium.
 */
public enum Ion {
  CALCIUM("Ca²⁺", "Ca", 2),
  MAGNESIUM("Mg²⁺", "Mg", 2),
  POTASSIUM("K⁺", "K", 1),
  SODIUM("Na⁺", "Na", 1),
  AMMONIUM("NH₄⁺", "NH4", 1),
  NITRATE("NO₃⁻", "NO3", -1),
  CHLORIDE("Cl⁻", "Cl", -1),
  SULFATE("SO₄²⁻", "SO4", -2),
  PHOSPHATE("H₂PO₄⁻", "H2PO4", -1),
  /** All dissolved inorganic carbon, counted as CO2. */
  CARBON("CO₂", "CO2", 0),
  /** Citric acid in all its forms. */
  CITRATE("citrate", "C6H8O7", 0),
  /** Free iron(II); not stable in aerated water. */
  IRON("Fe²⁺", "Fe", 2),
  IRON_EDTA("Fe-EDTA", "Fe", -1),
  IRON_DTPA("Fe-DTPA", "Fe", -2),
  IRON_EDDHA("Fe-EDDHA", "Fe", -1),
  MANGANESE("Mn²⁺", "Mn", 2),
  ZINC("Zn²⁺", "Zn", 2),
  COPPER("Cu²⁺", "Cu", 2),
  BORON("B(OH)₃", "B", 0),
  MOLYBDENUM("MoO₄²⁻", "Mo", -2),
  SILICON("Si(OH)₄", "Si", 0),
  /** Urea, counted by molecule (two nitrogen atoms). */
  UREA("urea", "CON2H4", 0),
  /** Positive charge an analysis or a label leaves unexplained. */
  OTHER_CATION("other cations", "", 1),
  /** Negative charge an analysis or a label leaves unexplained. */
  OTHER_ANION("other anions", "", -1);

  private final String symbol;
  private final double molarMass;
  private final int charge;

  Ion(String symbol, String formula, int charge) {
    this.symbol = symbol;
    this.molarMass = formula.isEmpty() ? 0 : Formula.parse(formula).molarMass();
    this.charge = charge;
  }

  /** As printed. */
  public String symbol() {
    return symbol;
  }

  /** Charge number in the counted form. */
  public int charge() {
    return charge;
  }

  /** Molar mass of the counted form, g/mol; of the metal alone for chelates; 0 when unknown. */
  public double molarMass() {
    return molarMass;
  }
}
