package sallet.plan;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The plan with fractions of plants, by column generation: lives enter while the graphs find one
 * whose reduced cost is below zero (Dantzig and Wolfe 1960; Gilmore and Gomory 1961).
 *
 * <p>First with grams as the graphs credit them, which bounds every plan of the grid from below;
 * then with the grams of the growth model itself.
 */
final class LinearPlan {
  private static final int LIVES_PER_ROUND = 400;
  private static final double IMPROVES = -1e-4;

  /**
   * @param lives lives of the growth model that may be worth living, with their reduced cost
   * @param bound points no plan of the grid can beat; NaN when time ran out before it was proven
   * @param value points of the best plan with fractions of plants found
   * @param rounds rounds of the first and the second phase
   */
  record Result(List<Priced> lives, double bound, double value, String rounds) {}

  /** A life and its reduced cost at the end. */
  record Priced(Life life, double reducedCost) {}

  private final Instance instance;
  private final List<LifeGraph> graphs;
  private final double[] cellsPerPlant;
  private final Consumer<String> progress;

  LinearPlan(
      Instance instance,
      List<LifeGraph> graphs,
      double[] cellsPerPlant,
      Consumer<String> progress) {
    this.instance = instance;
    this.graphs = graphs;
    this.cellsPerPlant = cellsPerPlant;
    this.progress = progress;
  }

  Result solve(Deadline deadline) {
    Phase credited = new Phase(true);
    credited.run(List.of(), deadline);
    Phase lived = new Phase(false);
    List<Life> start =
        credited.lives.stream().parallel().map(l -> Life.lived(l.course(), l.picks())).toList();
    lived.run(start, deadline);
    List<Priced> priced =
        lived.lives.stream()
            .map(l -> new Priced(l, lived.prices.reducedCost(l, cellsOf(l.course()))))
            .toList();
    return new Result(
        priced,
        credited.converged ? credited.value : Double.NaN,
        lived.value,
        credited.rounds + " + " + lived.rounds);
  }

  private double cellsOf(Course course) {
    return cellsPerPlant[course.cropIndex];
  }

  /** One column generation: with credited or with lived grams. */
  private final class Phase {
    private final boolean credit;
    private final List<Life> lives = new ArrayList<>();
    private final Set<Object> known = new HashSet<>();
    private Prices prices =
        new Prices(new double[0][], new double[0], new double[0], new double[0][]);
    private double value = Double.POSITIVE_INFINITY;
    private boolean converged;
    private int rounds;

    Phase(boolean credit) {
      this.credit = credit;
    }

    void run(List<Life> start, Deadline deadline) {
      try (Programme programme = new Programme(instance, "GLOP")) {
        start.forEach(l -> add(programme, l));
        while (true) {
          MPSolver.ResultStatus status = programme.solver.solve();
          if (status != MPSolver.ResultStatus.OPTIMAL) {
            programme.solver.reset();
            status = programme.solver.solve();
          }
          if (status != MPSolver.ResultStatus.OPTIMAL) {
            return;
          }
          rounds++;
          value = programme.solver.objective().value();
          prices = programme.prices();
          List<Life> better = better();
          converged = better.isEmpty();
          progress.accept(
              String.format(
                  "%s plan with fractions, round %d: %.0f points, %d lives",
                  credit ? "Bounding" : "Exact", rounds, value, lives.size()));
          if (converged || deadline.over()) {
            return;
          }
          better.forEach(l -> add(programme, l));
        }
      }
    }

    private void add(Programme programme, Life life) {
      if (known.add(List.of(life.course(), life.picks()))) {
        lives.add(life);
        MPVariable x = programme.variable(Double.POSITIVE_INFINITY, false);
        programme.setGrams(x, life);
        programme.setPlaces(
            x,
            life.skeleton(),
            cellsOf(life.course()),
            Weights.seeds(life.course().rule) + Weights.WASTE * life.clearedGrams());
      }
    }

    /** The best improving life of every crop, sowing day and group. */
    private List<Life> better() {
      List<Candidate> candidates =
          graphs.parallelStream().flatMap(g -> candidate(g).stream()).toList();
      Map<Object, Candidate> best = new HashMap<>();
      candidates.forEach(c -> best.merge(c.key(), c, (a, b) -> a.reduced <= b.reduced ? a : b));
      return best.values().stream()
          .sorted(Comparator.comparingDouble((Candidate c) -> c.reduced))
          .limit(LIVES_PER_ROUND)
          .map(c -> c.life)
          .toList();
    }

    private Optional<Candidate> candidate(LifeGraph graph) {
      Course c = graph.course;
      double[] gram = prices.gramsOf(c.cropIndex);
      double[] pots = prices.potsOf(c.group);
      double entry = prices.entryCost(c, cellsOf(c));
      double reduced = entry - graph.bestValue(gram, pots, Weights.WASTE);
      if (reduced > IMPROVES) {
        return Optional.empty();
      }
      Picks path = graph.bestPath(gram, pots, Weights.WASTE);
      Life life = credit ? Life.credited(graph, path) : Life.lived(c, path);
      double exact = credit ? reduced : prices.reducedCost(life, cellsOf(c));
      if (exact > IMPROVES || known.contains(List.of(c, life.picks()))) {
        return Optional.empty();
      }
      return Optional.of(new Candidate(life, exact));
    }
  }

  private record Candidate(Life life, double reduced) {
    Object key() {
      Course c = life.course();
      return List.of(c.cropIndex, c.sowSlot, c.group);
    }
  }
}
