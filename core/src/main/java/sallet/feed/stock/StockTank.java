package sallet.feed.stock;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sallet.feed.ion.Composition;
import sallet.feed.product.Product;
import sallet.feed.solution.Carbon;
import sallet.feed.solution.Mineral;
import sallet.feed.solution.SolutionState;
import sallet.feed.solution.Speciation;

/**
 * One tank of concentrate.
 *
 * @param name A, B or C
 * @param gramsPerL amounts in a litre of the tank, g/L (mL/L for liquids)
 * @param coldestC lowest temperature it will see, °C
 */
public record StockTank(String name, Map<Product, Double> gramsPerL, double coldestC) {
  /** Sum of shares of each salt's own solubility that is still taken as clear (judgement). */
  public static final double FULLEST = 0.8;

  public StockTank {
    gramsPerL = Collections.unmodifiableMap(new LinkedHashMap<>(gramsPerL));
  }

  /** What is in a litre. */
  public Composition composition() {
    Composition sum = Composition.EMPTY;
    for (Map.Entry<Product, Double> entry : gramsPerL.entrySet()) {
      sum = sum.plus(entry.getKey().perUnit().times(entry.getValue()));
    }
    return sum;
  }

  /** Sum over the salts of amount over solubility at the coldest temperature. */
  public double fullness() {
    return gramsPerL.entrySet().stream()
        .mapToDouble(
            e -> e.getKey().solubility().map(s -> e.getValue() / s.gL(coldestC)).orElse(0.0))
        .sum();
  }

  /** The tank at its coldest. */
  public SolutionState state() {
    return Speciation.at(coldestC).solve(composition(), Carbon.CLOSED);
  }

  /** Solids that would fall out, and whether too much is to be dissolved. */
  public List<String> troubles() {
    List<String> troubles = new java.util.ArrayList<>();
    if (fullness() > FULLEST) {
      troubles.add(
          "Tank %s: the salts fill %.0f %% of what dissolves at %.0f °C, %.0f %% is the limit"
              .formatted(name, 100 * fullness(), coldestC, 100 * FULLEST));
    }
    SolutionState state = state();
    for (Mineral mineral : Mineral.values()) {
      double index = mineral.saturationIndex(state);
      if (index > 0) {
        troubles.add(
            "Tank %s: %s would fall out (saturation index %+.1f)"
                .formatted(name, mineral.plainName(), index));
      }
    }
    return troubles;
  }
}
