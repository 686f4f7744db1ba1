package sallet.feed.solution;

import java.util.Arrays;

/**
 * Finds the free amounts that satisfy all mass balances at given activity coefficients.
 *
 * <p>With x the logarithms of the free amounts, the balances are the zero gradient of the convex
 * function φ(x) = Σ m(x) − Σ T x, where m are the amounts of all species and T the totals (the law
 * of mass action as a minimum; White, Johnson and Dantzig 1958, J. Chem. Phys. 28:751). Newton's
 * method with a line search therefore finds it from any start.
 */
final class MassBalance {
  private static final int MOST_STEPS = 300;
  private static final double LONGEST_STEP = 4;
  private static final double TOLERANCE = 1e-11;

  private final int parts;
  private final int species;
  private final double[][] stoichiometry;
  private final double[] total;
  private final boolean[] fixed;

  /** What the last value of φ may be wrong by, its terms being of both signs. */
  private double rounding;

  final double[] lnFree;
  final double[] lnFormation;
  final double[] amount;

  /**
   * @param stoichiometry parts in each species
   * @param total total of each part, mol/kg
   * @param fixed parts whose free amount is given and has no balance
   */
  MassBalance(double[][] stoichiometry, double[] total, boolean[] fixed) {
    this.stoichiometry = stoichiometry;
    this.total = total;
    this.fixed = fixed;
    this.parts = total.length;
    this.species = stoichiometry.length;
    this.lnFree = new double[parts];
    this.lnFormation = new double[species];
    this.amount = new double[species + parts];
  }

  /** Solves from the present {@link #lnFree}; {@link #amount} then holds species, then parts. */
  void solve() {
    double value = evaluate(lnFree);
    double[] trial = new double[parts];
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] gradient = gradient();
      if (balanced(gradient)) {
        return;
      }
      double[] direction = direction(gradient);
      double slope = 0;
      for (int i = 0; i < parts; i++) {
        slope += gradient[i] * direction[i];
      }
      double length = 1;
      double next;
      do {
        for (int i = 0; i < parts; i++) {
          trial[i] = lnFree[i] + length * direction[i];
        }
        next = evaluate(trial);
        length /= 2;
      } while (next > value + 1e-4 * length * slope + rounding && length > 1e-9);
      System.arraycopy(trial, 0, lnFree, 0, parts);
      value = next;
    }
    throw new IllegalStateException("no equilibrium found for totals " + Arrays.toString(total));
  }

  private double evaluate(double[] x) {
    double value = 0;
    double magnitude = 0;
    for (int s = 0; s < species; s++) {
      double ln = lnFormation[s];
      for (int i = 0; i < parts; i++) {
        ln += stoichiometry[s][i] * x[i];
      }
      amount[s] = Math.exp(ln);
      value += amount[s];
    }
    for (int i = 0; i < parts; i++) {
      amount[species + i] = Math.exp(x[i]);
      if (!fixed[i]) {
        value += amount[species + i] - total[i] * x[i];
        magnitude += amount[species + i] + Math.abs(total[i] * x[i]);
      }
    }
    rounding = 1e-14 * magnitude;
    return value;
  }

  private double[] gradient() {
    double[] gradient = new double[parts];
    for (int i = 0; i < parts; i++) {
      if (!fixed[i]) {
        double sum = amount[species + i] - total[i];
        for (int s = 0; s < species; s++) {
          sum += stoichiometry[s][i] * amount[s];
        }
        gradient[i] = sum;
      }
    }
    return gradient;
  }

  private boolean balanced(double[] gradient) {
    for (int i = 0; i < parts; i++) {
      double scale = Math.abs(total[i]) + amount[species + i];
      for (int s = 0; s < species; s++) {
        scale += Math.abs(stoichiometry[s][i]) * amount[s];
      }
      if (Math.abs(gradient[i]) > TOLERANCE * scale) {
        return false;
      }
    }
    return true;
  }

  /** Newton direction, shortened to the longest step, by Cholesky's method. */
  private double[] direction(double[] gradient) {
    double[][] l = hessian();
    double[] x = new double[parts];
    for (int i = 0; i < parts; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = l[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        l[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / l[j][j];
      }
      double sum = -gradient[i];
      for (int k = 0; k < i; k++) {
        sum -= l[i][k] * x[k];
      }
      x[i] = sum / l[i][i];
    }
    double longest = LONGEST_STEP;
    for (int i = parts - 1; i >= 0; i--) {
      for (int k = i + 1; k < parts; k++) {
        x[i] -= l[k][i] * x[k];
      }
      x[i] /= l[i][i];
      longest = Math.max(longest, Math.abs(x[i]));
    }
    for (int i = 0; i < parts; i++) {
      x[i] *= LONGEST_STEP / longest;
    }
    return x;
  }

  private double[][] hessian() {
    double[][] h = new double[parts][parts];
    for (int i = 0; i < parts; i++) {
      h[i][i] = fixed[i] ? 1 : amount[species + i];
    }
    for (int s = 0; s < species; s++) {
      for (int i = 0; i < parts; i++) {
        double weight = fixed[i] ? 0 : stoichiometry[s][i] * amount[s];
        for (int j = 0; weight != 0 && j <= i; j++) {
          if (!fixed[j]) {
            h[i][j] += weight * stoichiometry[s][j];
          }
        }
      }
    }
    return h;
  }
}
