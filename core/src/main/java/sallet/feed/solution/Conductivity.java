package sallet.feed.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import sallet.feed.EmbeddedTable;
import sallet.feed.ion.Composition;

/**
 * Electrical conductivity of a speciated solution.
 *
 * <p>κ = Σ λ m over the free ions, λ = λ0(T) − A(T) √I / (1 + B √I), with λ0 and A quadratic in
 * temperature and I the ionic strength of the whole solution (McCleskey, Nordstrom, Ryan and Ball
 * 2012, Geochim. Cosmochim. Acta 77:369). Neutral pairs carry nothing. Good to ±5 % for nutrient
 * solutions, ±8 % for hard waters, 0 to 60 °C, to about I = 1 mol/kg.
 */
public final class Conductivity {
  private static final Map<String, Row> ROWS =
      EmbeddedTable.rows("conductivity.csv").stream()
          .map(Row::of)
          .collect(Collectors.toUnmodifiableMap(Row::species, Function.identity()));

  /** Limiting conductivities of the phosphates, S cm²/mol (CRC Handbook, memory). */
  private static final Map<String, Double> PHOSPHATES =
      Map.of("PHOSPHATE", 33.0, Species.HYDROGEN_PHOSPHATE, 114.0, Species.PHOSPHATE, 207.0);

  /** Charged pairs, chelates and other large ions, S cm² per mol of charge (judgement). */
  private static final double LARGE_ION = 25;

  private Conductivity() {}

  private record Row(
      String species, double l2, double l1, double l0, double a2, double a1, double a0, double b) {
    static Row of(Map<String, String> row) {
      return new Row(
          EmbeddedTable.text(row, "species"),
          EmbeddedTable.number(row, "l2"),
          EmbeddedTable.number(row, "l1"),
          EmbeddedTable.number(row, "l0"),
          EmbeddedTable.number(row, "a2"),
          EmbeddedTable.number(row, "a1"),
          EmbeddedTable.number(row, "a0"),
          EmbeddedTable.number(row, "b"));
    }

    double lambda(double t, double root) {
      return (l2 * t + l1) * t + l0 - ((a2 * t + a1) * t + a0) * root / (1 + b * root);
    }
  }

  /**
   * What one kind of ion carries.
   *
   * @param species its name
   * @param lambda conductivity of a mole, S cm²/mol
   * @param mmol amount, mmol/L
   */
  public record Term(String species, double lambda, double mmol) {
    /** Its part of the conductivity, mS/cm. */
    public double msCm() {
      return lambda * mmol / 1000;
    }
  }

  /** Conductivity at the temperature of the state, mS/cm. */
  public static double msCm(SolutionState state) {
    return terms(state).stream().mapToDouble(Term::msCm).sum();
  }

  /** What each charged species carries at the temperature of the state. */
  public static List<Term> terms(SolutionState state) {
    double root = Math.sqrt(state.ionicStrengthMol());
    List<Term> terms = new ArrayList<>();
    for (Map.Entry<String, SolutionState.Amount> entry : state.species().entrySet()) {
      SolutionState.Amount amount = entry.getValue();
      if (amount.charge() != 0) {
        double lambda = lambda(entry.getKey(), amount.charge(), state.temperatureC(), root);
        terms.add(new Term(entry.getKey(), lambda, amount.mmol()));
      }
    }
    return terms;
  }

  /** Conductivity of a composition at 25 °C, mS/cm: what a meter that compensates shows. */
  public static double msCm25(Composition totals, Carbon carbon) {
    return msCm(Speciation.at(25).solve(totals, carbon));
  }

  private static double lambda(String species, int charge, double t, double root) {
    Row row = ROWS.get(species);
    if (row != null) {
      return row.lambda(t, root);
    }
    double atInfiniteDilution = PHOSPHATES.getOrDefault(species, LARGE_ION * Math.abs(charge));
    return kohlrausch(atInfiniteDilution * (1 + 0.02 * (t - 25)), root);
  }

  /** Decrease with concentration where no fitted row exists (after Onsager 1927; judgement). */
  private static double kohlrausch(double lambda0, double root) {
    return Math.max(0, lambda0 - 0.8 * (0.23 * lambda0 + 60) * root / (1 + root));
  }
}
