package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The second stage: nearly the same bowls with less trouble. Single seeds on many days make a fussy
 * plan, and so do a few leaves from every plant. Whole sowing days are moved onto others that are
 * used already, then crops onto days on which they are sown already, then leaves are picked from
 * fewer plants, as long as the plan stays within a small loss of the first stage.
 */
final class Tidying {
  /** Share of the first stage's points that may be lost. Judgement. */
  private static final double LOSS_SHARE = 0.01;

  /** Share of the season's grams that may be lost, whichever is more. Judgement. */
  private static final double LOSS_GRAMS_SHARE = 0.001;

  /** Farthest a sowing is moved, in task days. Judgement: about four weeks. */
  private static final int REACH = 8;

  /**
   * Points a pick of leaves is made to cost in turn, most first, until the loss is small enough.
   */
  private static final double[] PICK_COSTS = {8, 4, 2, 1};

  private final Instance instance;
  private final WholePlan.Judge judge;
  private final Map<List<Integer>, List<Course>> courses = new HashMap<>();
  private final Consumer<String> progress;

  Tidying(
      Instance instance, WholePlan.Judge judge, List<LifeGraph> graphs, Consumer<String> progress) {
    this.instance = instance;
    this.judge = judge;
    this.progress = progress;
    for (LifeGraph g : graphs) {
      Course c = g.course;
      if (c.standing == Course.NEW) {
        courses
            .computeIfAbsent(List.of(c.cropIndex, c.sowSlot, c.group), key -> new ArrayList<>())
            .add(c);
      }
    }
  }

  /** The tidied plan. */
  WholePlan of(WholePlan first, Deadline deadline) {
    double limit =
        first.value()
            + Math.max(
                LOSS_SHARE * first.value(),
                LOSS_GRAMS_SHARE * Weights.SHORT * instance.demandGrams());
    WholePlan plan = first;
    boolean better = true;
    while (better && !deadline.over()) {
      Optional<WholePlan> tidier = fewerSowings(plan, limit, deadline);
      better = tidier.isPresent();
      plan = tidier.orElse(plan);
      if (better) {
        progress.accept(
            "Tidying: %d sowings on %d days".formatted(plan.batches(), plan.sowingDays()));
      }
    }
    return fewerPicks(plan, limit, deadline);
  }

  /** Sowings that move together, and the days they may move to, nearest first. */
  private record Move(List<Life.Skeleton> sowings, List<Integer> days) {}

  /** A plan in which one day or one batch has moved onto another; empty if none fits. */
  private Optional<WholePlan> fewerSowings(WholePlan plan, double limit, Deadline deadline) {
    List<Move> moves = new ArrayList<>(moves(plan, c -> List.of()));
    moves.addAll(moves(plan, c -> List.of(c.cropIndex)));
    for (Move move : moves) {
      for (int day : move.days) {
        if (deadline.over()) {
          return Optional.empty();
        }
        Optional<WholePlan> moved = moved(plan, move.sowings, day, limit);
        if (moved.isPresent()) {
          return moved;
        }
      }
    }
    return Optional.empty();
  }

  /** Moves of all sowings of a day that share a key onto days that have that key already. */
  private static List<Move> moves(WholePlan plan, Function<Course, List<Integer>> key) {
    Map<List<Integer>, Map<Integer, List<Life.Skeleton>>> byKey = new LinkedHashMap<>();
    for (Life.Skeleton s : plan.counts().keySet()) {
      Course c = s.course();
      if (c.standing == Course.NEW) {
        byKey
            .computeIfAbsent(key.apply(c), k -> new TreeMap<>())
            .computeIfAbsent(c.sowSlot, d -> new ArrayList<>())
            .add(s);
      }
    }
    List<Move> moves = new ArrayList<>();
    byKey
        .values()
        .forEach(
            days -> days.forEach((day, sown) -> moves.add(new Move(sown, nearest(day, days)))));
    moves.sort(Comparator.comparingInt(m -> plants(plan, m.sowings)));
    return moves;
  }

  private static int plants(WholePlan plan, List<Life.Skeleton> skeletons) {
    return skeletons.stream().mapToInt(s -> plan.counts().getOrDefault(s, 0)).sum();
  }

  private static List<Integer> nearest(int day, Map<Integer, List<Life.Skeleton>> days) {
    return days.keySet().stream()
        .filter(d -> d != day && Math.abs(d - day) <= REACH)
        .sorted(Comparator.comparingInt(d -> Math.abs(d - day)))
        .toList();
  }

  /** The plan with all that is sown on one day sown on another; empty if it does not fit. */
  private Optional<WholePlan> moved(
      WholePlan plan, List<Life.Skeleton> sowings, int day, double limit) {
    Map<Life.Skeleton, Integer> counts = new LinkedHashMap<>(plan.counts());
    sowings.forEach(counts::remove);
    FreePlaces free = new FreePlaces(instance);
    counts.forEach(free::take);
    for (Life.Skeleton s : sowings) {
      for (int i = 0; i < plan.counts().getOrDefault(s, 0); i++) {
        Optional<Life.Skeleton> there = onDay(s, day).stream().filter(free::fits).findFirst();
        if (there.isEmpty()) {
          return Optional.empty();
        }
        free.take(there.get(), 1);
        counts.merge(there.get(), 1, Integer::sum);
      }
    }
    return judge.of(counts, plan.mix().lives(), 0).filter(p -> p.value() <= limit);
  }

  /** The same plant sown on another day, with the likeliest moves and end first. */
  private List<Life.Skeleton> onDay(Life.Skeleton s, int day) {
    Course c = s.course();
    int bowl = c.bowls[s.end()];
    List<Life.Skeleton> found = new ArrayList<>();
    courses.getOrDefault(List.of(c.cropIndex, day, c.group), List.of()).stream()
        .sorted(Comparator.comparingInt(o -> Math.abs(o.benchSlot - c.benchSlot)))
        .forEach(
            other -> {
              int end = other.bowls.length - 1;
              while (end > 0 && other.bowls[end] > bowl) {
                end--;
              }
              found.add(new Life.Skeleton(other, end, s.lifted()));
            });
    return found;
  }

  /** The plan with leaves picked from fewer plants. */
  private WholePlan fewerPicks(WholePlan plan, double limit, Deadline deadline) {
    for (double cost : PICK_COSTS) {
      if (deadline.over()) {
        return plan;
      }
      Optional<WholePlan> calmer =
          judge
              .of(plan.counts(), plan.mix().lives(), cost)
              .filter(p -> p.value() <= limit && p.leafPicks() < plan.leafPicks());
      if (calmer.isPresent()) {
        return calmer.get();
      }
    }
    return plan;
  }
}
