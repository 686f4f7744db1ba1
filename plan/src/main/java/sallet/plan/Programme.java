package sallet.plan;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Objects;

/**
 * The rows all forms of the plan share: bowls, kinds, what is picked and eaten, places. Lives come
 * in as columns.
 *
 * <pre>
 * supply k,w   sum of grams of lives - eaten now - eaten next week - wasted = 0
 * bowl   w     eaten of all kinds + missing = aim
 * kind   k,w   eaten of the kind - excess &lt;= share of the aim
 * cells, nursery, pots of a group, per slot   sum of use &lt;= number
 * </pre>
 */
final class Programme implements AutoCloseable {
  private static final double INF = Double.POSITIVE_INFINITY;

  /**
   * Without presolve and scaling the matrix the solver sees stays the same when columns are added,
   * so it goes on from its last basis: seven times faster over a whole column generation.
   */
  private static final String WARM_START = "use_preprocessing:false use_scaling:false";

  static {
    Loader.loadNativeLibraries();
  }

  final Instance instance;
  final MPSolver solver;
  private final MPConstraint[][] supply;
  private final MPConstraint[] cells;
  private final MPConstraint[] nursery;
  private final MPConstraint[][] pots;
  final Eating eating;

  /** A linear programme that starts each solution from the last one. */
  static Programme linear(Instance instance) {
    Programme p = new Programme(instance, "GLOP");
    if (!p.solver.setSolverSpecificParametersAsString(WARM_START)) {
      throw new IllegalStateException("the solver does not know " + WARM_START);
    }
    return p;
  }

  private Programme(Instance instance, String engine) {
    this.instance = instance;
    this.solver = Objects.requireNonNull(MPSolver.createSolver(engine), engine);
    int crops = instance.crops().size();
    int bowls = instance.calendar().bowls();
    supply = new MPConstraint[crops][bowls];
    for (int k = 0; k < crops; k++) {
      for (int w = 0; w < bowls; w++) {
        if (instance.reachable().get(w) && instance.calendar().slotOfBowl(w) >= 0) {
          supply[k][w] = solver.makeConstraint(0, 0);
        }
      }
    }
    eating = new Eating(instance, solver, supply);
    int slots = instance.calendar().slots().size();
    cells = rows(slots, instance.at().cells());
    nursery = rows(slots, instance.at().places());
    pots = new MPConstraint[instance.at().groups().size()][];
    for (int g = 0; g < pots.length; g++) {
      pots[g] = rows(slots, instance.at().groups().get(g).pots().size());
    }
    solver.objective().setMinimization();
  }

  private MPConstraint[] rows(int slots, double capacity) {
    MPConstraint[] rows = new MPConstraint[slots];
    for (int i = 0; i < slots; i++) {
      rows[i] = solver.makeConstraint(-INF, capacity);
    }
    return rows;
  }

  /** Adds the grams of a life to a variable. */
  void setGrams(MPVariable x, Life life) {
    Course c = life.course();
    for (int t = 0; t <= life.end(); t++) {
      MPConstraint row = supply[c.cropIndex][c.bowls[t]];
      if (life.grams(t) > 0 && row != null) {
        row.setCoefficient(x, life.grams(t));
      }
    }
  }

  /** Adds the places of a skeleton to a variable. */
  void setPlaces(MPVariable x, Life.Skeleton s, double cellsPerPlant) {
    Course c = s.course();
    for (int i = c.sowSlot; i < c.nurserySlot; i++) {
      cells[i].setCoefficient(x, cellsPerPlant);
    }
    for (int i = c.nurserySlot; i < c.benchSlot; i++) {
      nursery[i].setCoefficient(x, 1);
    }
    for (int i = c.benchSlot; i < s.endSlot(); i++) {
      pots[c.group][i].setCoefficient(x, 1);
    }
  }

  /** Sets what one of a variable costs, points. */
  void setCost(MPVariable x, double points) {
    solver.objective().setCoefficient(x, points);
  }

  /** A new variable, 0 or more. */
  MPVariable variable() {
    return solver.makeNumVar(0, INF, "");
  }

  /** The duals of the last solution. */
  Prices prices() {
    int bowls = instance.calendar().bowls();
    double[][] gram = new double[supply.length][bowls];
    for (int k = 0; k < supply.length; k++) {
      for (int w = 0; w < bowls; w++) {
        gram[k][w] = supply[k][w] == null ? 0 : supply[k][w].dualValue();
      }
    }
    double[][] pot = new double[pots.length][];
    for (int g = 0; g < pots.length; g++) {
      pot[g] = costs(pots[g]);
    }
    return new Prices(gram, costs(cells), costs(nursery), pot);
  }

  private static double[] costs(MPConstraint[] rows) {
    double[] cost = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      cost[i] = Math.max(0, -rows[i].dualValue());
    }
    return cost;
  }

  @Override
  public void close() {
    solver.delete();
  }
}
