package sallet.feed.meter;

import java.util.List;
import java.util.Map;
import sallet.feed.EmbeddedTable;
import sallet.feed.FeedFault;

/**
 * Check of a conductivity meter with a potassium chloride standard.
 *
 * <p>Standards: Pratt, Koch, Wu and Berezansky (2001, Pure Appl. Chem. 73:1783), as tabulated in
 * the CRC Handbook, 0.01, 0.1 and 1 mol/kg, 0 to 50 °C, without the conductivity of the water
 * itself.
 *
 * @param factor multiply readings by this
 * @param expectedMsCm what the standard has at that temperature, mS/cm
 * @param advice what to do about it
 */
public record CellCheck(double factor, double expectedMsCm, String advice) {
  private static final double FINE = 0.03;
  private static final double DOUBTFUL = 0.15;

  /** Conductivity of a standard, mS/cm; straight lines between the table's temperatures. */
  public static double standardMsCm(double molKg, double temperatureC) {
    List<Map<String, String>> rows =
        EmbeddedTable.rows("kcl-standard.csv").stream()
            .filter(r -> EmbeddedTable.number(r, "molKg") == molKg)
            .toList();
    if (rows.isEmpty()) {
      throw new FeedFault("The standard must be 0.01, 0.1 or 1 mol/kg KCl, was " + molKg);
    }
    for (int i = 1; i < rows.size(); i++) {
      double right = EmbeddedTable.number(rows.get(i), "temperatureC");
      double left = EmbeddedTable.number(rows.get(i - 1), "temperatureC");
      if (temperatureC >= left && temperatureC <= right) {
        double share = (temperatureC - left) / (right - left);
        return ((1 - share) * EmbeddedTable.number(rows.get(i - 1), "uSCm")
                + share * EmbeddedTable.number(rows.get(i), "uSCm"))
            / 1000;
      }
    }
    throw new FeedFault("The standard's temperature must be 0 to 50 °C, was " + temperatureC);
  }

  /**
   * Conductivity of water that stands in air, to be added to a weak standard, mS/cm: 0.58 µS/cm at
   * 0 °C, 1.1 at 25, 1.61 at 50 in the same table, a straight line within 2 %.
   */
  public static double waterMsCm(double temperatureC) {
    return (0.58 + 0.0206 * temperatureC) / 1000;
  }

  /** Compares a reading without temperature compensation with the standard. */
  public static CellCheck of(double molKg, double temperatureC, double readingMsCm) {
    double expected = standardMsCm(molKg, temperatureC) + waterMsCm(temperatureC);
    if (!(readingMsCm > 0)) {
      throw new FeedFault("A reading must be above 0 mS/cm, was " + readingMsCm);
    }
    double factor = expected / readingMsCm;
    double off = Math.abs(factor - 1);
    String advice =
        off <= FINE
            ? "The meter is right within 3 %"
            : off <= DOUBTFUL
                ? "Calibrate the meter, or multiply its readings by %.3f".formatted(factor)
                : "Off by more than 15 %: clean the cell, use fresh standard, check the unit and compensation";
    return new CellCheck(factor, expected, advice);
  }
}
