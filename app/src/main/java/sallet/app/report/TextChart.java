package sallet.app.report;

import java.util.List;
import java.util.Locale;
import sallet.plan.BowlWeek;

/**
 * Bowls as bars of block characters: the bar is what is planned, the upright stroke what is wanted.
 */
final class TextChart {
  private static final int BAR = 24;
  private static final String EIGHTHS = " ▏▎▍▌▋▊▉";

  private TextChart() {}

  static String of(List<BowlWeek> weeks) {
    double top =
        weeks.stream()
            .mapToDouble(w -> Math.max(w.demandGrams(), w.plannedGrams()))
            .max()
            .orElse(0);
    StringBuilder out = new StringBuilder();
    int early = 0;
    while (early < weeks.size() && tooEarly(weeks.get(early))) {
      early++;
    }
    if (early > 0) {
      out.append(early(weeks.subList(0, early))).append('\n');
    }
    for (BowlWeek week : weeks.subList(early, weeks.size())) {
      out.append(row(week, Math.max(top, 1)).stripTrailing()).append('\n');
    }
    return out.toString();
  }

  private static boolean tooEarly(BowlWeek week) {
    return !week.reachable() && week.plannedGrams() < 0.5;
  }

  private static String early(List<BowlWeek> weeks) {
    String first = Words.day(weeks.get(0).bowlDay());
    String last = Words.day(weeks.get(weeks.size() - 1).bowlDay());
    return weeks.size() == 1
        ? first + ": too early, nothing sown now can be ready"
        : "%s to %s: %d bowls too early for anything sown now".formatted(first, last, weeks.size());
  }

  private static String row(BowlWeek week, double top) {
    String row =
        "%-10s  %s  %s"
            .formatted(
                Words.day(week.bowlDay()),
                bar(week.plannedGrams(), week.demandGrams(), top),
                say(week));
    String luck = luck(week);
    return row.length() + luck.length() <= PlanText.WIDTH ? row + luck : row;
  }

  /** The bar with the stroke of demand at its place. */
  static String bar(double planned, double demand, double top) {
    int eighths = (int) Math.round(planned / top * BAR * 8);
    StringBuilder bar = new StringBuilder("█".repeat(eighths / 8));
    if (eighths % 8 > 0) {
      bar.append(EIGHTHS.charAt(eighths % 8));
    }
    int stroke = (int) Math.round(demand / top * BAR);
    bar.append(" ".repeat(BAR + 1 - bar.length()));
    if (demand > 0) {
      bar.setCharAt(stroke, '│');
    }
    return bar.toString();
  }

  private static String say(BowlWeek week) {
    if (week.demandGrams() <= 0) {
      return "away";
    }
    String of =
        String.format(
            Locale.ROOT,
            "%4d of %d g",
            Math.round(week.plannedGrams()),
            Math.round(week.demandGrams()));
    long kinds = week.kinds().stream().filter(k -> k.grams() >= 10).count();
    String name = kinds == 1 ? " kind" : " kinds";
    return PlanReport.isShort(week)
        ? of + ", " + kinds + name + ", short " + Words.grams(week.shortfallGrams())
        : of + ", " + kinds + name;
  }

  private static String luck(BowlWeek week) {
    return PlanReport.luck(week)
        .map(bowl -> " (%d-%d)".formatted(Math.round(bowl.low()), Math.round(bowl.high())))
        .orElse("");
  }
}
