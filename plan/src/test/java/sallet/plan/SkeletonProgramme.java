package sallet.plan;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import sallet.plan.linear.LinearProgramme;

/**
 * The choice of whole plants among the lives of a linear plan as one mixed integer programme: whole
 * plants of each skeleton, any mix of their picks. Written as an MPS file for other solvers.
 */
final class SkeletonProgramme {
  private final Recorder recorder = new Recorder();
  private final Map<Life.Skeleton, Integer> skeletons = new LinkedHashMap<>();

  SkeletonProgramme(Instance instance, List<Life> lives) {
    Eating eating = new Eating(instance, recorder);
    Places places = new Places(instance, recorder);
    for (Life life : lives) {
      int column =
          recorder.column(life.course().seedPoints() + Weights.WASTE * life.clearedGrams());
      eating.setGrams(column, life);
      places.set(column, life.skeleton());
      int row = skeletons.computeIfAbsent(life.skeleton(), s -> recorder.whole());
      recorder.set(row, column, 1);
    }
  }

  int wholeColumns() {
    return skeletons.size();
  }

  int columns() {
    return recorder.costs.size();
  }

  int rows() {
    return recorder.lowest.size();
  }

  /** Writes the programme in free MPS. */
  void write(PrintStream out) {
    recorder.write(out);
  }

  /** Takes a programme down instead of solving it. */
  private static final class Recorder implements LinearProgramme {
    final List<Double> lowest = new ArrayList<>();
    final List<Double> highest = new ArrayList<>();
    final List<Double> costs = new ArrayList<>();
    final List<Boolean> whole = new ArrayList<>();
    final List<Map<Integer, Double>> coefficients = new ArrayList<>();

    /** A row that says a whole number is the sum of the columns set in it. */
    int whole() {
      int row = row(0, 0);
      int column = column(0);
      whole.set(column, true);
      set(row, column, -1);
      return row;
    }

    @Override
    public int row(double low, double high) {
      lowest.add(low);
      highest.add(high);
      return lowest.size() - 1;
    }

    @Override
    public int column(double cost) {
      costs.add(cost);
      whole.add(false);
      coefficients.add(new TreeMap<>());
      return costs.size() - 1;
    }

    @Override
    public void set(int row, int column, double coefficient) {
      coefficients.get(column).put(row, coefficient);
    }

    @Override
    public void lowest(int row, double low) {
      lowest.set(row, low);
    }

    void write(PrintStream out) {
      out.println("NAME plan\nROWS\n N cost");
      for (int i = 0; i < lowest.size(); i++) {
        String kind =
            lowest.get(i).equals(highest.get(i))
                ? "E"
                : Double.isInfinite(lowest.get(i)) ? "L" : "G";
        out.println(" " + kind + " r" + i);
      }
      out.println("COLUMNS");
      for (int j = 0; j < costs.size(); j++) {
        if (whole.get(j)) {
          out.println(" m" + j + " 'MARKER' 'INTORG'");
        }
        out.printf(Locale.ROOT, " c%d cost %.9g%n", j, costs.get(j));
        int column = j;
        coefficients
            .get(j)
            .forEach((i, v) -> out.printf(Locale.ROOT, " c%d r%d %.12g%n", column, i, v));
        if (whole.get(j)) {
          out.println(" e" + j + " 'MARKER' 'INTEND'");
        }
      }
      out.println("RHS");
      for (int i = 0; i < lowest.size(); i++) {
        double side = Double.isInfinite(lowest.get(i)) ? highest.get(i) : lowest.get(i);
        if (side != 0) {
          out.printf(Locale.ROOT, " rhs r%d %.12g%n", i, side);
        }
      }
      out.println("BOUNDS");
      for (int j = 0; j < costs.size(); j++) {
        if (whole.get(j)) {
          out.println(" PL b c" + j);
        }
      }
      out.println("ENDATA");
    }

    @Override
    public boolean solve(Change change) {
      throw new UnsupportedOperationException("it is only written down");
    }

    @Override
    public double objective() {
      throw new UnsupportedOperationException("it is only written down");
    }

    @Override
    public double value(int column) {
      throw new UnsupportedOperationException("it is only written down");
    }

    @Override
    public double dual(int row) {
      throw new UnsupportedOperationException("it is only written down");
    }

    @Override
    public void close() {}
  }
}
