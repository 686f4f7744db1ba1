package sallet.app.report.water;

import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.water.flood.FloodSchedule;

/** The timer as a picture: a ring of a day, the floods on it. */
final class Dial {
  private static final double SIZE = 300;
  private static final double MIDDLE = SIZE / 2;
  private static final double OUTER = 112;
  private static final double INNER = 84;
  private static final int DAY = 24 * 60;
  private static final int SEGMENT = 15;

  /** A row of the text picture stands for half an hour a letter. */
  private static final int LETTER_MINUTES = 30;

  private Dial() {}

  static Markup svg(FloodSchedule schedule) {
    Markup svg = new Markup();
    Svg.open(svg, SIZE, SIZE, 240);
    Svg.describe(
        svg,
        "dial",
        "The timer's dial",
        "A ring of 24 hours; dark segments are those in which the pump runs. The list beside it has the times.");
    for (int m = 0; m < DAY; m += SEGMENT) {
      svg.empty("path", "d", segment(m, m + SEGMENT), "class", "segment");
    }
    for (int start : schedule.startMinutes()) {
      svg.empty("path", "d", segment(start, start + schedule.onMinutes()), "class", "pump-on");
    }
    for (int hour = 0; hour < 24; hour += 3) {
      double angle = angle(60 * hour);
      Svg.text(
          svg,
          MIDDLE + (OUTER + 18) * Math.sin(angle),
          MIDDLE - (OUTER + 18) * Math.cos(angle) + 4,
          "middle strong",
          Integer.toString(hour));
    }
    Svg.text(
        svg,
        MIDDLE,
        MIDDLE - 2,
        "middle strong",
        WaterWords.of("%.0f floods", schedule.floodsPerDay()));
    Svg.text(svg, MIDDLE, MIDDLE + 16, "middle", "of " + schedule.onMinutes() + " min");
    return svg.closeLine();
  }

  private static double angle(int minute) {
    return 2 * Math.PI * minute / DAY;
  }

  private static String segment(int from, int to) {
    double a = angle(from) + 0.008;
    double b = angle(to) - 0.008;
    return "M%s L%s A%s %s 0 0 1 %s L%s A%s %s 0 0 0 %s Z"
        .formatted(
            point(INNER, a),
            point(OUTER, a),
            Markup.number(OUTER),
            Markup.number(OUTER),
            point(OUTER, b),
            point(INNER, b),
            Markup.number(INNER),
            Markup.number(INNER),
            point(INNER, a));
  }

  private static String point(double radius, double angle) {
    return Markup.number(MIDDLE + radius * Math.sin(angle))
        + " "
        + Markup.number(MIDDLE - radius * Math.cos(angle));
  }

  /** A day in two lines: the hours, and blocks where the pump runs. */
  static String text(FloodSchedule schedule) {
    StringBuilder hours = new StringBuilder();
    for (int hour = 0; hour < 24; hour += 3) {
      hours.append(WaterWords.of("%-6d", hour));
    }
    StringBuilder row = new StringBuilder();
    for (int m = 0; m < DAY; m += LETTER_MINUTES) {
      boolean first = runs(schedule, m, m + LETTER_MINUTES / 2);
      boolean second = runs(schedule, m + LETTER_MINUTES / 2, m + LETTER_MINUTES);
      row.append(first ? second ? '█' : '▌' : second ? '▐' : '·');
    }
    return hours.toString().stripTrailing() + "\n" + row;
  }

  private static boolean runs(FloodSchedule schedule, int from, int to) {
    for (int start : schedule.startMinutes()) {
      int end = start + schedule.onMinutes();
      if ((start < to && end > from) || (start < to + DAY && end > from + DAY)) {
        return true;
      }
    }
    return false;
  }
}
