package sallet.app.report;

import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.BowlWeek;
import sallet.plan.SowingPlan;

/**
 * The plan as one self-contained page: no script, no request to anywhere, drawings as SVG with a
 * table twin each, readable on a phone and printable.
 */
public final class PlanPage {
  private final PlanReport report;
  private final CropMarks marks;
  private final Markup page = new Markup();

  private PlanPage(PlanReport report) {
    this.report = report;
    this.marks = new CropMarks(report.crops());
  }

  /** The page, a whole HTML document. */
  public static String of(
      PlanAnswer answer, Household household, Catalogue catalogue, BenchLight light) {
    return new PlanPage(PlanReport.of(answer, household, catalogue, light)).document();
  }

  private String document() {
    page.open("html", "lang", "en");
    head();
    page.open("body");
    page.add(Patterns.of(marks));
    header();
    page.open("main");
    picksNow();
    nextTwoWeeks();
    titled("changes", "What changed since the last plan, and why", report.answer().changes());
    titled(
        "standing",
        "What stands, with its fresh grams",
        report.answer().standing().map(StandingWords::lines).orElse(List.of()));
    bowls();
    shortBowls();
    batches();
    bench();
    allTasks();
    limits();
    judgement();
    found();
    page.closeLine().closeLine().closeLine();
    return "<!DOCTYPE html>\n" + page;
  }

  private void head() {
    page.add(PageFrame.head("Sallet: sowing plan from " + Words.dayAndYear(report.plan().from())));
  }

  private void header() {
    page.open("header");
    page.open("p", "class", "name").add(PageFrame.leaf()).text(" Sallet").closeLine();
    page.element("h1", "Sowing plan");
    page.element(
        "p",
        "%s to %s"
            .formatted(Words.dayAndYear(report.plan().from()), Words.dayAndYear(report.lastDay())),
        "class",
        "span");
    page.element("p", report.summary(), "class", "summary");
    page.closeLine();
  }

  private void section(String id, String title) {
    page.open("section", "id", id, "aria-labelledby", id + "-head");
    page.element("h2", title, "id", id + "-head");
  }

  private void nextTwoWeeks() {
    section("next", "The next two weeks");
    SortedMap<LocalDate, List<Task>> days =
        Tasks.byDay(report.tasks(), report.plan().from(), PlanReport.TWO_WEEKS);
    if (days.isEmpty()) {
      page.element("p", "Nothing to do in these two weeks.");
    }
    days.forEach(this::dayList);
    if (!report.seeds().isEmpty()) {
      page.element("p", "Seeds for the whole plan: " + String.join(", ", report.seeds()) + ".");
    }
    page.add(caution(Caution.FOOD));
    page.closeLine();
  }

  private void dayList(LocalDate day, List<Task> tasks) {
    page.open("div", "class", "day");
    page.open("h3").text(Words.day(day) + " ");
    page.element("span", "about %d min".formatted(Tasks.minutes(tasks)), "class", "quiet");
    page.closeLine();
    page.open("ul", "class", "checklist");
    tasks.forEach(task -> tick(task.text()));
    report.fridge(day).ifPresent(this::tick);
    page.close().closeLine();
  }

  private void tick(String text) {
    page.open("li").open("label");
    page.empty("input", "type", "checkbox");
    page.element("span", text);
    page.close().closeLine();
  }

  private static Markup caution(Caution caution) {
    Markup part = new Markup();
    part.open("div", "class", "caution", "role", "note");
    part.open("p");
    part.open("strong").text("Caution: " + caution.subject() + ".").close();
    return part.text(" " + caution.text()).closeLine().closeLine();
  }

  private void bowls() {
    section("bowls", "The bowls");
    page.element(
        "p",
        "Each bar is a bowl, stacked by kind; the thick line is what you want. A number with a minus"
            + " says how many grams are missing. The thin stroke beside a bar spans what is in the"
            + " bowl in eight of ten seasons when the plan is followed as it is, where they differ.");
    legend();
    chart("Chart of the bowls", BowlChart.of(report, marks));
    page.add(PageTables.bowls(report));
    page.closeLine();
  }

  private void legend() {
    page.open("ul", "class", "legend");
    for (CropMarks.Mark mark : marks.all()) {
      page.open("li");
      page.open("svg", "viewBox", "0 0 30 20", "width", 30, "height", 20, "aria-hidden", "true");
      page.empty(
          "rect",
          "x",
          0.5,
          "y",
          0.5,
          "width",
          29,
          "height",
          19,
          "fill",
          mark.fill(),
          "class",
          "leaf");
      Svg.chip(page, 15, 10, mark.letters());
      page.close();
      page.text(" " + mark.crop()).closeLine();
    }
    page.closeLine();
  }

  private void chart(String label, Markup svg) {
    page.open("div", "class", "scroll", "tabindex", 0, "role", "region", "aria-label", label);
    page.add(svg).closeLine();
  }

  private void shortBowls() {
    section("short", "Short bowls and why");
    List<BowlWeek> weeks = report.shortWeeks();
    if (weeks.isEmpty()) {
      page.element(
          "p",
          report.reachable().isEmpty()
              ? "No bowl can be reached."
              : "None: every bowl that can be reached is full.");
    } else {
      page.open("ul");
      for (BowlWeek week : weeks) {
        page.open("li");
        page.open("strong").text(Words.day(week.bowlDay())).close();
        page.text(
                ": %s short of %s; %s."
                    .formatted(
                        Words.grams(week.shortfallGrams()),
                        Words.grams(week.demandGrams()),
                        PlanReport.whyShort(week)))
            .closeLine();
      }
      page.closeLine();
    }
    page.closeLine();
  }

  private void batches() {
    section("batches", "The batches");
    legend();
    page.open("ul", "class", "legend");
    legendItem("cells", "in its cell");
    legendItem("nursery", "in the nursery");
    legendItem("leaf", "in its pot");
    page.open("li").element("span", "●", "class", "sign").text(" pick").closeLine();
    page.open("li").element("span", "▲", "class", "sign").text(" lift, the end").closeLine();
    page.open("li").element("span", "✕", "class", "sign").text(" clear, the end").closeLine();
    page.closeLine();
    chart("Timeline of the batches", Timeline.of(report, marks));
    page.add(PageTables.batches(report));
    page.closeLine();
  }

  private void legendItem(String styleClass, String text) {
    page.open("li");
    page.open("svg", "viewBox", "0 0 30 14", "width", 30, "height", 14, "aria-hidden", "true");
    Object fill = styleClass.equals("leaf") && !marks.all().isEmpty() ? "url(#crop0)" : "none";
    if (styleClass.equals("leaf")) {
      page.empty(
          "rect", "x", 0.5, "y", 0.5, "width", 29, "height", 13, "class", styleClass, "fill", fill);
    } else {
      page.empty("rect", "x", 0.5, "y", 0.5, "width", 29, "height", 13, "class", styleClass);
    }
    page.close().text(" " + text).closeLine();
  }

  private void bench() {
    section("bench", "The bench");
    MapScale scale = BenchMap.scale(report.household().bench());
    page.element(
        "p",
        "Seen from above, to scale, after the day's work. Above each pot its name, below it its"
            + " light in mol per m² and day; the dashed frame is the lamp."
            + scale.hint());
    page.open("div", "class", "maps", "style", scale.rowStyle());
    for (LocalDate day : BenchMap.days(report)) {
      page.open("figure");
      page.element("figcaption", Words.day(day));
      chart("Bench on " + Words.day(day), BenchMap.of(report, marks, day));
      page.closeLine();
    }
    page.closeLine();
    page.add(PageTables.bench(report));
    Caution.ofBench(report.household()).forEach(c -> page.add(caution(c)));
    page.closeLine();
  }

  private void allTasks() {
    section("tasks", "All tasks");
    page.element(
        "p",
        "In the order in which they can be done: pots are freed first, then filled, then the"
            + " nursery, then the cells; picks from standing plants come last.");
    page.add(PageTables.tasks(report));
    page.closeLine();
  }

  private void limits() {
    section("limits", "What limits the bowl");
    sentences(Found.limits(report));
    page.closeLine();
    titled("what-if", "What if", PlanWords.bottlenecks(report.answer().bottlenecks()));
    titled("notes", "Good to know", report.plan().notes());
  }

  private void picksNow() {
    List<SowingPlan.PickNow> picks = report.plan().picksNow();
    if (!picks.isEmpty()) {
      titled(
          "now",
          "The next bowl, " + Words.day(picks.get(0).date()),
          picks.stream().map(PlanWords::pickNow).toList());
    }
  }

  /** A section of sentences; none when there is nothing to say. */
  private void titled(String id, String title, List<String> sentences) {
    if (!sentences.isEmpty()) {
      section(id, title);
      sentences(sentences);
      page.closeLine();
    }
  }

  private void sentences(List<String> sentences) {
    page.open("ul");
    sentences.forEach(text -> page.element("li", text));
    page.closeLine();
  }

  private void judgement() {
    section("judgement", "What is judgement here");
    page.open("ul");
    Judgement.of(report).forEach(text -> page.element("li", text));
    page.element("li", Judgement.CROP_RULES).closeLine();
    page.add(PageTables.cropRules(report));
    page.closeLine();
  }

  private void found() {
    section("found", "How the plan was found");
    page.element("p", Found.sentence(report));
    page.add(PageTables.objective(report));
    page.open("ol");
    report.plan().solver().steps().forEach(step -> page.element("li", step));
    page.close().closeLine();
  }
}
