package sallet.app.report;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.Pot;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;

/** The tray from above, to scale: light of every pot and what stands in it on a day. */
final class BenchMap {
  private static final double WIDTH = 400;

  /** Distance between neighbours that leaves room for a pot's name, letters and light, px. */
  private static final double ROOM_FOR_A_POT = 54;

  private static final double EDGE = 12;
  private static final double FOOT = 26;

  /** Upper ends of the steps of light that are tinted alike, mol/m²/d. */
  static final List<Integer> STEPS_MOL = List.of(4, 6, 9, 12, 16);

  private final Bench bench;
  private final PlanReport report;
  private final CropMarks marks;
  private final LocalDate day;
  private final double tileM;
  private final MapScale scale;
  private final double pxPerM;
  private final Markup svg = new Markup();

  private BenchMap(PlanReport report, CropMarks marks, LocalDate day) {
    this.bench = report.household().bench();
    this.report = report;
    this.marks = marks;
    this.day = day;
    this.tileM = bench.potsApartM();
    this.scale = scale(bench);
    this.pxPerM = scale.pxPerM();
  }

  /** The tray on a day. */
  static Markup of(PlanReport report, CropMarks marks, LocalDate day) {
    return new BenchMap(report, marks, day).draw();
  }

  static MapScale scale(Bench bench) {
    return MapScale.of(bench, bench.widthM(), EDGE, WIDTH, ROOM_FOR_A_POT);
  }

  /** The plan's first day and the last bowl day of each month. */
  static List<LocalDate> days(PlanReport report) {
    TreeMap<YearMonth, LocalDate> lastOfMonth = new TreeMap<>();
    report.plan().weeks().forEach(w -> lastOfMonth.put(YearMonth.from(w.bowlDay()), w.bowlDay()));
    TreeSet<LocalDate> days = new TreeSet<>(lastOfMonth.values());
    days.add(report.plan().from());
    return List.copyOf(days);
  }

  /** What stands in a pot at the end of a day, after that day's work. */
  static Optional<Sowing> standing(PlanReport report, String pot, LocalDate day) {
    return report.plan().batches().stream()
        .filter(s -> s.courses().stream().anyMatch(c -> stands(c, pot, day)))
        .findFirst();
  }

  private static boolean stands(Course c, String pot, LocalDate day) {
    return c.pots().contains(pot) && !c.toBench().isAfter(day) && c.end().isAfter(day);
  }

  private Markup draw() {
    double height = EDGE * 2 + bench.depthM() * pxPerM + FOOT;
    Svg.open(svg, scale.widthPx(), height, scale.leastWidthPx());
    Svg.describe(svg, "bench-" + day, "Bench on " + Words.day(day), sentence());
    bench.pots().forEach(this::light);
    svg.empty(
        "rect",
        "x",
        EDGE,
        "y",
        EDGE,
        "width",
        bench.widthM() * pxPerM,
        "height",
        bench.depthM() * pxPerM,
        "class",
        "tray");
    report.household().lamps().forEach(this::lamp);
    bench.pots().forEach(this::pot);
    foot(height - 8);
    return svg.closeLine();
  }

  private String sentence() {
    List<Double> dli = new ArrayList<>();
    int full = 0;
    for (Pot pot : bench.pots()) {
      report.light().dliMol(pot.name(), day).ifPresent(dli::add);
      full += standing(report, pot.name(), day).isPresent() ? 1 : 0;
    }
    String taken = "%d of %s taken.".formatted(full, Words.count(bench.pots().size(), "pot"));
    if (dli.isEmpty()) {
      return taken;
    }
    return "%s Light %s to %s mol a day."
        .formatted(
            taken,
            Words.oneDecimal(dli.stream().mapToDouble(d -> d).min().orElseThrow()),
            Words.oneDecimal(dli.stream().mapToDouble(d -> d).max().orElseThrow()));
  }

  private void light(Pot pot) {
    OptionalDouble dli = report.light().dliMol(pot.name(), day);
    if (dli.isEmpty()) {
      return;
    }
    double half = tileM / 2 * pxPerM;
    double left = Math.max(EDGE, x(pot) - half);
    double top = Math.max(EDGE, y(pot) - half);
    svg.empty(
        "rect",
        "x",
        left,
        "y",
        top,
        "width",
        Math.min(EDGE + bench.widthM() * pxPerM, x(pot) + half) - left,
        "height",
        Math.min(EDGE + bench.depthM() * pxPerM, y(pot) + half) - top,
        "class",
        "light" + step(dli.getAsDouble()));
  }

  /** Which step of light a value falls into, from 0. */
  static int step(double dliMol) {
    return (int) STEPS_MOL.stream().filter(end -> dliMol >= end).count();
  }

  private void pot(Pot pot) {
    Optional<Sowing> standing = standing(report, pot.name(), day);
    String fill = standing.map(s -> marks.of(s.crop()).fill()).orElse("none");
    svg.open(
        "circle",
        "cx",
        x(pot),
        "cy",
        y(pot),
        "r",
        Math.min(bench.potDiameterM(), tileM) / 2 * pxPerM,
        "fill",
        fill,
        "class",
        standing.isPresent() ? "leaf" : "free");
    svg.element("title", pot.name() + ": " + standing.map(Sowing::crop).orElse("free")).closeLine();
    standing.ifPresent(s -> Svg.chip(svg, x(pot), y(pot), marks.of(s.crop()).letters()));
    double half = tileM / 2 * pxPerM;
    Svg.text(svg, x(pot), y(pot) - half + 11, "middle letters halo", shortened(pot.name()));
    report
        .light()
        .dliMol(pot.name(), day)
        .ifPresent(
            dli ->
                Svg.text(
                    svg, x(pot), y(pot) + half - 3, "middle tiny halo", Words.oneDecimal(dli)));
  }

  private static String shortened(String name) {
    return name.codePointCount(0, name.length()) <= 7
        ? name
        : name.substring(0, name.offsetByCodePoints(0, 6)) + "…";
  }

  private void lamp(Lamp lamp) {
    double left = Math.max(0, lamp.xM() - lamp.eastwardM() / 2 - bench.xM());
    double right = Math.min(bench.widthM(), lamp.xM() + lamp.eastwardM() / 2 - bench.xM());
    double low = Math.max(0, lamp.yM() - lamp.northwardM() / 2 - bench.yM());
    double high = Math.min(bench.depthM(), lamp.yM() + lamp.northwardM() / 2 - bench.yM());
    if (right > left && high > low) {
      svg.empty(
          "rect",
          "x",
          EDGE + left * pxPerM,
          "y",
          EDGE + (bench.depthM() - high) * pxPerM,
          "width",
          (right - left) * pxPerM,
          "height",
          (high - low) * pxPerM,
          "class",
          "lamp");
    }
  }

  private void foot(double y) {
    double half = bench.widthM() / 2;
    svg.empty(
        "path",
        "d",
        "M%s %sv-6m0 3h%sm0 -3v6"
            .formatted(Markup.number(EDGE), Markup.number(y), Markup.number(half * pxPerM)),
        "class",
        "scale");
    Svg.text(
        svg,
        EDGE + half * pxPerM + 6,
        y,
        "small",
        String.format(Locale.ROOT, "%.2f m; the room's north is up", half));
  }

  private double x(Pot pot) {
    return EDGE + pot.xM() * pxPerM;
  }

  private double y(Pot pot) {
    return EDGE + (bench.depthM() - pot.yM()) * pxPerM;
  }
}
