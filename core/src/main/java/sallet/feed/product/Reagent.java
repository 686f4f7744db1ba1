package sallet.feed.product;

import java.util.List;
import java.util.Map;
import sallet.feed.EmbeddedTable;
import sallet.feed.FeedFault;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Formula;
import sallet.feed.ion.Ion;

/**
 * A liquid acid or base for adjusting pH.
 *
 * <p>Densities at 20 °C from handbook tables, straight lines between the rows.
 */
public enum Reagent {
  NITRIC_ACID("nitric acid", "HNO3", Ion.NITRATE, 1, 70, 3),
  PHOSPHORIC_ACID("phosphoric acid", "H3PO4", Ion.PHOSPHATE, 1, 85, 100),
  SULFURIC_ACID("sulfuric acid", "H2SO4", Ion.SULFATE, 2, 95, 15),
  POTASSIUM_HYDROXIDE("potassium hydroxide", "KOH", Ion.POTASSIUM, -1, 45, 100);

  private final String plainName;
  private final String formula;
  private final Ion ion;
  private final int equivalents;
  private final double strongestPercent;
  private final double publicLimitPercent;

  Reagent(
      String plainName,
      String formula,
      Ion ion,
      int equivalents,
      double strongestPercent,
      double publicLimitPercent) {
    this.plainName = plainName;
    this.formula = formula;
    this.ion = ion;
    this.equivalents = equivalents;
    this.strongestPercent = strongestPercent;
    this.publicLimitPercent = publicLimitPercent;
  }

  /** Name in plain words. */
  public String plainName() {
    return plainName;
  }

  /** Chemical formula. */
  public String formula() {
    return formula;
  }

  /** Alkalinity one mole takes away (first proton of phosphoric acid), eq; negative for a base. */
  public int equivalents() {
    return equivalents;
  }

  /** Whether it lowers pH. */
  public boolean isAcid() {
    return equivalents > 0;
  }

  /**
   * Strength above which the EU general public needs a licence, % by mass (Regulation (EU)
   * 2019/1148); 100 when there is no such limit. Other countries have their own rules.
   */
  public double publicLimitPercent() {
    return publicLimitPercent;
  }

  /** What to beware of. */
  public String caution() {
    return Salt.find(formula).orElseThrow().caution();
  }

  /** What one mole brings, mol. */
  public Composition perMole() {
    return Composition.of(ion, 1);
  }

  /** Density at 20 °C, g/mL. */
  public double densityGmL(double percent) {
    checkStrength(percent);
    List<Map<String, String>> rows =
        EmbeddedTable.rows("densities.csv").stream()
            .filter(r -> EmbeddedTable.text(r, "reagent").equals(formula))
            .toList();
    for (int i = 1; i < rows.size(); i++) {
      double right = EmbeddedTable.number(rows.get(i), "percent");
      if (percent <= right) {
        double left = EmbeddedTable.number(rows.get(i - 1), "percent");
        double share = (percent - left) / (right - left);
        return (1 - share) * EmbeddedTable.number(rows.get(i - 1), "densityGmL")
            + share * EmbeddedTable.number(rows.get(i), "densityGmL");
      }
    }
    throw new IllegalStateException("no density for " + percent + " % " + plainName);
  }

  /** Amount in a litre of the liquid, mol/L. */
  public double molarity(double percent) {
    return molarity(percent, densityGmL(percent));
  }

  /** Amount in a litre of a liquid of known density, mol/L: 10 × percent × density / molar mass. */
  public double molarity(double percent, double densityGmL) {
    checkStrength(percent);
    return 10 * percent * densityGmL / Formula.parse(formula).molarMass();
  }

  private void checkStrength(double percent) {
    if (!(percent > 0 && percent <= strongestPercent)) {
      throw new FeedFault(
          "%s: strength must be above 0 to %.0f %%, was %s %%"
              .formatted(plainName, strongestPercent, percent));
    }
  }
}
