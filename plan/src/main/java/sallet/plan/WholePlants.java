package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;

/**
 * From fractions to whole plants. Only skeletons (sowing, moves, group, end) must be whole; their
 * picks stay free. A dive holds the skeletons nearest to a whole number of plants, lets the linear
 * plan find new lives around them, and goes on; then stretches of weeks are cleared and dived again
 * while that improves the plan.
 */
final class WholePlants {
  /** A fraction of a plant below this is left out, the rest must do. */
  private static final double LEFT_OUT = 0.02;

  /** A fraction above this is made whole at once. */
  private static final double NEARLY_WHOLE = 0.8;

  /** New lives are looked for once in so many steps of a dive: each time costs a cold start. */
  private static final int STEPS_PER_PRICING = 10;

  private static final int SHORTEST_STRETCH = 3;
  private static final int LONGEST_STRETCH = 9;

  /** Points added to each bowl's loss when one is drawn. */
  private static final double SMALL_LOSS = 5;

  /**
   * @param value points
   * @param plants whole plants and the grams to take from them
   * @param dives how many dives were made
   */
  record Result(double value, List<Plants> plants, int dives) {}

  private final Instance instance;
  private final Map<Course, LifeGraph> graphs = new HashMap<>();
  private final double[] cellsPerPlant;
  private final Master master;
  private final Consumer<String> progress;
  private Map<Life.Skeleton, Integer> best = Map.of();
  private PickMix.Result bestMix;
  private int dives;

  WholePlants(
      Instance instance,
      List<LifeGraph> graphs,
      double[] cellsPerPlant,
      Master master,
      Consumer<String> progress) {
    this.instance = instance;
    graphs.forEach(g -> this.graphs.put(g.course, g));
    this.cellsPerPlant = cellsPerPlant;
    this.master = master;
    this.progress = progress;
    this.bestMix = PickMix.of(instance, this.graphs, Map.of(), Map.of());
  }

  /**
   * @param bound no plan costs less; the search ends when it is nearly reached
   * @param worth points not worth another dive
   */
  Result solve(double bound, double worth, Deadline deadline, RandomGenerator random) {
    dive(new LinkedHashMap<>(), deadline);
    while (!deadline.over() && bestMix.value() - bound > worth) {
      Map<Life.Skeleton, Integer> kept = cleared(random);
      dive(kept, deadline);
    }
    return new Result(bestMix.value(), bestMix.plants(), dives);
  }

  /** The best plan without the plants that are picked in a stretch of weeks around a loss. */
  private Map<Life.Skeleton, Integer> cleared(RandomGenerator random) {
    int length = random.nextInt(SHORTEST_STRETCH, LONGEST_STRETCH + 1);
    int first = lossyBowl(random) - random.nextInt(length);
    Map<Life.Skeleton, Integer> kept = new LinkedHashMap<>();
    best.forEach(
        (s, n) -> {
          int[] bowls = s.course().bowls;
          if (bowls[s.end()] < first || bowls[0] >= first + length) {
            kept.put(s, n);
          }
        });
    return kept;
  }

  /** A bowl drawn by what it loses; a bowl without a loss keeps a small chance. */
  private int lossyBowl(RandomGenerator random) {
    List<Double> loss = bestMix.lossByBowl();
    double draw = random.nextDouble(loss.stream().mapToDouble(l -> l + SMALL_LOSS).sum());
    for (int w = 0; w < loss.size(); w++) {
      draw -= loss.get(w) + SMALL_LOSS;
      if (draw < 0) {
        return w;
      }
    }
    return loss.size() - 1;
  }

  private void dive(Map<Life.Skeleton, Integer> counts, Deadline deadline) {
    dives++;
    FreePlaces free = new FreePlaces(instance, cellsPerPlant);
    counts.forEach(free::take);
    best.forEach((s, n) -> master.hold(s, counts.getOrDefault(s, 0)));
    counts.forEach(master::hold);
    for (int step = 0; master.solve(); step++) {
      if (master.value() >= bestMix.value() || (deadline.over() && !best.isEmpty())) {
        break;
      }
      if (step % STEPS_PER_PRICING == STEPS_PER_PRICING - 1) {
        master.addBetter();
      }
      List<Life.Skeleton> raised = raise(counts, free);
      if (raised.isEmpty()) {
        break;
      }
      raised.forEach(s -> master.hold(s, counts.getOrDefault(s, 0)));
    }
    keepIfBetter(counts);
    counts.keySet().forEach(s -> master.hold(s, 0));
  }

  /** Makes the most nearly whole skeletons whole; tells which changed. */
  private List<Life.Skeleton> raise(Map<Life.Skeleton, Integer> counts, FreePlaces free) {
    record Part(Life.Skeleton skeleton, double more) {}
    List<Part> parts = new ArrayList<>();
    master
        .plants()
        .forEach(
            (s, x) -> {
              double more = x - counts.getOrDefault(s, 0);
              if (more > LEFT_OUT) {
                parts.add(new Part(s, more));
              }
            });
    parts.sort(Comparator.comparingDouble(Part::more).reversed());
    List<Life.Skeleton> raised = new ArrayList<>();
    for (Part part : parts) {
      if (!raised.isEmpty() && part.more < NEARLY_WHOLE) {
        break;
      }
      int plants = Math.max(1, (int) Math.floor(part.more + 1 - NEARLY_WHOLE));
      boolean any = false;
      for (int i = 0; i < plants && free.fits(part.skeleton); i++) {
        free.take(part.skeleton, 1);
        counts.merge(part.skeleton, 1, Integer::sum);
        any = true;
      }
      if (any) {
        raised.add(part.skeleton);
      }
    }
    return raised;
  }

  private void keepIfBetter(Map<Life.Skeleton, Integer> counts) {
    Map<Life.Skeleton, List<Life>> known = new HashMap<>();
    for (Life life : master.lives()) {
      if (counts.containsKey(life.skeleton())) {
        known.computeIfAbsent(life.skeleton(), s -> new ArrayList<>()).add(life);
      }
    }
    PickMix.Result mix = PickMix.of(instance, graphs, counts, known);
    mix.lives().forEach(master::add);
    if (mix.value() < bestMix.value()) {
      bestMix = mix;
      best = new LinkedHashMap<>(counts);
      progress.accept(
          String.format(Locale.ROOT, "Whole plants, dive %d: %.0f points", dives, mix.value()));
    }
  }
}
