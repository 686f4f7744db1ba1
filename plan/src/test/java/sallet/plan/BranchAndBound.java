package sallet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sallet.plan.linear.LinearProgramme;

/** Whole values for some columns of a linear programme (Land and Doig 1960), for small ones. */
final class BranchAndBound {
  private static final double WHOLE = 1e-6;

  private final LinearProgramme programme;
  private final double step;
  private final List<Whole> wholes = new ArrayList<>();
  private double best = Double.POSITIVE_INFINITY;

  /** A column with the rows that hold it up and down. */
  private static final class Whole {
    final int column;
    final int up;
    final int down;
    double least = 0;
    double most;

    Whole(int column, int up, int down, double most) {
      this.column = column;
      this.up = up;
      this.down = down;
      this.most = most;
    }
  }

  /**
   * @param columns columns that must be whole
   * @param most for each of them its largest value
   * @param step a branch must promise so much less than the best found
   */
  BranchAndBound(
      LinearProgramme programme, List<Integer> columns, List<Integer> most, double step) {
    this.programme = programme;
    this.step = step;
    for (int i = 0; i < columns.size(); i++) {
      int column = columns.get(i);
      int up = programme.row(0, LinearProgramme.FREE);
      programme.set(up, column, 1);
      int down = programme.row(-most.get(i), LinearProgramme.FREE);
      programme.set(down, column, -1);
      wholes.add(new Whole(column, up, down, most.get(i)));
    }
  }

  /** The least cost with fractions. */
  double bound() {
    if (!programme.solve(LinearProgramme.Change.COLUMNS)) {
      throw new IllegalStateException("the programme has no minimum");
    }
    return programme.objective();
  }

  /** The least cost with whole values. */
  double optimum() {
    best = Double.POSITIVE_INFINITY;
    branch(LinearProgramme.Change.COLUMNS);
    return best;
  }

  private void branch(LinearProgramme.Change change) {
    if (!programme.solve(change) || programme.objective() > best - step + WHOLE) {
      return;
    }
    Optional<Whole> split =
        wholes.stream()
            .filter(w -> divided(w) > WHOLE)
            .max(Comparator.comparingDouble(this::divided));
    if (split.isEmpty()) {
      best = programme.objective();
      return;
    }
    double value = programme.value(split.get().column);
    boolean upFirst = value - Math.floor(value) > 0.5;
    half(split.get(), value, upFirst);
    half(split.get(), value, !upFirst);
  }

  private double divided(Whole whole) {
    double value = programme.value(whole.column);
    return Math.abs(value - Math.rint(value));
  }

  private void half(Whole whole, double value, boolean up) {
    double least = whole.least;
    double most = whole.most;
    hold(whole, up ? Math.ceil(value) : least, up ? most : Math.floor(value));
    branch(LinearProgramme.Change.BOUNDS);
    hold(whole, least, most);
  }

  private void hold(Whole whole, double least, double most) {
    whole.least = least;
    whole.most = most;
    programme.lowest(whole.up, least);
    programme.lowest(whole.down, -most);
  }
}
