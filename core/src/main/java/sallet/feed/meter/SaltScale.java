package sallet.feed.meter;

import java.util.List;
import java.util.Map;
import sallet.feed.EmbeddedTable;
import sallet.feed.ion.Composition;
import sallet.feed.ion.Formula;
import sallet.feed.ion.Ion;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Conductivity;

/**
 * Meters that convert conductivity to "ppm" of one salt by a curve instead of one factor.
 *
 * <p>{@link #shownPpm} is what such a meter shows, from a printed conversion table; {@link
 * #trueMgL} is the mass of the salt that really has the conductivity, from the conductivity model.
 * The two agree within 6 % but near 2.8 and 9 mS/cm, where the printed table uses rounded factors.
 */
public enum SaltScale {
  KCL,
  NACL,
  /** 40 % Na2SO4, 40 % NaHCO3, 20 % NaCl by mass. */
  MIX_442;

  private static final int ROUNDS = 60;

  /** What the meter shows, ppm: the printed factor, straight lines over the logarithm of EC. */
  public double shownPpm(double msCm25) {
    List<Map<String, String>> rows =
        EmbeddedTable.rows("ppm-curves.csv").stream()
            .filter(r -> EmbeddedTable.text(r, "curve").equals(name()))
            .toList();
    double uSCm = 1000 * msCm25;
    Map<String, String> left = rows.get(0);
    for (Map<String, String> right : rows) {
      double at = EmbeddedTable.number(right, "uSCm");
      if (uSCm <= at || right == rows.get(rows.size() - 1)) {
        double from = EmbeddedTable.number(left, "uSCm");
        double share = at == from ? 1 : Math.log(Math.min(uSCm, at) / from) / Math.log(at / from);
        double factor = (1 - share) * factor(left) + share * factor(right);
        return factor * uSCm;
      }
      left = right;
    }
    throw new IllegalStateException("no curve " + name());
  }

  private static double factor(Map<String, String> row) {
    return EmbeddedTable.number(row, "ppm") / EmbeddedTable.number(row, "uSCm");
  }

  /** Mass of the salt in a litre with the conductivity at 25 °C, mg/L. */
  public double trueMgL(double msCm25) {
    double low = 0;
    double high = 2000 * msCm25 + 1;
    for (int i = 0; i < ROUNDS; i++) {
      double middle = (low + high) / 2;
      if (Conductivity.msCm25(solution(middle), Carbon.CLOSED) < msCm25) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private Composition solution(double mgL) {
    return switch (this) {
      case KCL -> salt("KCl", mgL, Ion.POTASSIUM, 1, Ion.CHLORIDE);
      case NACL -> salt("NaCl", mgL, Ion.SODIUM, 1, Ion.CHLORIDE);
      case MIX_442 ->
          salt("Na2SO4", 0.4 * mgL, Ion.SODIUM, 2, Ion.SULFATE)
              .plus(salt("NaHCO3", 0.4 * mgL, Ion.SODIUM, 1, Ion.CARBON))
              .plus(salt("NaCl", 0.2 * mgL, Ion.SODIUM, 1, Ion.CHLORIDE));
    };
  }

  private static Composition salt(String formula, double mgL, Ion cation, int cations, Ion other) {
    double mmol = mgL / Formula.parse(formula).molarMass();
    return Composition.of(cation, cations * mmol).with(other, mmol);
  }
}
