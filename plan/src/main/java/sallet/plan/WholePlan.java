package sallet.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whole plants of each skeleton with their best picks.
 *
 * @param counts plants of each skeleton
 * @param mix their picks
 * @param value points, all counted
 */
record WholePlan(Map<Life.Skeleton, Integer> counts, PickMix.Result mix, double value) {

  /** Pots' worth of plants. */
  int plants() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Days on which something is sown. */
  int sowingDays() {
    return (int) newCourses().map(c -> c.sowSlot).distinct().count();
  }

  /** Crops sown on a day, summed over the days. */
  int batches() {
    return (int) newCourses().map(c -> List.of(c.sowSlot, c.cropIndex)).distinct().count();
  }

  /** How often leaves are picked from a plant. */
  int leafPicks() {
    int picks = 0;
    for (Plants p : mix.plants()) {
      for (int t = 0; t < p.skeleton().end(); t++) {
        picks += p.gramsEach().get(t) > 0 ? p.count() : 0;
      }
    }
    return picks;
  }

  private Stream<Course> newCourses() {
    return counts.keySet().stream()
        .map(Life.Skeleton::course)
        .filter(c -> c.standing == Course.NEW);
  }

  /** What is needed to judge whole plants. */
  static final class Judge {
    private final Instance instance;
    private final Map<Course, LifeGraph> graphs = new HashMap<>();
    private final Promises promises;

    Judge(Instance instance, List<LifeGraph> graphs) {
      this.instance = instance;
      graphs.forEach(g -> this.graphs.put(g.course, g));
      this.promises = new Promises(instance, graphs.stream().map(g -> g.course).toList());
    }

    /** What the last plan promised. */
    Promises promises() {
      return promises;
    }

    /**
     * The plants with their best picks.
     *
     * @param known lives to begin with
     * @param pickCost points for each pick of leaves, not counted in the value
     * @return empty when one of the skeletons cannot be lived
     */
    Optional<WholePlan> of(Map<Life.Skeleton, Integer> counts, List<Life> known, double pickCost) {
      return PickMix.of(instance, graphs, counts, known, pickCost)
          .map(mix -> new WholePlan(counts, mix, mix.value() + fixedPoints(counts)));
    }

    /** Points for standing plants that no life goes on with and for broken promises. */
    private double fixedPoints(Map<Life.Skeleton, Integer> counts) {
      FreePlaces free = new FreePlaces(instance);
      counts.forEach(free::take);
      double points = instance.changePoints() * promises.changes(counts);
      for (int s = 0; s < instance.standing().size(); s++) {
        points += free.standing(s) * instance.standing().get(s).discardPoints();
      }
      return points;
    }
  }
}
