package sallet.feed.water;

import java.util.Arrays;
import java.util.Optional;
import sallet.feed.ion.Element;
import sallet.feed.ion.Ion;

/** What an analysis may state, as printed on reports. */
public enum WaterEntry {
  CALCIUM("Ca", Ion.CALCIUM),
  MAGNESIUM("Mg", Ion.MAGNESIUM),
  POTASSIUM("K", Ion.POTASSIUM),
  SODIUM("Na", Ion.SODIUM),
  AMMONIUM("NH4", Ion.AMMONIUM),
  AMMONIUM_NITROGEN("NH4-N", Ion.AMMONIUM, Element.NITROGEN.weight()),
  NITRATE("NO3", Ion.NITRATE),
  NITRATE_NITROGEN("NO3-N", Ion.NITRATE, Element.NITROGEN.weight()),
  CHLORIDE("Cl", Ion.CHLORIDE),
  SULFATE("SO4", Ion.SULFATE),
  SULFATE_SULFUR("SO4-S", Ion.SULFATE, Element.SULFUR.weight()),
  PHOSPHATE("PO4", Ion.PHOSPHATE, 94.970),
  PHOSPHORUS("P", Ion.PHOSPHATE, Element.PHOSPHORUS.weight()),
  BORON("B", Ion.BORON),
  SILICON("Si", Ion.SILICON),
  MANGANESE("Mn", Ion.MANGANESE),
  ZINC("Zn", Ion.ZINC),
  COPPER("Cu", Ion.COPPER),
  /** Bicarbonate, carbonate hardness, acid capacity, m-value. */
  ALKALINITY("alkalinity", Ion.CARBON, 61.016),
  /** Calcium and magnesium together. */
  HARDNESS("hardness", Ion.CALCIUM, 100.086);

  private final String word;
  private final Ion ion;
  private final double molarMass;

  WaterEntry(String word, Ion ion) {
    this(word, ion, ion.molarMass());
  }

  WaterEntry(String word, Ion ion, double molarMass) {
    this.word = word;
    this.ion = ion;
    this.molarMass = molarMass;
  }

  /** As printed on reports. */
  public String word() {
    return word;
  }

  Ion ion() {
    return ion;
  }

  /**
   * A value in mmol/L; alkalinity in meq/L. A mass of alkalinity is bicarbonate, a mass of hardness
   * is calcium carbonate.
   */
  double toMmol(double value, AnalysisUnit unit) {
    int charge = this == ALKALINITY ? 1 : Math.max(1, Math.abs(ion.charge()));
    return unit.toMmol(value, molarMass, charge);
  }

  /** The entry of a word such as "Ca", "HCO3" or "KH", without regard to case. */
  public static Optional<WaterEntry> of(String text) {
    String plain =
        switch (text.strip().toLowerCase(java.util.Locale.ROOT)) {
          case "hco3", "bicarbonate", "kh", "m-value", "acid capacity" -> "alkalinity";
          case "gh", "total hardness" -> "hardness";
          default -> text.strip();
        };
    return Arrays.stream(values()).filter(e -> e.word.equalsIgnoreCase(plain)).findFirst();
  }
}
