package sallet.app.report;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import sallet.crop.forecast.Band;
import sallet.plan.BowlWeek;

/** Bars of the bowls by week and kind, with the line of what is wanted. */
final class BowlChart {
  private static final double STEP = 34;
  private static final double BAR = 24;
  private static final double LEFT = 44;
  private static final double TOP = 26;
  private static final double PLOT = 220;
  private static final double BOTTOM = 40;

  /** Width of a whisker's feet and its distance from the bar. */
  private static final double WHISKER = 5;

  private final List<BowlWeek> weeks;
  private final CropMarks marks;
  private final double topGrams;
  private final Markup svg = new Markup();

  private BowlChart(List<BowlWeek> weeks, CropMarks marks) {
    this.weeks = weeks;
    this.marks = marks;
    double most =
        weeks.stream()
            .mapToDouble(w -> Math.max(w.demandGrams(), Math.max(w.plannedGrams(), high(w))))
            .max()
            .orElse(0);
    this.topGrams = Math.max(most * 1.05, 10);
  }

  private static double high(BowlWeek week) {
    return PlanReport.luck(week).map(Band::high).orElse(0.0);
  }

  static Markup of(PlanReport report, CropMarks marks) {
    return new BowlChart(report.plan().weeks(), marks).draw(report);
  }

  /** Width of the drawing at its own scale, px. */
  static double width(int weeks) {
    return LEFT + Math.max(weeks, 4) * STEP + 10;
  }

  private Markup draw(PlanReport report) {
    Svg.open(svg, width(weeks.size()), TOP + PLOT + BOTTOM);
    Svg.describe(svg, "bowls", "Bowls by week and kind", report.summary());
    gramLines();
    for (int i = 0; i < weeks.size(); i++) {
      bar(i, weeks.get(i));
    }
    demand();
    for (int i = 0; i < weeks.size(); i++) {
      letters(i, weeks.get(i));
      luck(i, weeks.get(i));
    }
    return svg.closeLine();
  }

  private void gramLines() {
    double step = Svg.gridStep(topGrams);
    for (double grams = 0; grams <= topGrams; grams += step) {
      double right = width(weeks.size()) - 10;
      svg.empty("line", "x1", LEFT, "x2", right, "y1", y(grams), "y2", y(grams), "class", "rule");
      Svg.text(svg, LEFT - 6, y(grams) + 4, "end small", Words.grams(grams));
    }
  }

  private void bar(int i, BowlWeek week) {
    double x = x(i);
    double grams = 0;
    for (BowlWeek.Kind kind : week.kinds()) {
      segment(x, grams, kind);
      grams += kind.grams();
    }
    if (!week.reachable()) {
      double height = Math.max(0, PLOT * week.demandGrams() / topGrams);
      svg.empty(
          "rect",
          "x",
          x,
          "y",
          y(week.demandGrams()),
          "width",
          BAR,
          "height",
          height,
          "class",
          "early");
      upright(x + BAR / 2 + 4, y(0) - 8, "too early");
    } else if (week.demandGrams() <= 0) {
      upright(x + BAR / 2 + 4, y(0) - 8, "away");
    } else if (PlanReport.isShort(week)) {
      missing(i, week);
    }
    dateBelow(i, week.bowlDay());
  }

  private void segment(double x, double from, BowlWeek.Kind kind) {
    CropMarks.Mark mark = marks.of(kind.crop());
    double top = y(from + kind.grams());
    double height = y(from) - top;
    svg.open(
        "rect",
        "x",
        x,
        "y",
        top,
        "width",
        BAR,
        "height",
        height,
        "fill",
        mark.fill(),
        "class",
        "leaf");
    svg.element("title", kind.crop() + ": " + Words.grams(kind.grams())).closeLine();
  }

  /** The crops' letters, over the line of demand, where a segment is high enough. */
  private void letters(int i, BowlWeek week) {
    double grams = 0;
    for (BowlWeek.Kind kind : week.kinds()) {
      if (PLOT * kind.grams() / topGrams >= 16) {
        double middle = y(grams + kind.grams() / 2);
        Svg.chip(svg, x(i) + BAR / 2, middle, marks.of(kind.crop()).letters());
      }
      grams += kind.grams();
    }
  }

  /** An upright stroke with feet beside the bar, over what eight of ten seasons give. */
  private void luck(int i, BowlWeek week) {
    PlanReport.luck(week).ifPresent(bowl -> span(i, bowl));
  }

  private void span(int i, Band bowl) {
    double x = x(i) + BAR + WHISKER;
    stroke(x, y(bowl.low()), x, y(bowl.high()));
    stroke(x - WHISKER / 2, y(bowl.low()), x + WHISKER / 2, y(bowl.low()));
    stroke(x - WHISKER / 2, y(bowl.high()), x + WHISKER / 2, y(bowl.high()));
  }

  private void stroke(double x1, double y1, double x2, double y2) {
    svg.empty("line", "x1", x1, "x2", x2, "y1", y1, "y2", y2, "class", "luck");
  }

  /** How many grams are missing, above the bar and clear of the line of demand. */
  private void missing(int i, BowlWeek week) {
    boolean roomBelowLine = PLOT * week.shortfallGrams() / topGrams >= 20;
    double y = y(roomBelowLine ? week.plannedGrams() : week.demandGrams()) - 6;
    Svg.text(svg, x(i) + BAR / 2, y, "middle strong", "−" + Math.round(week.shortfallGrams()));
  }

  private void upright(double x, double y, String text) {
    svg.element(
        "text",
        text,
        "class",
        "small",
        "transform",
        "translate(%s %s) rotate(-90)".formatted(Markup.number(x), Markup.number(y)));
  }

  private void dateBelow(int i, LocalDate day) {
    double middle = x(i) + BAR / 2;
    Svg.text(svg, middle, y(0) + 16, "middle small", Integer.toString(day.getDayOfMonth()));
    if (i == 0 || weeks.get(i - 1).bowlDay().getMonth() != day.getMonth()) {
      String month = day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
      Svg.text(svg, middle, y(0) + 32, "middle strong", month);
    }
  }

  /** A thick line across each week at the height of what is wanted. */
  private void demand() {
    for (int i = 0; i < weeks.size(); i++) {
      double grams = weeks.get(i).demandGrams();
      if (grams > 0) {
        double left = LEFT + i * STEP;
        svg.empty(
            "line",
            "x1",
            left,
            "x2",
            left + STEP,
            "y1",
            y(grams),
            "y2",
            y(grams),
            "class",
            "demand");
      }
    }
  }

  private static double x(int week) {
    return LEFT + week * STEP + (STEP - BAR) / 2;
  }

  private double y(double grams) {
    return TOP + PLOT * (1 - grams / topGrams);
  }
}
