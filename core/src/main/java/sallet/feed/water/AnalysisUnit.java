package sallet.feed.water;

import java.util.Arrays;
import java.util.Optional;

/**
 * Units in which laboratories and water companies state an analysis.
 *
 * <p>Degrees: 1 German degree is 10 mg/L CaO, 1 French degree 10 mg/L CaCO3, 1 English degree 1
 * grain per imperial gallon of CaCO3 (14.254 mg/L), 1 US grain per gallon 17.118 mg/L CaCO3
 * (definitions). CaCO3 is 100.086 g/mol, so 50.04 mg/L is 1 meq/L.
 */
public enum AnalysisUnit {
  MG_L("mg/L", Kind.MASS, 1),
  UG_L("µg/L", Kind.MASS, 1e-3),
  PPM("ppm", Kind.MASS, 1),
  MMOL_L("mmol/L", Kind.AMOUNT, 1),
  UMOL_L("µmol/L", Kind.AMOUNT, 1e-3),
  MEQ_L("meq/L", Kind.CHARGE, 1),
  MG_L_CACO3("mg/L CaCO3", Kind.CHARGE, 2 / 100.086),
  GERMAN_DEGREE("°dH", Kind.CHARGE, 20 / 56.077),
  FRENCH_DEGREE("°fH", Kind.CHARGE, 20 / 100.086),
  ENGLISH_DEGREE("°e", Kind.CHARGE, 2 * 14.254 / 100.086),
  US_GRAIN("gpg", Kind.CHARGE, 2 * 17.118 / 100.086);

  private final String symbol;
  private final Kind kind;
  private final double factor;

  /** What is counted. */
  enum Kind {
    MASS,
    AMOUNT,
    CHARGE
  }

  AnalysisUnit(String symbol, Kind kind, double factor) {
    this.symbol = symbol;
    this.kind = kind;
    this.factor = factor;
  }

  /** As printed. */
  public String symbol() {
    return symbol;
  }

  /**
   * A value in mmol/L.
   *
   * @param molarMass of what the mass is stated as, g/mol
   * @param charge number of charges (2 for calcium, 1 for bicarbonate)
   */
  public double toMmol(double value, double molarMass, int charge) {
    return value
        * factor
        / switch (kind) {
          case MASS -> molarMass;
          case AMOUNT -> 1;
          case CHARGE -> Math.abs(charge);
        };
  }

  /** Whether it counts mass or amount, not charge or hardness. */
  public boolean countsMatter() {
    return kind != Kind.CHARGE;
  }

  /**
   * Milligrams of an element in one unit of mass or amount.
   *
   * @param atomicWeight g/mol
   */
  public double mgPerUnit(double atomicWeight) {
    return toMmol(1, atomicWeight, 1) * atomicWeight;
  }

  /** The unit of a text; both micro signs, "dH", "fH" and "mval" are understood. */
  public static Optional<AnalysisUnit> of(String text) {
    String plain =
        text.strip()
            .replace('μ', 'µ')
            .replace("ug/", "µg/")
            .replace("umol/", "µmol/")
            .replace("mval", "meq")
            .replaceAll("\\s+", " ");
    String bare = plain.replace("°", "").replace("deg ", "");
    return Arrays.stream(values())
        .filter(
            u ->
                u.symbol.equalsIgnoreCase(plain)
                    || u.symbol.replace("°", "").equalsIgnoreCase(bare))
        .findFirst();
  }
}
