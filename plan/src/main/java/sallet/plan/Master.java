package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import sallet.plan.linear.LinearProgramme;

/**
 * The linear plan while lives keep entering: the restricted master problem of column generation
 * (Dantzig and Wolfe 1960; Gilmore and Gomory 1961), the graphs that find lives of negative reduced
 * cost, and rows that hold skeletons at a number of plants.
 */
final class Master implements AutoCloseable {
  /** A life with a reduced cost above this does not improve the plan, points. */
  private static final double IMPROVES = -1e-4;

  private static final int LIVES_PER_ROUND = 400;

  private final Instance instance;
  private final List<LifeGraph> graphs;
  private final boolean credit;
  private final LinearProgramme programme;
  private final Eating eating;
  private final Places places;
  private final List<Life> lives = new ArrayList<>();
  private final List<Integer> columns = new ArrayList<>();
  private final Set<Object> known = new HashSet<>();
  private final Map<Life.Skeleton, Held> held = new LinkedHashMap<>();
  private final Map<Course, List<Held>> heldByCourse = new HashMap<>();
  private Map<Life.Skeleton, Double> plants = Map.of();
  private Prices prices = Prices.none();
  private boolean grown = true;
  private double value = Double.POSITIVE_INFINITY;
  private double slack = Double.POSITIVE_INFINITY;

  /** A skeleton with a row that holds its plants at or above a number. */
  private static final class Held {
    final Life.Skeleton skeleton;
    final int row;
    double dual;

    Held(Life.Skeleton skeleton, int row) {
      this.skeleton = skeleton;
      this.row = row;
    }
  }

  /**
   * @param credit whether lives count with the grams their graph credits, which bounds every plan,
   *     or with those of the growth model
   */
  Master(Instance instance, List<LifeGraph> graphs, boolean credit) {
    this.instance = instance;
    this.graphs = graphs;
    this.credit = credit;
    this.programme = instance.solver().programme();
    this.eating = new Eating(instance, programme);
    this.places = new Places(instance, programme);
  }

  /** Solves the plan with the lives known so far; false when the solver gave up twice. */
  boolean solve() {
    boolean solved =
        programme.solve(grown ? LinearProgramme.Change.COLUMNS : LinearProgramme.Change.BOUNDS);
    grown = false;
    if (!solved) {
      return false;
    }
    value = programme.objective();
    prices = places.prices(eating.gramPrices());
    held.values().forEach(h -> h.dual = programme.dual(h.row));
    plants = new LinkedHashMap<>();
    for (int i = 0; i < lives.size(); i++) {
      double x = programme.value(columns.get(i));
      if (x > 1e-9) {
        plants.merge(lives.get(i).skeleton(), x, Double::sum);
      }
    }
    return true;
  }

  /** What grams and places are worth at the last solution. */
  Prices prices() {
    return prices;
  }

  /** Points of the last solution. */
  double value() {
    return value;
  }

  /**
   * Points by which a plan with all lives could still be better than the last solution, known after
   * {@link #addBetter}: the best reduced cost of each group and day of moving in times the pots,
   * and of each standing group times its plants.
   */
  double slack() {
    return slack;
  }

  List<Life> lives() {
    return lives;
  }

  void add(Life life) {
    if (!known.add(life.key())) {
      return;
    }
    grown = true;
    int column = programme.column(life.course().seedPoints() + Weights.WASTE * life.clearedGrams());
    lives.add(life);
    columns.add(column);
    eating.setGrams(column, life);
    places.set(column, life.skeleton());
    Held h = held.get(life.skeleton());
    if (h != null) {
      programme.set(h.row, column, 1);
    }
  }

  /** Adds the best improving life of every crop, sowing day and group; returns how many. */
  int addBetter() {
    List<Candidate> candidates =
        graphs.parallelStream().flatMap(g -> candidate(g).stream()).toList();
    slack = slackOf(candidates);
    Map<Object, Candidate> best = new HashMap<>();
    candidates.forEach(
        c -> best.merge(c.sowing(), c, (a, b) -> a.reducedCost <= b.reducedCost ? a : b));
    List<Candidate> chosen =
        best.values().stream()
            .filter(c -> c.exactCost < IMPROVES)
            .sorted(Comparator.comparingDouble(Candidate::exactCost))
            .limit(LIVES_PER_ROUND)
            .toList();
    int before = lives.size();
    chosen.forEach(c -> add(c.life));
    return lives.size() - before;
  }

  private double slackOf(List<Candidate> candidates) {
    Map<List<Integer>, Double> worst = new HashMap<>();
    for (Candidate c : candidates) {
      Course course = c.life.course();
      worst.merge(
          course.standing < 0 ? List.of(course.group, course.benchSlot) : List.of(course.standing),
          -c.reducedCost,
          Math::max);
    }
    double sum = 0;
    for (Map.Entry<List<Integer>, Double> e : worst.entrySet()) {
      int most =
          e.getKey().size() == 1
              ? instance.standing().get(e.getKey().get(0)).count()
              : instance.at().groups().get(e.getKey().get(0)).pots().size();
      sum += e.getValue() * most;
    }
    return sum;
  }

  private Optional<Candidate> candidate(LifeGraph graph) {
    Course c = graph.course;
    Offer offer = prices.offer(c);
    for (Held h : heldByCourse.getOrDefault(c, List.of())) {
      offer.addBonus(h.skeleton, h.dual);
    }
    double reduced = prices.entryCost(c) - graph.bestValue(offer);
    if (reduced > IMPROVES) {
      return Optional.empty();
    }
    Picks path = graph.bestPath(offer);
    Life life = credit ? Life.credited(graph, path, offer) : Life.lived(c, path);
    return Optional.of(new Candidate(life, reduced, credit ? reduced : reducedCost(life)));
  }

  /** Reduced cost of a life at the last solution. */
  private double reducedCost(Life life) {
    Held h = held.get(life.skeleton());
    return prices.reducedCost(life) - (h == null ? 0 : h.dual);
  }

  private record Candidate(Life life, double reducedCost, double exactCost) {
    Object sowing() {
      Course c = life.course();
      return List.of(c.cropIndex, c.sowSlot, c.group, c.standing);
    }
  }

  /** Plants of each skeleton in the last solution, fractions and all. */
  Map<Life.Skeleton, Double> plants() {
    return plants;
  }

  /**
   * Holds a skeleton at this many plants or more from the next solution on. The first time a
   * skeleton is held, rows are made for all that take part in the last solution: a new row costs
   * the solver its last basis, a new number does not.
   */
  void hold(Life.Skeleton skeleton, int plants) {
    if (!held.containsKey(skeleton)) {
      Set<Life.Skeleton> rows = new LinkedHashSet<>(this.plants.keySet());
      rows.add(skeleton);
      rows.removeAll(held.keySet());
      rows.forEach(this::addRow);
      for (int i = 0; i < lives.size(); i++) {
        if (rows.contains(lives.get(i).skeleton())) {
          programme.set(heldRow(lives.get(i).skeleton()), columns.get(i), 1);
        }
      }
      grown = true;
    }
    programme.lowest(heldRow(skeleton), plants);
  }

  /** Holds these skeletons and no others. */
  void holdOnly(Map<Life.Skeleton, Integer> counts) {
    held.forEach((s, h) -> programme.lowest(h.row, counts.getOrDefault(s, 0)));
    counts.forEach(this::hold);
  }

  private int heldRow(Life.Skeleton skeleton) {
    return Objects.requireNonNull(held.get(skeleton)).row;
  }

  private void addRow(Life.Skeleton skeleton) {
    Held h = new Held(skeleton, programme.row(0, LinearProgramme.FREE));
    held.put(skeleton, h);
    heldByCourse.computeIfAbsent(skeleton.course(), c -> new ArrayList<>()).add(h);
  }

  @Override
  public void close() {
    programme.close();
  }
}
