package sallet.plan;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A programme written down in a file that other solvers read. */
final class MpsFile extends WrittenProgramme {
  @Override
  public int row(double low, double high) {
    if (low != high && !Double.isInfinite(low) && !Double.isInfinite(high)) {
      throw new IllegalArgumentException("a row with two bounds is not written");
    }
    return super.row(low, high);
  }

  /**
   * Writes the programme in free MPS, and says so: short lines are taken for fixed columns
   * otherwise.
   *
   * @param whole columns that must be whole
   * @param most a number none of them exceeds: readers disagree about what holds without one
   */
  void write(Path file, List<Integer> whole, int most) throws IOException {
    try (PrintStream out = new PrintStream(file.toFile(), StandardCharsets.US_ASCII)) {
      out.println("NAME plan FREE\nROWS\n N cost");
      for (int i = 0; i < rows(); i++) {
        out.println(" " + kind(i) + " r" + i);
      }
      out.println("COLUMNS");
      Set<Integer> integers = new HashSet<>(whole);
      for (int j = 0; j < columns(); j++) {
        writeColumn(out, j, integers.contains(j));
      }
      out.println("RHS");
      for (int i = 0; i < rows(); i++) {
        double side = Double.isInfinite(lowest.get(i)) ? highest.get(i) : lowest.get(i);
        out.printf(Locale.ROOT, " rhs r%d %.12g%n", i, side);
      }
      out.println("BOUNDS");
      whole.forEach(j -> out.println(" UP bound c" + j + " " + most));
      out.println("ENDATA");
    }
  }

  private String kind(int row) {
    if (Double.isInfinite(lowest.get(row))) {
      return "L";
    }
    return Double.isInfinite(highest.get(row)) ? "G" : "E";
  }

  private void writeColumn(PrintStream out, int column, boolean whole) {
    if (whole) {
      out.println(" start" + column + " 'MARKER' 'INTORG'");
    }
    out.printf(Locale.ROOT, " c%d cost %.12g%n", column, costs.get(column));
    coefficients
        .get(column)
        .forEach((i, v) -> out.printf(Locale.ROOT, " c%d r%d %.12g%n", column, i, v));
    if (whole) {
      out.println(" end" + column + " 'MARKER' 'INTEND'");
    }
  }
}
