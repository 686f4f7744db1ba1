package sallet.feed.solution;

import sallet.feed.ion.Composition;
import sallet.feed.ion.Ion;

/** How much gypsum a solution could dissolve, the measure of how near a stock is to clouding. */
public final class GypsumSolubility {
  private GypsumSolubility() {}

  /** Gypsum that dissolves until the solution is saturated, mmol/L; 0 when it is already. */
  public static double mmol(Composition totals, double temperatureC) {
    Speciation model = Speciation.at(temperatureC);
    double low = 0;
    double high = 1;
    while (index(model, totals, high) < 0) {
      low = high;
      high *= 2;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (index(model, totals, middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double index(Speciation model, Composition totals, double gypsumMmol) {
    Composition both =
        totals
            .plus(Composition.of(Ion.CALCIUM, gypsumMmol))
            .plus(Composition.of(Ion.SULFATE, gypsumMmol));
    return Mineral.GYPSUM.saturationIndex(model.solveAtPh(both, Carbon.CLOSED, 7));
  }
}
