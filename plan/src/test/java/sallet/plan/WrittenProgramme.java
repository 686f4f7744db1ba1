package sallet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sallet.plan.linear.LinearProgramme;

/** A programme that is written down for other solvers instead of being solved here. */
class WrittenProgramme implements LinearProgramme {
  final List<Double> lowest = new ArrayList<>();
  final List<Double> highest = new ArrayList<>();
  final List<Double> costs = new ArrayList<>();
  final List<Map<Integer, Double>> coefficients = new ArrayList<>();

  @Override
  public int row(double low, double high) {
    lowest.add(low);
    highest.add(high);
    return lowest.size() - 1;
  }

  @Override
  public int column(double cost) {
    costs.add(cost);
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

  final int rows() {
    return lowest.size();
  }

  final int columns() {
    return costs.size();
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
