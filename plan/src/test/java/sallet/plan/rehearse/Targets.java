package sallet.plan.rehearse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sallet.crop.Catalogue;
import sallet.plan.linear.LinearSolver;

/**
 * Plays the seasons behind docs/benchmarks.md; run by bench/rehearse with a setting, a habit, the
 * number of seasons and a file. Each season is one row of the file as soon as it is played, so that
 * a run that was stopped goes on where it ended.
 */
final class Targets {
  private static final long SEED = 20261125;

  /** The seasons before were looked at when the planner's weights were chosen. */
  private static final int FIRST = 20;

  private Targets() {}

  public static void main(String[] args) throws IOException {
    Path file = Path.of(args[3]);
    Rehearsal rehearsal = rehearsal(args[0]);
    Habit habit = habit(args[1]);
    List<String> rows = Files.exists(file) ? Files.readAllLines(file) : List.of();
    IntStream.range(FIRST, FIRST + Integer.parseInt(args[2]))
        .filter(i -> rows.stream().noneMatch(r -> r.startsWith(key(args, i))))
        .parallel()
        .forEach(
            i -> {
              long start = System.nanoTime();
              Score s = rehearsal.score(rehearsal.season(habit, i, () -> false).orElseThrow());
              double seconds = (System.nanoTime() - start) * 1e-9;
              append(
                  file,
                  key(args, i)
                      + String.format(
                          Locale.ROOT,
                          "%.5f,%.4f,%.4f,%.5f,%.3f,%.3f,%.2f,%.1f%n",
                          s.fill(),
                          s.lowWeeks(),
                          s.kinds(),
                          s.waste(),
                          s.seedsAWeek(),
                          s.touchedAWeek(),
                          s.points(),
                          seconds));
            });
  }

  private static String key(String[] args, int season) {
    return args[0] + "," + args[1] + "," + season + ",";
  }

  private static synchronized void append(Path file, String row) {
    try {
      Files.writeString(file, row, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new IllegalStateException("the rows cannot be written", e);
    }
  }

  /** A habit as {@code plan}, {@code every-7-days:2.6}, {@code all-at-once:18}. */
  private static Habit habit(String text) {
    String[] parts = text.split(":", 2);
    double plants = parts.length > 1 ? Double.parseDouble(parts[1]) : 0;
    return switch (parts[0]) {
      case "every-7-days" -> new Habit.EveryWeeks(1, plants);
      case "every-14-days" -> new Habit.EveryWeeks(2, plants);
      case "all-at-once" -> new Habit.AllAtOnce(plants);
      case "plan" -> new Habit.PlanWeekly();
      default -> throw new IllegalArgumentException("no habit is called " + parts[0]);
    };
  }

  /**
   * A setting as {@code usual}, {@code hard}, {@code regrowth-0.9}, {@code bowl-480}, each +margin.
   */
  private static Rehearsal rehearsal(String text) {
    String[] parts = text.split("@", 2);
    OptionalDouble margin =
        parts.length > 1 ? OptionalDouble.of(Double.parseDouble(parts[1])) : OptionalDouble.empty();
    String setting = parts[0];
    double grams = setting.startsWith("bowl-") ? Double.parseDouble(setting.substring(5)) : 240;
    Hidden hidden = setting.equals("hard") ? Hidden.HARD : Hidden.USUAL;
    if (setting.startsWith("regrowth-")) {
      hidden = hidden.withRegrowth(Double.parseDouble(setting.substring(9)));
    }
    return Rehearsal.of(
        new Rehearsal.Request(
            SmallBench.of(grams),
            Catalogue.builtIn(),
            SmallBench.START,
            hidden,
            margin,
            LinearSolver.NATIVE,
            SEED));
  }
}
