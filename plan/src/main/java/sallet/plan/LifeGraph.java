package sallet.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import sallet.crop.HarvestRule;
import sallet.crop.PlantDay;

/**
 * Every way to pick and end a plant of one course. A node is a bowl day together with a class of
 * leaf area; an arc is a pick (or none) and the days of growth to the next bowl. Nodes hold bounds
 * on all pick sequences that lead there, so the best path of the graph is never worse than the best
 * real life. Built once: the arcs do not depend on prices.
 */
final class LifeGraph {
  /** Ratio of leaf area between neighbouring classes: narrower is tighter and slower. */
  private static final double CLASS_RATIO = 1.06;

  private static final double LOG_RATIO = Math.log(CLASS_RATIO);

  /** Shares of the leaf area a pick may take; the first is no pick. */
  static final double[] SHARES = {0, 0.2, HarvestRule.LARGEST_PICK};

  private static final int NONE = -1;

  final Course course;
  private final int[] levelStart;
  private float[] freshLo;
  private float[] freshHi;
  private float[] pickLo;
  private float[] pickHi;
  private int[] next;
  private int nodes;
  private final double[] value;

  LifeGraph(Course course) {
    this.course = course;
    int levels = course.bowls.length;
    levelStart = new int[levels + 1];
    freshLo = new float[64];
    freshHi = new float[64];
    pickLo = new float[64];
    pickHi = new float[64];
    next = new int[64 * SHARES.length];
    GrowthBounds[] level = {GrowthBounds.exactly(course.atFirstBowl())};
    for (int t = 0; t < levels; t++) {
      levelStart[t] = nodes;
      level = addLevel(level, t, t + 1 == levels);
    }
    levelStart[levels] = nodes;
    value = new double[nodes];
  }

  int nodes() {
    return nodes;
  }

  private GrowthBounds[] addLevel(GrowthBounds[] level, int t, boolean last) {
    grow(nodes + level.length);
    PlantDay today = course.days[course.bowlDay[t]];
    Map<Integer, Integer> classes = new HashMap<>();
    GrowthBounds[] following = new GrowthBounds[level.length * SHARES.length];
    int count = 0;
    GrowthBounds work = new GrowthBounds();
    int firstOfNext = nodes + level.length;
    for (int i = 0; i < level.length; i++) {
      int node = nodes + i;
      freshLo[node] = Math.nextDown((float) level[i].freshLo(today));
      freshHi[node] = Math.nextUp((float) level[i].freshHi(today));
      double largestLo = HarvestRule.largestPick(level[i].leavesLo);
      double largestHi = HarvestRule.largestPick(level[i].leavesHi);
      pickLo[node] = Math.nextDown((float) largestLo);
      pickHi[node] = Math.nextUp((float) largestHi);
      Arrays.fill(next, node * SHARES.length, (node + 1) * SHARES.length, NONE);
      for (int a = 0; a < SHARES.length && !last; a++) {
        if (a > 0 && (largestHi <= 0 || !course.mayPick(t, freshHi[node]))) {
          break;
        }
        work.setPicked(level[i], Math.min(SHARES[a], largestLo), Math.min(SHARES[a], largestHi));
        for (int d = course.bowlDay[t] + 1; d <= course.bowlDay[t + 1]; d++) {
          work.step(course.parameters, course.days[d]);
        }
        int leafClass = (int) Math.floor(0.5 * Math.log(work.leafLo * work.leafHi) / LOG_RATIO);
        Integer known = classes.get(leafClass);
        if (known == null) {
          classes.put(leafClass, count);
          following[count] = work.copy();
          next[node * SHARES.length + a] = firstOfNext + count++;
        } else {
          following[known].join(work);
          next[node * SHARES.length + a] = firstOfNext + known;
        }
      }
    }
    nodes += level.length;
    return Arrays.copyOf(following, count);
  }

  private void grow(int size) {
    if (size > freshLo.length) {
      int larger = Math.max(size, 2 * freshLo.length);
      freshLo = Arrays.copyOf(freshLo, larger);
      freshHi = Arrays.copyOf(freshHi, larger);
      pickLo = Arrays.copyOf(pickLo, larger);
      pickHi = Arrays.copyOf(pickHi, larger);
      next = Arrays.copyOf(next, larger * SHARES.length);
    }
  }

  /** Highest worth of a life from its first bowl on, at these prices. */
  double bestValue(Offer offer) {
    for (int t = course.bowls.length - 1; t >= 0; t--) {
      double price = offer.freshPrice[t];
      double wait = offer.wait[t];
      for (int node = levelStart[t]; node < levelStart[t + 1]; node++) {
        double best = Math.max(liftValue(node, t, offer), clearValue(node, t, offer));
        for (int a = 0; a < SHARES.length; a++) {
          int to = next[node * SHARES.length + a];
          if (to != NONE) {
            best = Math.max(best, pickWorth(node, a, offer, price) - wait + value[to]);
          }
        }
        value[node] = best;
      }
    }
    return value[0];
  }

  /** Highest worth of what stands at a node: grams nobody wants cost points, so fewest then. */
  private double worth(int node, double price) {
    return price * (price >= 0 ? freshHi[node] : freshLo[node]);
  }

  /** Highest worth of a pick at a node. */
  private double pickWorth(int node, int a, Offer offer, double price) {
    return a == 0 ? 0 : share(node, a, price) * worth(node, price) - offer.pickCost;
  }

  /** The share the graph credits to a pick: most, or fewest where one more gram only costs. */
  private double share(int node, int a, double price) {
    return Math.min(SHARES[a], price >= 0 ? pickHi[node] : pickLo[node]);
  }

  private double liftValue(int node, int t, Offer offer) {
    return course.mayLift(t, freshHi[node])
        ? worth(node, offer.freshPrice[t]) + offer.liftBonus[t]
        : Double.NEGATIVE_INFINITY;
  }

  private double clearValue(int node, int t, Offer offer) {
    return offer.clearBonus[t] - offer.wastePrice[t] * freshLo[node];
  }

  /** The choices along the best path of the last {@link #bestValue} call with the same offer. */
  Picks bestPath(Offer offer) {
    byte[] choices = new byte[course.bowls.length];
    int node = 0;
    for (int t = 0; ; t++) {
      int arc = bestArc(node, t, offer);
      if (arc == NONE) {
        boolean lift = liftValue(node, t, offer) >= clearValue(node, t, offer);
        choices[t] = lift ? Picks.LIFT : Picks.CLEAR;
        return new Picks(Arrays.copyOf(choices, t + 1));
      }
      choices[t] = (byte) arc;
      node = next[node * SHARES.length + arc];
    }
  }

  private int bestArc(int node, int t, Offer offer) {
    if (Math.max(liftValue(node, t, offer), clearValue(node, t, offer)) >= value[node]) {
      return NONE;
    }
    for (int a = 0; a < SHARES.length; a++) {
      int to = next[node * SHARES.length + a];
      if (to != NONE
          && pickWorth(node, a, offer, offer.freshPrice[t]) - offer.wait[t] + value[to]
              >= value[node]) {
        return a;
      }
    }
    throw new IllegalStateException("the graph was not priced with this offer");
  }

  /**
   * The grams the graph itself credits to a path: most where a gram is worth something, fewest
   * where one more only costs.
   */
  double[] creditedGrams(Picks picks, Offer offer) {
    double[] grams = new double[picks.length()];
    int node = 0;
    for (int t = 0; t < picks.length(); t++) {
      byte choice = picks.at(t);
      double price = offer.freshPrice[t];
      double share = Picks.share(choice, price >= 0 ? pickHi[node] : pickLo[node]);
      grams[t] = share * (price >= 0 ? freshHi[node] : freshLo[node]) * course.ediblePerFresh();
      if (choice < SHARES.length) {
        node = next[node * SHARES.length + choice];
      }
    }
    return grams;
  }

  /** The least edible grams the graph lets a path throw away at its end. */
  double creditedWaste(Picks picks) {
    if (picks.lifted()) {
      return 0;
    }
    int node = 0;
    for (int t = 0; t + 1 < picks.length(); t++) {
      node = next[node * SHARES.length + picks.at(t)];
    }
    return freshLo[node] * course.ediblePerFresh() * course.lostShare(picks.length() - 1);
  }
}
