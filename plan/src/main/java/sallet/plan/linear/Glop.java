package sallet.plan.linear;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Linear programmes solved by the native simplex solver. */
final class Glop implements LinearProgramme {
  static {
    Loader.loadNativeLibraries();
  }

  /**
   * Loads the native library.
   *
   * @throws LinkageError where there is none for this system
   */
  static void load() {
    // The class has loaded it by the time this is called.
  }

  /** Presolve and scaling would change the matrix each time, and with it the last basis. */
  private static final String SAME_MATRIX = "use_preprocessing:false use_scaling:false ";

  private final MPSolver solver = Objects.requireNonNull(MPSolver.createSolver("GLOP"), "GLOP");
  private final List<MPConstraint> rows = new ArrayList<>();
  private final List<MPVariable> columns = new ArrayList<>();

  Glop() {
    solver.objective().setMinimization();
  }

  @Override
  public int row(double lowest, double highest) {
    rows.add(solver.makeConstraint(lowest, highest));
    return rows.size() - 1;
  }

  @Override
  public int column(double cost) {
    MPVariable column = solver.makeNumVar(0, FREE, "");
    solver.objective().setCoefficient(column, cost);
    columns.add(column);
    return columns.size() - 1;
  }

  @Override
  public void set(int row, int column, double coefficient) {
    rows.get(row).setCoefficient(columns.get(column), coefficient);
  }

  @Override
  public void lowest(int row, double lowest) {
    rows.get(row).setLb(lowest);
  }

  @Override
  public boolean solve(Change change) {
    String start = SAME_MATRIX + "use_dual_simplex:" + (change == Change.BOUNDS);
    if (!solver.setSolverSpecificParametersAsString(start)) {
      throw new IllegalStateException("the solver does not know " + start);
    }
    if (solver.solve() == MPSolver.ResultStatus.OPTIMAL) {
      return true;
    }
    solver.reset();
    return solver.solve() == MPSolver.ResultStatus.OPTIMAL;
  }

  @Override
  public double objective() {
    return solver.objective().value();
  }

  @Override
  public double value(int column) {
    return columns.get(column).solutionValue();
  }

  @Override
  public double dual(int row) {
    return rows.get(row).dualValue();
  }

  @Override
  public void close() {
    solver.delete();
  }
}
