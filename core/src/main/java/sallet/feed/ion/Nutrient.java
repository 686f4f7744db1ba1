package sallet.feed.ion;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What targets and labels are stated in: mg/L of an element, nitrogen also by form. */
public enum Nutrient {
  NITROGEN("N", Element.NITROGEN, Ion.NITRATE),
  NITRATE_NITROGEN("NO3-N", Element.NITROGEN, Ion.NITRATE),
  AMMONIUM_NITROGEN("NH4-N", Element.NITROGEN, Ion.AMMONIUM),
  UREA_NITROGEN("urea-N", Element.NITROGEN, Ion.UREA),
  PHOSPHORUS("P", Element.PHOSPHORUS, Ion.PHOSPHATE),
  POTASSIUM("K", Element.POTASSIUM, Ion.POTASSIUM),
  CALCIUM("Ca", Element.CALCIUM, Ion.CALCIUM),
  MAGNESIUM("Mg", Element.MAGNESIUM, Ion.MAGNESIUM),
  SULFUR("S", Element.SULFUR, Ion.SULFATE),
  SODIUM("Na", Element.SODIUM, Ion.SODIUM),
  CHLORIDE("Cl", Element.CHLORINE, Ion.CHLORIDE),
  IRON("Fe", Element.IRON, Ion.IRON),
  MANGANESE("Mn", Element.MANGANESE, Ion.MANGANESE),
  ZINC("Zn", Element.ZINC, Ion.ZINC),
  COPPER("Cu", Element.COPPER, Ion.COPPER),
  BORON("B", Element.BORON, Ion.BORON),
  MOLYBDENUM("Mo", Element.MOLYBDENUM, Ion.MOLYBDENUM),
  SILICON("Si", Element.SILICON, Ion.SILICON);

  private final String symbol;
  private final Element element;
  private final Ion ion;

  Nutrient(String symbol, Element element, Ion ion) {
    this.symbol = symbol;
    this.element = element;
    this.ion = ion;
  }

  /** As written on labels and in targets. */
  public String symbol() {
    return symbol;
  }

  /** The element its mass is stated in. */
  public Element element() {
    return element;
  }

  /** The ions that carry it; one that carries two atoms stands twice. */
  public List<Ion> ions() {
    return switch (this) {
      case NITROGEN -> List.of(Ion.NITRATE, Ion.AMMONIUM, Ion.UREA, Ion.UREA);
      case UREA_NITROGEN -> List.of(Ion.UREA, Ion.UREA);
      case IRON -> List.of(Ion.IRON, Ion.IRON_EDTA, Ion.IRON_DTPA, Ion.IRON_EDDHA);
      default -> List.of(ion);
    };
  }

  /** Whether it is needed in milligrams per litre or less. */
  public boolean isTrace() {
    return compareTo(IRON) >= 0 && compareTo(MOLYBDENUM) <= 0;
  }

  /** The nutrient of a symbol such as "NO3-N", without regard to case. */
  public static Optional<Nutrient> of(String symbol) {
    return Arrays.stream(values())
        .filter(n -> n.symbol.equalsIgnoreCase(symbol.strip()))
        .findFirst();
  }
}
