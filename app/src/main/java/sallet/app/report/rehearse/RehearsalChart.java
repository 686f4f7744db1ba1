package sallet.app.report.rehearse;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.plan.rehearse.Estimate;
import sallet.plan.rehearse.Result;

/** One measure of all habits: a dot for the mean, a stroke for its interval, the number beside. */
final class RehearsalChart {
  private static final double LEFT = 110;
  private static final double PLOT = 170;
  private static final double RIGHT = 56;
  private static final double TOP = 10;
  private static final double ROW = 30;
  private static final double BOTTOM = 24;
  private static final double DOT = 5;

  private final RehearsalReport report;
  private final Measure measure;
  private final List<Estimate> estimates;
  private final double from;
  private final double to;
  private final Markup svg = new Markup();

  private RehearsalChart(RehearsalReport report, Measure measure) {
    this.report = report;
    this.measure = measure;
    this.estimates = report.results().stream().map(r -> r.estimate(measure.part())).toList();
    double low = estimates.stream().mapToDouble(Estimate::low).min().orElse(0);
    double high = estimates.stream().mapToDouble(Estimate::high).max().orElse(1);
    double step = step(high - low);
    this.from = Math.max(0, Math.floor(low / step) * step);
    double end = Math.max(from + step, Math.ceil(high / step) * step);
    this.to = measure.share() ? Math.min(1, Math.max(end, from + step)) : end;
  }

  /** A whole step of which two to five fit a span. */
  private static double step(double span) {
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(span, 1e-3) / 2)));
    return Stream.of(1.0, 2.0, 5.0, 10.0)
        .map(lead -> lead * power)
        .filter(step -> span / step <= 5)
        .findFirst()
        .orElse(10 * power);
  }

  static Markup of(RehearsalReport report, Measure measure) {
    return new RehearsalChart(report, measure).draw();
  }

  private Markup draw() {
    double height = TOP + ROW * estimates.size() + BOTTOM;
    Svg.open(svg, LEFT + PLOT + RIGHT, height);
    Svg.describe(svg, measure.key(), measure.title(), said());
    axis(height - BOTTOM);
    for (int i = 0; i < estimates.size(); i++) {
      row(report.results().get(i), estimates.get(i), TOP + ROW * (i + 0.5));
    }
    return svg.closeLine();
  }

  private void axis(double y) {
    for (double value : new double[] {from, to}) {
      svg.empty("line", "x1", x(value), "x2", x(value), "y1", TOP, "y2", y, "class", "rule");
      String styleClass = value == from ? "small" : "end small";
      Svg.text(svg, x(value), y + 16, styleClass, say(value));
    }
  }

  private void row(Result result, Estimate estimate, double y) {
    Svg.text(svg, LEFT - 10, y + 4, "end small", result.habit().word());
    svg.empty("line", "x1", LEFT, "x2", LEFT + PLOT, "y1", y, "y2", y, "class", "rule");
    svg.empty(
        "line",
        "x1",
        x(estimate.low()),
        "x2",
        x(estimate.high()),
        "y1",
        y,
        "y2",
        y,
        "class",
        "interval");
    svg.empty("circle", "cx", x(estimate.mean()), "cy", y, "r", DOT, "class", "mean");
    Svg.text(svg, LEFT + PLOT + 8, y + 4, "small", say(estimate.mean()));
  }

  private String say(double value) {
    return measure.say(value) + measure.unit();
  }

  private String said() {
    return String.join(
        "; ",
        Stream.iterate(0, i -> i < estimates.size(), i -> i + 1)
            .map(
                i ->
                    String.format(
                        Locale.ROOT,
                        "%s %s (%s to %s)",
                        report.results().get(i).habit().word(),
                        say(estimates.get(i).mean()),
                        say(estimates.get(i).low()),
                        say(estimates.get(i).high())))
            .toList());
  }

  private double x(double value) {
    double part = to > from ? (value - from) / (to - from) : 0;
    return LEFT + PLOT * Math.max(0, Math.min(1, part));
  }
}
