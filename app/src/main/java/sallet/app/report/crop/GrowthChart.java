package sallet.app.report.crop;

import java.time.LocalDate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.app.report.Words;
import sallet.crop.forecast.Band;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.GrowthForecast.Course;

/**
 * Fresh mass of one plant from sowing on: the middle plant, the band of eight in ten, picks and
 * lifting, the days on which a whole plant is best lifted, and lettered stages.
 */
final class GrowthChart {
  /** As wide as a phone shows without scrolling. */
  private static final double WIDTH = 340;

  private static final double HEIGHT = 240;
  private static final double LEFT = 48;
  private static final double RIGHT = 14;

  /** Room for two rows of stage letters above the curve. */
  private static final double TOP = 46;

  private static final double BOTTOM = 42;
  private static final double LETTER_ROW = 17;

  /** Least distance between two numbers on the day axis, px. */
  private static final double TICK = 38;

  private static final double DISC = 3.5;

  private final GrowthForecast forecast;
  private final Course course;
  private final double lastDay;
  private final double topG;
  private final Markup svg = new Markup();

  private GrowthChart(GrowthForecast forecast, Course course) {
    this.forecast = forecast;
    this.course = course;
    this.lastDay = CropWords.daysBetween(forecast.sown(), course.lastDay());
    this.topG =
        Math.max(
            1, 1.05 * course.curve().stream().mapToDouble(d -> d.freshG().high()).max().orElse(1));
  }

  /**
   * The drawing.
   *
   * @param id unique on its page
   */
  static Markup of(GrowthForecast forecast, Course course, String id) {
    return new GrowthChart(forecast, course).draw(id);
  }

  /** What the drawing says, in words. */
  static String describe(Course course) {
    GrowthForecast.Day middle = course.curve().get(course.curve().size() / 2);
    GrowthForecast.Day last = course.curve().get(course.curve().size() - 1);
    return "Fresh mass of one plant: %s g on %s, %s g on %s, the last day. First harvest %s."
        .formatted(
            CropWords.band(middle.freshG(), "-"),
            Words.day(middle.date()),
            CropWords.band(last.freshG(), "-"),
            Words.day(last.date()),
            CropWords.firstHarvest(course));
  }

  private Markup draw(String id) {
    Svg.open(svg, WIDTH, HEIGHT);
    Svg.describe(svg, id, "Growth of " + Words.spoken(forecast.crop().name()), describe(course));
    grams();
    days();
    window();
    stages();
    path("band", outline());
    path("edge", line(Band::low));
    path("edge", line(Band::high));
    path("course", line(Band::median));
    course.takes().forEach(this::take);
    return svg.closeLine();
  }

  private void grams() {
    double step = Svg.gridStep(topG);
    for (double grams = 0; grams <= topG; grams += step) {
      line(LEFT, y(grams), WIDTH - RIGHT, y(grams), "rule");
      Svg.text(svg, LEFT - 6, y(grams) + 4, "end small", Words.grams(grams));
    }
  }

  private void days() {
    int step = 7;
    while (x(step) - x(0) < TICK) {
      step *= 2;
    }
    for (int day = 0; day <= lastDay; day += step) {
      line(x(day), y(0), x(day), y(0) + 5, "tick");
      Svg.text(svg, x(day), y(0) + 18, "middle small", Integer.toString(day));
    }
    Svg.text(svg, LEFT, y(0) + 35, "small", "days from sowing on " + Words.day(forecast.sown()));
  }

  private void window() {
    course
        .window()
        .ifPresent(
            w -> {
              double from = day(course.emerged().plusDays(w.firstDay()));
              double to = day(course.emerged().plusDays(w.lastDay()));
              svg.empty(
                  "rect",
                  "x",
                  x(from),
                  "y",
                  y(0) - 6,
                  "width",
                  Math.max(2, x(to) - x(from)),
                  "height",
                  6.0,
                  "class",
                  "window");
            });
  }

  private void stages() {
    List<CropWords.Stage> stages = CropWords.stages(forecast.sown(), course);
    for (int i = 1; i < stages.size(); i++) {
      double at = x(day(stages.get(i).date()));
      double row = 12 + LETTER_ROW * (i % 2);
      line(at, row + 7, at, y(0), "stage");
      Svg.chip(svg, at, row, CropWords.letter(i));
    }
  }

  private void take(GrowthForecast.Take take) {
    double at = day(take.date());
    double y = y(medianOn(at));
    if (take.lift()) {
      svg.empty(
          "path",
          "d",
          "M%s %sl6 6-6 6-6-6z".formatted(Markup.number(x(at)), Markup.number(y - 6)),
          "class",
          "lift");
    } else {
      svg.empty("circle", "cx", x(at), "cy", y, "r", DISC, "class", "pick");
    }
  }

  private double medianOn(double day) {
    int i = (int) (day - day(course.curve().get(0).date()));
    return course
        .curve()
        .get(Math.max(0, Math.min(course.curve().size() - 1, i)))
        .freshG()
        .median();
  }

  private String line(ToDoubleFunction<Band> end) {
    StringBuilder d = new StringBuilder();
    for (GrowthForecast.Day day : course.curve()) {
      d.append(d.isEmpty() ? "M" : "L").append(point(day, end));
    }
    return d.toString();
  }

  /** Along the low end and back along the high one. */
  private String outline() {
    StringBuilder d = new StringBuilder(line(Band::low));
    for (int i = course.curve().size() - 1; i >= 0; i--) {
      d.append('L').append(point(course.curve().get(i), Band::high));
    }
    return d.append('Z').toString();
  }

  private String point(GrowthForecast.Day day, ToDoubleFunction<Band> end) {
    return Markup.number(x(day(day.date())))
        + " "
        + Markup.number(y(end.applyAsDouble(day.freshG())));
  }

  private void path(String style, String d) {
    svg.empty("path", "d", d, "class", style);
  }

  private void line(double x1, double y1, double x2, double y2, String style) {
    svg.empty("line", "x1", x1, "y1", y1, "x2", x2, "y2", y2, "class", style);
  }

  private double day(LocalDate date) {
    return CropWords.daysBetween(forecast.sown(), date);
  }

  private double x(double day) {
    return LEFT + (WIDTH - LEFT - RIGHT) * day / lastDay;
  }

  private double y(double grams) {
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * grams / topG;
  }
}
