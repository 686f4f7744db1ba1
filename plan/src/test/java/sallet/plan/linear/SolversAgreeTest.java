package sallet.plan.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The solver in plain Java against the native one and against a library on random programmes that
 * grow as those of a plan do, and against what every minimum of a linear programme must satisfy.
 */
class SolversAgreeTest {
  private static final int PROGRAMMES = 400;
  private static final int STAGES = 4;
  private static final double TOLERANCE = 1e-6;

  /** One programme, built alike in every solver. */
  private static final class Twin {
    final SplittableRandom random;
    final LinearProgramme java = LinearSolver.JAVA.programme();
    final LinearProgramme glop = LinearSolver.NATIVE.programme();
    final List<double[]> rows = new ArrayList<>();
    final List<Double> costs = new ArrayList<>();
    final List<double[]> columns = new ArrayList<>();

    Twin(long seed) {
      random = new SplittableRandom(seed);
    }

    void addRow() {
      double at = random.nextInt(-3, 12);
      double[] bounds =
          switch (random.nextInt(5)) {
            case 0 -> new double[] {at, at};
            case 1 -> new double[] {at, LinearProgramme.FREE};
            case 2 -> new double[] {at, at + random.nextInt(1, 8)};
            default -> new double[] {-LinearProgramme.FREE, Math.abs(at)};
          };
      assertThat(java.row(bounds[0], bounds[1])).isEqualTo(glop.row(bounds[0], bounds[1]));
      rows.add(bounds);
    }

    void addColumn() {
      double cost = random.nextInt(6) == 0 ? random.nextInt(-5, 0) : random.nextInt(0, 20);
      int column = java.column(cost);
      assertThat(glop.column(cost)).isEqualTo(column);
      costs.add(cost);
      columns.add(new double[0]);
      for (int i = 0; i < rows.size(); i++) {
        if (random.nextInt(3) == 0) {
          set(i, column, random.nextBoolean() ? random.nextInt(-4, 9) : random.nextDouble(-2, 5));
        }
      }
    }

    void set(int row, int column, double coefficient) {
      java.set(row, column, coefficient);
      glop.set(row, column, coefficient);
      double[] longer = Arrays.copyOf(columns.get(column), rows.size());
      longer[row] = coefficient;
      columns.set(column, longer);
    }

    void raise(int row) {
      double low = Math.min(rows.get(row)[1], random.nextInt(0, 4));
      java.lowest(row, low);
      glop.lowest(row, low);
      rows.get(row)[0] = low;
    }

    double coefficient(int row, int column) {
      return row < columns.get(column).length ? columns.get(column)[row] : 0;
    }
  }

  @Test
  void solversAgreeWhileProgrammesGrow() {
    int minima = 0;
    for (long seed = 0; seed < PROGRAMMES; seed++) {
      Twin twin = new Twin(seed);
      for (int i = twin.random.nextInt(1, 25); i > 0; i--) {
        twin.addRow();
      }
      for (int i = twin.random.nextInt(1, 40); i > 0; i--) {
        twin.addColumn();
      }
      for (int stage = 0; stage < STAGES; stage++) {
        LinearProgramme.Change change = stage == 0 ? LinearProgramme.Change.COLUMNS : grow(twin);
        boolean native_ = twin.glop.solve(change);
        boolean ours = twin.java.solve(change);
        assertThat(ours).as("seed %d, stage %d", seed, stage).isEqualTo(native_);
        if (ours) {
          minima++;
          assertThat(twin.java.objective())
              .as("seed %d, stage %d", seed, stage)
              .isCloseTo(
                  twin.glop.objective(), within(1e-6 * (1 + Math.abs(twin.glop.objective()))));
          isAMinimum(twin, twin.java, "java, seed " + seed);
          isAMinimum(twin, twin.glop, "native, seed " + seed);
          if (stage == STAGES - 1) {
            assertThat(twin.java.objective())
                .isCloseTo(byLibrary(twin), within(1e-5 * (1 + Math.abs(twin.java.objective()))));
          }
        }
      }
      twin.java.close();
      twin.glop.close();
    }
    assertThat(minima).as("programmes with a minimum").isGreaterThan(PROGRAMMES);
  }

  private static LinearProgramme.Change grow(Twin twin) {
    int what = twin.random.nextInt(3);
    if (what < 2) {
      twin.raise(twin.random.nextInt(twin.rows.size()));
    }
    if (what == 0) {
      return LinearProgramme.Change.BOUNDS;
    }
    for (int i = twin.random.nextInt(3); i > 0; i--) {
      twin.addRow();
      for (int j = 0; j < twin.columns.size(); j++) {
        if (twin.random.nextInt(4) == 0) {
          twin.set(twin.rows.size() - 1, j, twin.random.nextInt(1, 4));
        }
      }
    }
    for (int i = twin.random.nextInt(1, 8); i > 0; i--) {
      twin.addColumn();
    }
    return LinearProgramme.Change.COLUMNS;
  }

  /** Feasible, no reduced cost of the wrong sign, and complementary slackness. */
  private static void isAMinimum(Twin twin, LinearProgramme solved, String which) {
    double dualValue = 0;
    for (int i = 0; i < twin.rows.size(); i++) {
      double activity = 0;
      for (int j = 0; j < twin.columns.size(); j++) {
        activity += twin.coefficient(i, j) * solved.value(j);
      }
      double low = twin.rows.get(i)[0];
      double high = twin.rows.get(i)[1];
      assertThat(activity).as("%s, row %d", which, i).isBetween(low - 1e-5, high + 1e-5);
      double dual = solved.dual(i);
      if (dual > TOLERANCE) {
        assertThat(activity).as("%s, row %d", which, i).isCloseTo(low, within(1e-5));
      }
      if (dual < -TOLERANCE) {
        assertThat(activity).as("%s, row %d", which, i).isCloseTo(high, within(1e-5));
      }
      dualValue += dual * activity;
    }
    for (int j = 0; j < twin.columns.size(); j++) {
      double reduced = twin.costs.get(j);
      for (int i = 0; i < twin.rows.size(); i++) {
        reduced -= solved.dual(i) * twin.coefficient(i, j);
      }
      assertThat(solved.value(j)).isGreaterThanOrEqualTo(-TOLERANCE);
      assertThat(reduced).as("%s, column %d", which, j).isGreaterThan(-1e-5);
      assertThat(reduced * solved.value(j))
          .as("%s, column %d", which, j)
          .isCloseTo(0, within(1e-3));
    }
    assertThat(dualValue).isCloseTo(solved.objective(), within(1e-4 * (1 + Math.abs(dualValue))));
  }

  private static double byLibrary(Twin twin) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    List<Variable> variables = new ArrayList<>();
    for (double cost : twin.costs) {
      variables.add(model.addVariable().lower(0).weight(cost));
    }
    for (int i = 0; i < twin.rows.size(); i++) {
      Expression row = model.addExpression();
      if (Double.isFinite(twin.rows.get(i)[0])) {
        row.lower(BigDecimal.valueOf(twin.rows.get(i)[0]));
      }
      if (Double.isFinite(twin.rows.get(i)[1])) {
        row.upper(BigDecimal.valueOf(twin.rows.get(i)[1]));
      }
      for (int j = 0; j < variables.size(); j++) {
        row.set(variables.get(j), twin.coefficient(i, j));
      }
    }
    Optimisation.Result result = model.minimise();
    return result.getValue();
  }
}
