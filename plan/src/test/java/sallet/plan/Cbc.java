package sallet.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Solves a written programme by Debian's coinor-cbc, one thread. */
final class Cbc {
  private static final Pattern LINEAR = number("Continuous objective value is");
  private static final Pattern VALUE = number("Objective value:");
  private static final Pattern BOUND = number("Lower bound:");
  private static final Pattern SECONDS = number("Total time \\(CPU seconds\\):");

  private Cbc() {}

  /**
   * @param linear least cost with fractions
   * @param bound least cost not ruled out
   * @param value least cost found
   * @param cpuSeconds CPU time
   */
  record Answer(double linear, double bound, double value, double cpuSeconds) {}

  private static Pattern number(String before) {
    return Pattern.compile(before + "\\s*(-?[0-9][0-9.e+-]*)");
  }

  /** Solves a programme within so many seconds of CPU time. */
  static Answer solve(Path programme, double seconds) throws IOException {
    Process cbc =
        new ProcessBuilder(
                List.of("cbc", programme.toString(), "-seconds", "" + seconds, "-solve", "-quit"))
            .redirectErrorStream(true)
            .start();
    String said = new String(cbc.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
    if (!said.contains("read with 0 errors")) {
      throw new IOException("cbc cannot read the programme: " + said);
    }
    double value = find(VALUE, said).orElse(Double.NaN);
    return new Answer(
        find(LINEAR, said).orElse(Double.NaN),
        find(BOUND, said).orElse(value),
        value,
        find(SECONDS, said).orElse(Double.NaN));
  }

  private static OptionalDouble find(Pattern pattern, String text) {
    Matcher found = pattern.matcher(text);
    return found.find()
        ? OptionalDouble.of(Double.parseDouble(found.group(1)))
        : OptionalDouble.empty();
  }
}
