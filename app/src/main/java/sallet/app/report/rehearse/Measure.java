package sallet.app.report.rehearse;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import sallet.plan.rehearse.Score;

/**
 * One thing that is told of each habit.
 *
 * @param key its name in the JSON
 * @param column its name over a column of the text, two lines
 * @param title what it is
 * @param part the part of the score
 * @param share whether it is a share, told in per cent
 */
record Measure(
    String key, List<String> column, String title, ToDoubleFunction<Score> part, boolean share) {

  static List<Measure> all(RehearsalReport report) {
    int kinds = report.kinds();
    String several = kinds == 1 ? "1 kind" : kinds + " kinds";
    return List.of(
        new Measure(
            "fill", List.of("bowls", "filled"), "Grams wanted that were eaten", Score::fill, true),
        new Measure(
            "lowWeeks", List.of("under", "80 %"), "Bowls under 80 %", Score::lowWeeks, true),
        new Measure(
            "kinds",
            List.of("with", several),
            "Bowls with " + several + " or more",
            Score::kinds,
            true),
        new Measure("waste", List.of("", "wasted"), "Leaf grown and not eaten", Score::waste, true),
        new Measure(
            "seedsAWeek",
            List.of("seeds", "a week"),
            "Seeds sown a week",
            Score::seedsAWeek,
            false),
        new Measure(
            "touchedAWeek",
            List.of("plants", "picked"),
            "Plants picked or lifted a week",
            Score::touchedAWeek,
            false));
  }

  /** A value without its unit. */
  String say(double value) {
    String text = String.format(Locale.ROOT, "%.1f", share ? 100 * value : value);
    return text.equals("100.0") ? "100" : text;
  }

  /** Its unit, with the space before it. */
  String unit() {
    return share ? " %" : "";
  }
}
