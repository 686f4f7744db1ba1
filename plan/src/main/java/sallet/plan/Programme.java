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

  /** What has changed since the last solution. */
  enum Start {
    /** Columns were added: the last basis stays feasible, the primal simplex goes on from it. */
    NEW_COLUMNS("use_dual_simplex:false"),
    /** Only bounds moved: the last basis stays optimal, the dual simplex makes it feasible. */
    NEW_BOUNDS("use_dual_simplex:true");

    /** Presolve and scaling would change the matrix each time, and with it the last basis. */
    private static final String SAME_MATRIX = "use_preprocessing:false use_scaling:false ";

    private final String parameters;

    Start(String parameters) {
      this.parameters = SAME_MATRIX + parameters;
    }
  }

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

  /** A linear programme. */
  static Programme linear(Instance instance) {
    Programme p = new Programme(instance, "GLOP");
    p.startFrom(Start.NEW_COLUMNS);
    return p;
  }

  /** Tells the solver how to use its last basis. */
  void startFrom(Start start) {
    if (!solver.setSolverSpecificParametersAsString(start.parameters)) {
      throw new IllegalStateException("the solver does not know " + start.parameters);
    }
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
