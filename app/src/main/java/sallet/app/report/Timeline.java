package sallet.app.report;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;

/** The batches through cells, nursery and pots: one lane for plants that live the same life. */
final class Timeline {
  private static final double PX_PER_DAY = 5;
  private static final double LEFT = 10;
  private static final double HEAD = 30;
  private static final double LANE = 40;
  private static final double BAR = 14;
  private static final double LETTER = 6.6;

  private final LocalDate from;
  private final LocalDate to;
  private final CropMarks marks;
  private final Markup svg = new Markup();

  /** A batch's plants of one life. */
  record Lane(Sowing sowing, Course course) {
    String name() {
      String plants = Words.count(course.plants(), "plant");
      return "%s: %s in %s".formatted(sowing.batch(), plants, Words.list(course.pots()));
    }
  }

  private Timeline(PlanReport report, CropMarks marks) {
    this.from = report.plan().from();
    this.to =
        lanes(report).stream()
            .map(lane -> lane.course().end())
            .max(Comparator.naturalOrder())
            .filter(end -> end.isAfter(report.lastDay()))
            .orElse(report.lastDay());
    this.marks = marks;
  }

  static List<Lane> lanes(PlanReport report) {
    return report.plan().batches().stream()
        .flatMap(sowing -> sowing.courses().stream().map(course -> new Lane(sowing, course)))
        .toList();
  }

  static Markup of(PlanReport report, CropMarks marks) {
    return new Timeline(report, marks).draw(lanes(report));
  }

  private Markup draw(List<Lane> lanes) {
    double height = HEAD + lanes.size() * LANE + 8;
    Svg.open(svg, Math.max(x(to) + 12, 320), height);
    Svg.describe(
        svg,
        "timeline",
        "Batches through cells, nursery and pots",
        "%s from %s to %s, one lane each."
            .formatted(
                Words.count(lanes.size(), "group") + " of plants", Words.day(from), Words.day(to)));
    months(height);
    for (int i = 0; i < lanes.size(); i++) {
      lane(lanes.get(i), HEAD + i * LANE);
    }
    return svg.closeLine();
  }

  private void months(double height) {
    for (LocalDate day = from.withDayOfMonth(1); !day.isAfter(to); day = day.plusMonths(1)) {
      double x = x(day.isBefore(from) ? from : day);
      svg.empty("line", "x1", x, "x2", x, "y1", 4.0, "y2", height, "class", "rule");
      boolean room = x(day.plusMonths(1)) - x >= 40 || day.plusMonths(1).isAfter(to);
      if (room) {
        String month = day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        Svg.text(svg, x + 4, 18, "strong", month);
      }
    }
  }

  private void lane(Lane lane, double top) {
    Course c = lane.course();
    double y = top + 16;
    label(lane, top + 12);
    stretch(lane.sowing().date(), c.toNursery(), y, "cells");
    stretch(c.toNursery(), c.toBench(), y, "nursery");
    svg.empty(
        "rect",
        "x",
        x(c.toBench()),
        "y",
        y,
        "width",
        x(c.end()) - x(c.toBench()),
        "height",
        BAR,
        "fill",
        marks.of(lane.sowing().crop()).fill(),
        "class",
        "leaf");
    c.picks().stream().filter(p -> !isLift(c, p)).forEach(p -> pickMark(p, y));
    endMark(c, y);
  }

  private static boolean isLift(Course c, Pick pick) {
    return c.lifted() && pick.date().equals(c.end());
  }

  private void label(Lane lane, double y) {
    CropMarks.Mark mark = marks.of(lane.sowing().crop());
    String text = mark.letters() + " " + lane.name();
    double start = x(lane.sowing().date());
    boolean fits = start + text.length() * LETTER < x(to);
    if (fits) {
      Svg.text(svg, start, y, "small", text);
    } else {
      Svg.text(svg, x(lane.course().end()), y, "end small", text);
    }
  }

  private void stretch(LocalDate from, LocalDate to, double y, String place) {
    svg.empty(
        "rect", "x", x(from), "y", y, "width", x(to) - x(from), "height", BAR, "class", place);
  }

  private void pickMark(Pick pick, double y) {
    svg.open("circle", "cx", x(pick.date()), "cy", y + BAR / 2, "r", 4.0, "class", "pick");
    svg.element(
            "title",
            "%s: pick %s each".formatted(Words.day(pick.date()), Words.grams(pick.gramsPerPlant())))
        .closeLine();
  }

  private void endMark(Course c, double y) {
    if (c.outlivesPlan()) {
      return;
    }
    double x = x(c.end());
    String path =
        c.lifted()
            ? "M%s %sl7 %sh-14z".formatted(Markup.number(x), Markup.number(y - 2), BAR + 4)
            : "M%1$s %2$sl12 12m0 -12l-12 12"
                .formatted(Markup.number(x - 6), Markup.number(y + BAR / 2 - 6));
    svg.open("path", "d", path, "class", c.lifted() ? "lift" : "clear");
    svg.element("title", Words.day(c.end()) + (c.lifted() ? ": lift" : ": clear")).closeLine();
  }

  private double x(LocalDate day) {
    return LEFT + Math.max(0, ChronoUnit.DAYS.between(from, day)) * PX_PER_DAY;
  }

  /** Grams a lane gives in all, edible. */
  static double grams(Lane lane) {
    return lane.course().plants()
        * lane.course().picks().stream().mapToDouble(Pick::gramsPerPlant).sum();
  }

  /** The day of a lane's first pick. */
  static Optional<LocalDate> firstPick(Lane lane) {
    return lane.course().picks().stream().map(Pick::date).min(Comparator.naturalOrder());
  }
}
