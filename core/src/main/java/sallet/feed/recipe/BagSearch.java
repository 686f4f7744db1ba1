package sallet.feed.recipe;

import java.util.Optional;

/**
 * Branch and bound over which bags are opened and how many scale steps of each are taken.
 *
 * <p>Each node is a quadratic programme without the whole numbers; its value bounds everything
 * below it. With no scale step and no limit on bags the first node is the answer.
 */
final class BagSearch {
  /** Less than this is none of a bag, g/L. */
  static final double NOTHING = 1e-9;

  private final FitModel model;
  private final double[] most;
  private final double[] smallest;
  private final double[] step;
  private final int mostBags;
  private final int mostNodes;

  /** An answer must promise to be better by this to be looked at: 0.2 % on one nutrient. */
  private static final double GAP = 4e-6;

  /** And by this share. */
  private static final double RELATIVE_GAP = 0.005;

  /** A step that gains less is rounding. */
  private static final double LEAST_GAIN = 1e-12;

  private int nodes;
  private double bestValue;
  private double openBound = Double.POSITIVE_INFINITY;
  private Optional<double[]> best = Optional.empty();

  /**
   * @param most upper limit of each bag, g/L
   * @param smallest smallest amount of a bag that is used at all, g/L
   * @param step scale step, g/L; 0 when any amount will do
   * @param mostBags how many bags may be opened
   * @param mostNodes how long to look
   * @param worst answers that fit no better than this are of no use
   */
  BagSearch(
      FitModel model,
      double[] most,
      double[] smallest,
      double[] step,
      int mostBags,
      int mostNodes,
      double worst) {
    this.model = model;
    this.most = most;
    this.smallest = smallest;
    this.step = step;
    this.mostBags = mostBags;
    this.mostNodes = mostNodes;
    this.bestValue = worst;
  }

  /** The best amounts, g/L; nothing when even the empty solution breaks a limit. */
  Optional<double[]> search() {
    visit(new double[most.length], most.clone(), new boolean[most.length]);
    return best;
  }

  /** No answer can have a better objective than this. */
  double bound() {
    return Math.min(openBound, bestValue);
  }

  private void visit(double[] lower, double[] upper, boolean[] opened) {
    if (count(opened) == mostBags) {
      for (int j = 0; j < upper.length; j++) {
        upper[j] = opened[j] ? upper[j] : 0;
      }
    }
    Optional<double[]> relaxed = model.program.solve(lower, upper);
    if (relaxed.isEmpty()) {
      return;
    }
    double[] x = relaxed.get();
    double value = model.objective(x);
    if (!worthwhile(value)) {
      openBound = Math.min(openBound, value);
      return;
    }
    if (++nodes > mostNodes) {
      openBound = Math.min(openBound, value);
      return;
    }
    int undecided = undecidedBag(x, opened);
    if (undecided >= 0) {
      branchOnBag(lower, upper, opened, undecided);
      return;
    }
    double[] rounded = polish(round(x, lower, upper), lower, upper);
    offer(rounded);
    int broken = mostBroken(x);
    if (broken < 0) {
      offer(x);
    } else if (worthwhile(value)) {
      branchOnSteps(lower, upper, opened, broken, x[broken]);
    } else {
      openBound = Math.min(openBound, value);
    }
  }

  private boolean worthwhile(double value) {
    return Double.isInfinite(bestValue)
        || value < bestValue - Math.max(GAP, RELATIVE_GAP * bestValue);
  }

  private static int count(boolean[] opened) {
    int count = 0;
    for (boolean one : opened) {
      count += one ? 1 : 0;
    }
    return count;
  }

  /**
   * The most important bag in use that is not decided on, when there are too many or too little.
   */
  private int undecidedBag(double[] x, boolean[] opened) {
    int used = 0;
    int choice = -1;
    int tooLittle = -1;
    double most = 0;
    for (int j = 0; j < x.length; j++) {
      if (x[j] <= NOTHING) {
        used += opened[j] ? 1 : 0;
        continue;
      }
      used++;
      double weight = x[j] * model.importance(j);
      if (!opened[j]) {
        if (x[j] < smallest[j] - NOTHING) {
          tooLittle = j;
        }
        if (weight > most) {
          most = weight;
          choice = j;
        }
      }
    }
    return used > mostBags ? choice : tooLittle;
  }

  private void branchOnBag(double[] lower, double[] upper, boolean[] opened, int bag) {
    if (upper[bag] >= smallest[bag]) {
      double[] raised = lower.clone();
      raised[bag] = Math.max(lower[bag], smallest[bag]);
      boolean[] withBag = opened.clone();
      withBag[bag] = true;
      visit(raised, upper.clone(), withBag);
    }
    double[] closed = upper.clone();
    closed[bag] = 0;
    visit(lower.clone(), closed, opened.clone());
  }

  private void branchOnSteps(
      double[] lower, double[] upper, boolean[] opened, int bag, double amount) {
    double below = Math.floor(amount / step[bag]) * step[bag];
    double[] down = upper.clone();
    down[bag] = below;
    double[] up = lower.clone();
    up[bag] = below + step[bag];
    boolean nearerAbove = amount - below > step[bag] / 2;
    for (int turn = 0; turn < 2; turn++) {
      if ((turn == 0) == nearerAbove) {
        if (up[bag] <= upper[bag] + NOTHING) {
          visit(up.clone(), upper.clone(), opened.clone());
        }
      } else if (below >= lower[bag] - NOTHING) {
        visit(lower.clone(), down.clone(), opened.clone());
      }
    }
  }

  private int mostBroken(double[] x) {
    int broken = -1;
    double worst = 1e-6;
    for (int j = 0; j < x.length; j++) {
      if (step[j] > 0) {
        double steps = x[j] / step[j];
        double off = Math.abs(steps - Math.rint(steps));
        if (off > worst) {
          worst = off;
          broken = j;
        }
      }
    }
    return broken;
  }

  private double[] round(double[] x, double[] lower, double[] upper) {
    double[] rounded = x.clone();
    for (int j = 0; j < x.length; j++) {
      if (step[j] > 0) {
        rounded[j] = inside(j, Math.rint(x[j] / step[j]) * step[j], lower, upper);
      }
    }
    return rounded;
  }

  private double inside(int bag, double amount, double[] lower, double[] upper) {
    double least = Math.ceil(lower[bag] / step[bag] - 1e-6) * step[bag];
    double greatest = Math.floor(upper[bag] / step[bag] + 1e-6) * step[bag];
    return Math.max(least, Math.min(greatest, amount));
  }

  /** Takes single steps up or down while the fit improves. */
  private double[] polish(double[] x, double[] lower, double[] upper) {
    double[] misses = model.misses(x);
    boolean better = true;
    while (better) {
      better = false;
      for (int j = 0; j < x.length; j++) {
        for (int sign = -1; step[j] > 0 && x[j] > NOTHING && sign <= 1; sign += 2) {
          double moved = inside(j, x[j] + sign * step[j], lower, upper);
          double value = model.objectiveWith(misses, j, 0);
          if (moved > NOTHING
              && model.objectiveWith(misses, j, moved - x[j]) < value - LEAST_GAIN) {
            x[j] = moved;
            misses = model.misses(x);
            better = true;
          }
        }
      }
    }
    return x;
  }

  private void offer(double[] x) {
    double value = model.objective(x);
    if (value < bestValue && model.holds(x)) {
      bestValue = value;
      best = Optional.of(x.clone());
    }
  }
}
