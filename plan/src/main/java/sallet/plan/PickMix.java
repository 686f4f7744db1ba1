package sallet.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sallet.plan.linear.LinearProgramme;

/**
 * The best picks for plants whose sowing, moves and end are settled: a linear plan of its own over
 * the pick sequences of each skeleton, priced by its graph. The mix may be fractional, because a
 * plant picked by an average of sequences gives at least their average grams (growth is concave in
 * leaf area).
 */
final class PickMix implements AutoCloseable {
  private static final double IMPROVES = -1e-3;
  private static final int MOST_ROUNDS = 12;

  /**
   * @param value points, seeds and all
   * @param plants the grams to take from each plant
   * @param lives the lives they mix
   * @param lossByBowl points each bowl loses: grams missing, wasted or of one kind too much
   */
  record Result(double value, List<Plants> plants, List<Life> lives, List<Double> lossByBowl) {}

  private final Instance instance;
  private final LinearProgramme programme;
  private final Eating eating;
  private final List<Mixed> mixed = new ArrayList<>();
  private final double pickCost;
  private double seedPoints;

  private static final class Mixed {
    final Life.Skeleton skeleton;
    final int count;
    final LifeGraph graph;
    final int row;
    final List<Life> lives = new ArrayList<>();
    final List<Integer> columns = new ArrayList<>();
    final Set<Picks> known = new HashSet<>();

    Mixed(Life.Skeleton skeleton, int count, LifeGraph graph, int row) {
      this.skeleton = skeleton;
      this.count = count;
      this.graph = graph;
      this.row = row;
    }
  }

  private PickMix(Instance instance, double pickCost) {
    this.pickCost = pickCost;
    this.instance = instance;
    programme = instance.solver().programme();
    eating = new Eating(instance, programme);
  }

  /**
   * The best picks.
   *
   * @param counts plants of each skeleton
   * @param known lives to begin with
   * @param pickCost points for each pick of leaves, which are not counted in the value
   * @return empty when a skeleton cannot be lived, such as a lift of plants that stay too small
   */
  static Optional<Result> of(
      Instance instance,
      Map<Course, LifeGraph> graphs,
      Map<Life.Skeleton, Integer> counts,
      List<Life> known,
      double pickCost) {
    Map<Life.Skeleton, List<Life>> lives =
        known.stream()
            .filter(l -> counts.containsKey(l.skeleton()))
            .collect(Collectors.groupingBy(Life::skeleton));
    try (PickMix mix = new PickMix(instance, pickCost)) {
      for (Map.Entry<Life.Skeleton, Integer> e : counts.entrySet()) {
        LifeGraph graph = Objects.requireNonNull(graphs.get(e.getKey().course()));
        if (!mix.add(e.getKey(), e.getValue(), graph, lives.getOrDefault(e.getKey(), List.of()))) {
          return Optional.empty();
        }
      }
      return Optional.of(mix.solve());
    }
  }

  private boolean add(Life.Skeleton s, int count, LifeGraph graph, List<Life> known) {
    Mixed m = new Mixed(s, count, graph, programme.row(count, count));
    known.forEach(l -> add(m, l));
    if (m.lives.isEmpty() && !add(m, anyLife(s, graph))) {
      return false;
    }
    mixed.add(m);
    seedPoints += count * s.course().seedPoints();
    return true;
  }

  /** A life of a skeleton that takes all it can while every gram is missing. */
  private Life anyLife(Life.Skeleton s, LifeGraph graph) {
    double[] scarce = new double[instance.calendar().bowls()];
    Arrays.fill(scarce, Weights.SHORT);
    Offer offer = new Offer(s.course(), scarce, new double[instance.calendar().slots().size() + 1]);
    offer.only(s);
    graph.bestValue(offer);
    return Life.lived(s.course(), graph.bestPath(offer));
  }

  private boolean add(Mixed m, Life life) {
    if (!life.skeleton().equals(m.skeleton) || !m.known.add(life.picks())) {
      return false;
    }
    int column =
        programme.column(Weights.WASTE * life.clearedGrams() + pickCost * life.leafPicks());
    programme.set(m.row, column, 1);
    eating.setGrams(column, life);
    m.lives.add(life);
    m.columns.add(column);
    return true;
  }

  private Result solve() {
    boolean more = true;
    for (int round = 0; more && round < MOST_ROUNDS; round++) {
      optimise();
      more = addBetter();
    }
    if (more) {
      optimise();
    }
    double trouble = 0;
    List<Life> used = new ArrayList<>();
    for (Mixed m : mixed) {
      for (int i = 0; i < m.lives.size(); i++) {
        double x = programme.value(m.columns.get(i));
        if (x > 1e-6) {
          used.add(m.lives.get(i));
          trouble += x * pickCost * m.lives.get(i).leafPicks();
        }
      }
    }
    return new Result(
        programme.objective() - trouble + seedPoints,
        mixed.stream().map(this::plants).toList(),
        used,
        IntStream.range(0, instance.calendar().bowls()).mapToObj(eating::lossPoints).toList());
  }

  private void optimise() {
    if (!programme.solve(LinearProgramme.Change.COLUMNS)) {
      throw new IllegalStateException("the picks could not be worked out");
    }
  }

  private boolean addBetter() {
    Prices prices = Prices.ofGrams(eating.gramPrices(), instance);
    List<Double> duals = mixed.stream().map(m -> programme.dual(m.row)).toList();
    boolean added = false;
    for (int i = 0; i < mixed.size(); i++) {
      Mixed m = mixed.get(i);
      Offer offer = prices.offer(m.skeleton.course(), pickCost);
      offer.only(m.skeleton);
      if (-m.graph.bestValue(offer) - duals.get(i) < IMPROVES) {
        added |= add(m, Life.lived(m.skeleton.course(), m.graph.bestPath(offer)));
      }
    }
    return added;
  }

  private Plants plants(Mixed m) {
    List<Double> grams = new ArrayList<>();
    for (int t = 0; t <= m.skeleton.end(); t++) {
      double sum = 0;
      for (int i = 0; i < m.lives.size(); i++) {
        sum += programme.value(m.columns.get(i)) * m.lives.get(i).grams(t);
      }
      grams.add(sum / m.count);
    }
    return new Plants(m.skeleton, m.count, grams);
  }

  @Override
  public void close() {
    programme.close();
  }
}
