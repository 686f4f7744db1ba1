package sallet.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

  private static final double HALF = 0.5;

  /** Single plants are shifted so many times for each dive. */
  private static final int SHIFTS_PER_DIVE = 20;

  /** New lives are looked for once in so many steps: each time costs the solver its last basis. */
  private static final int STEPS_PER_PRICING = 60;

  /** A fraction this near to the largest may be made whole in its stead. */
  private static final double RIVAL = 0.8;

  /** Share of dives that take out a few plants instead of clearing a stretch. */
  private static final double THINNING = 0.5;

  /** Bowls before and after a loss whose plants may be taken out. */
  private static final int LONGEST_REACH = 2;

  private static final int FEWEST_PLANTS = 2;
  private static final int MOST_PLANTS = 6;

  private static final int SHORTEST_STRETCH = 3;
  private static final int LONGEST_STRETCH = 9;

  /** Points added to each bowl's loss when one is drawn. */
  private static final double SMALL_LOSS = 5;

  /**
   * @param plan the best found
   * @param dives how many dives were made
   */
  record Result(WholePlan plan, int dives) {}

  private final Instance instance;
  private final WholePlan.Judge judge;
  private final Master master;
  private final Consumer<String> progress;
  private final RandomGenerator random;
  private final Shifts shifts;
  private int dives;

  WholePlants(
      Instance instance,
      WholePlan.Judge judge,
      List<Course> courses,
      Master master,
      RandomGenerator random,
      Consumer<String> progress) {
    this.instance = instance;
    this.judge = judge;
    this.master = master;
    this.random = random;
    this.shifts = new Shifts(instance, courses, random);
    this.progress = progress;
  }

  /**
   * @param kept plants the last plan meant to have; the search begins with them
   * @param bound no plan costs less; the search ends when it is nearly reached
   * @param worth points not worth another dive
   * @param most most dives
   */
  Result solve(
      Map<Life.Skeleton, Integer> kept, double bound, double worth, Deadline deadline, int most) {
    WholePlan nothing = withPicks(Map.of());
    WholePlan atHand = kept.isEmpty() ? nothing : judge.of(kept, master.lives(), 0).orElse(nothing);
    WholePlan best =
        dive(Map.of(), nothing, deadline)
            .filter(first -> first.value() < atHand.value())
            .orElse(atHand);
    tell(best);
    while (dives < most && !deadline.over() && best.value() - bound > worth) {
      Optional<WholePlan> found =
          dive(random.nextDouble() < THINNING ? thinned(best) : cleared(best), best, deadline);
      if (found.isPresent() && found.get().value() < best.value() - 1e-6) {
        best = found.get();
        tell(best);
      }
      best = shifted(best, deadline);
    }
    return new Result(best, dives);
  }

  /** The best of a few plans in which single plants live a little differently. */
  private WholePlan shifted(WholePlan plan, Deadline deadline) {
    WholePlan best = plan;
    for (int i = 0; i < SHIFTS_PER_DIVE && !deadline.over(); i++) {
      int bowl = lossyBowl(best.mix().lossByBowl());
      WholePlan base = best;
      Optional<WholePlan> found =
          shifts
              .of(best.counts(), bowl)
              .flatMap(counts -> judge.of(counts, base.mix().lives(), 0))
              .filter(p -> p.value() < base.value() - 1e-6);
      if (found.isPresent()) {
        best = found.get();
        best.mix().lives().forEach(master::add);
        tell(best);
      }
    }
    return best;
  }

  private void tell(WholePlan best) {
    progress.accept(
        String.format(Locale.ROOT, "Whole plants, dive %d: %.0f points", dives, best.value()));
  }

  /** A choice without a few of the plants that are picked around a loss. */
  private Map<Life.Skeleton, Integer> thinned(WholePlan choice) {
    int bowl = lossyBowl(choice.mix().lossByBowl());
    int reach = random.nextInt(LONGEST_REACH + 1);
    List<Life.Skeleton> near = new ArrayList<>();
    choice
        .counts()
        .forEach(
            (s, n) -> {
              int[] bowls = s.course().bowls;
              if (bowls[s.end()] >= bowl - reach && bowls[0] <= bowl + reach) {
                near.addAll(Collections.nCopies(n, s));
              }
            });
    Map<Life.Skeleton, Integer> kept = new LinkedHashMap<>(choice.counts());
    int fewer = Math.min(near.size(), random.nextInt(FEWEST_PLANTS, MOST_PLANTS + 1));
    for (int i = 0; i < fewer; i++) {
      Life.Skeleton out = near.remove(random.nextInt(near.size()));
      kept.computeIfPresent(out, (s, n) -> n > 1 ? n - 1 : null);
    }
    return kept;
  }

  /** A choice without the plants that are picked in a stretch of weeks around a loss. */
  private Map<Life.Skeleton, Integer> cleared(WholePlan choice) {
    int length = random.nextInt(SHORTEST_STRETCH, LONGEST_STRETCH + 1);
    int first = lossyBowl(choice.mix().lossByBowl()) - random.nextInt(length);
    Map<Life.Skeleton, Integer> kept = new LinkedHashMap<>();
    choice
        .counts()
        .forEach(
            (s, n) -> {
              int[] bowls = s.course().bowls;
              if (bowls[s.end()] < first || bowls[0] >= first + length) {
                kept.put(s, n);
              }
            });
    return kept;
  }

  /** A bowl drawn by what it loses; a bowl without a loss keeps a small chance. */
  private int lossyBowl(List<Double> loss) {
    double draw = random.nextDouble(loss.stream().mapToDouble(l -> l + SMALL_LOSS).sum());
    for (int w = 0; w < loss.size(); w++) {
      draw -= loss.get(w) + SMALL_LOSS;
      if (draw < 0) {
        return w;
      }
    }
    return loss.size() - 1;
  }

  /**
   * Whole plants around those kept; empty when it cannot become better than the plan at hand, or
   * the time is over.
   */
  private Optional<WholePlan> dive(
      Map<Life.Skeleton, Integer> kept, WholePlan atHand, Deadline deadline) {
    dives++;
    Map<Life.Skeleton, Integer> counts = new LinkedHashMap<>(kept);
    FreePlaces free = new FreePlaces(instance);
    counts.forEach(free::take);
    master.holdOnly(counts);
    boolean first = atHand.counts().isEmpty();
    for (int step = first ? 1 : random.nextInt(STEPS_PER_PRICING); master.solve(); step++) {
      if (!first && (master.value() >= atHand.value() || deadline.over())) {
        return Optional.empty();
      }
      if (first && deadline.over()) {
        round(counts, free);
        return Optional.of(withPicks(counts));
      }
      if (step % STEPS_PER_PRICING == 0) {
        master.addBetter();
      }
      List<Life.Skeleton> raised = raise(counts, free);
      if (raised.isEmpty()) {
        return Optional.of(withPicks(counts));
      }
      raised.forEach(s -> master.hold(s, counts.getOrDefault(s, 0)));
    }
    return Optional.empty();
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
    if (!parts.isEmpty() && parts.get(0).more < NEARLY_WHOLE) {
      double most = parts.get(0).more;
      long rivals = parts.stream().filter(p -> p.more >= RIVAL * most).count();
      Collections.swap(parts, 0, random.nextInt((int) rivals));
    }
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

  /** Makes all that is half a plant or more whole at once: the time is over. */
  private void round(Map<Life.Skeleton, Integer> counts, FreePlaces free) {
    master
        .plants()
        .forEach(
            (s, x) -> {
              while (x - counts.getOrDefault(s, 0) >= HALF && free.fits(s)) {
                free.take(s, 1);
                counts.merge(s, 1, Integer::sum);
              }
            });
  }

  private WholePlan withPicks(Map<Life.Skeleton, Integer> counts) {
    WholePlan plan = judge.of(counts, master.lives(), 0).orElseThrow();
    plan.mix().lives().forEach(master::add);
    return plan;
  }
}
