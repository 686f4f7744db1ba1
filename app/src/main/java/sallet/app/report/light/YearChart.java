package sallet.app.report.light;

import java.util.OptionalDouble;
import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.app.report.Words;
import sallet.light.LightYear;

/**
 * The year as columns: daylight below, lamp light above it, a line for what is wanted and a stroke
 * from a dull week's daylight to a bright one's.
 */
final class YearChart {
  private static final double WIDTH = 720;
  private static final double HEIGHT = 300;
  private static final double LEFT = 44;
  private static final double BOTTOM = 262;
  private static final double TOP = 26;
  private static final double STEP = (WIDTH - LEFT - 70) / 12;

  private final LightYear year;
  private final double most;
  private final Markup svg = new Markup();

  private YearChart(LightYear year) {
    this.year = year;
    double top =
        year.months().stream()
            .mapToDouble(m -> Math.max(m.meanWindowMol() + m.meanLampMol(), m.brightWeekMol()))
            .max()
            .orElse(0);
    this.most = Math.ceil(Math.max(top, PlaceWords.mostWanted(year)) / 5 + 0.2) * 5;
  }

  static Markup of(LightYear year) {
    return new YearChart(year).draw();
  }

  private Markup draw() {
    Svg.open(svg, WIDTH, HEIGHT);
    Svg.describe(svg, "year", "Light of a day through the year", LightWords.summary(year));
    for (double mol = 0; mol <= most; mol += 5) {
      svg.empty(
          "line", "x1", LEFT, "y1", y(mol), "x2", LEFT + 12 * STEP, "y2", y(mol), "class", "rule");
      Svg.text(svg, LEFT - 6, y(mol) + 4, "end", Words.oneDecimal(mol).replace(".0", ""));
    }
    Svg.text(svg, LEFT - 36, 14, "small", "mol/m² a day");
    for (int m = 0; m < 12; m++) {
      column(m, year.months().get(m));
    }
    for (int m = 0; m < 12; m++) {
      wanted(m);
    }
    return svg.closeLine();
  }

  /** A stroke across the month at what its crops want; none while the bench is bare. */
  private void wanted(int m) {
    OptionalDouble mol = year.target().meanMol(year.months().get(m).middle());
    if (mol.isPresent()) {
      double y = y(mol.getAsDouble());
      double left = LEFT + m * STEP;
      svg.empty("line", "x1", left, "y1", y, "x2", left + STEP, "y2", y, "class", "demand");
      if (m == 11) {
        Svg.text(svg, LEFT + 12 * STEP + 6, y + 4, "strong", "wanted");
      }
    }
  }

  private void column(int m, LightYear.Month month) {
    double left = LEFT + m * STEP + STEP * 0.18;
    double width = STEP * 0.64;
    double window = month.meanWindowMol();
    box(left, width, 0, window, "daylight");
    box(left, width, window, window + month.meanLampMol(), "lamplight");
    if (month.brightWeekMol() > month.dullWeekMol() + 0.05) {
      double middle = left + width / 2;
      svg.empty(
          "line",
          "x1",
          middle,
          "y1",
          y(month.dullWeekMol()),
          "x2",
          middle,
          "y2",
          y(month.brightWeekMol()),
          "class",
          "weeks");
      for (double end : new double[] {month.dullWeekMol(), month.brightWeekMol()}) {
        svg.empty(
            "line",
            "x1",
            middle - 5,
            "y1",
            y(end),
            "x2",
            middle + 5,
            "y2",
            y(end),
            "class",
            "weeks");
      }
    }
    Svg.text(svg, left + width / 2, BOTTOM + 18, "middle", LightWords.month(month));
  }

  private void box(double left, double width, double from, double to, String style) {
    if (to > from) {
      svg.empty(
          "rect", "x", left, "y", y(to), "width", width, "height", y(from) - y(to), "class", style);
    }
  }

  private double y(double mol) {
    return BOTTOM - (BOTTOM - TOP) * mol / most;
  }
}
