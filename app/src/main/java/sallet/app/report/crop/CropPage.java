package sallet.app.report.crop;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import sallet.app.report.Caution;
import sallet.app.report.Markup;
import sallet.app.report.PageFrame;
import sallet.app.report.Words;
import sallet.crop.Concern;
import sallet.crop.TomatoPlan;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.GrowthForecast.Course;
import sallet.crop.forecast.RoomVerdict;
import sallet.crop.risk.Risk;

/** What grows in a room as one self-contained page: no script, no request to anywhere. */
public final class CropPage {
  /** What this page has beyond the common style: curve, band and marks. */
  private static final String STYLE =
      """
      .band { fill: var(--accent); fill-opacity: .18; stroke: none; }
      .edge { fill: none; stroke: var(--accent); stroke-width: 1.2; stroke-dasharray: 4 3; }
      .course { fill: none; stroke: var(--ink); stroke-width: 2.2; stroke-linejoin: round; }
      .stage { stroke: var(--quiet); stroke-width: 1; stroke-dasharray: 1 3; }
      .tick { stroke: var(--ink); stroke-width: 1; }
      .window { fill: var(--accent); }
      svg .chip { stroke: var(--quiet); stroke-width: .8; }
      .stages { columns: 16rem; list-style: none; padding: 0; }
      .stages li { break-inside: avoid; }
      .risks { list-style: none; padding: 0; }
      .risks li { padding: .375rem 0; border-bottom: 1px solid var(--rule); }
      .act { color: var(--warn); }
      @media print { .stages { columns: 3; } }
      """;

  private static final String LEGEND =
      "Line: the middle plant. Shaded between dashed lines: eight in ten plants. Circles: weekly"
          + " picks. Diamond: lifted. Bar at the foot: the days on which it is best lifted. Letters:"
          + " the stages told below.";

  /** Days between two rows of the curve's table. */
  private static final int CURVE_STEP = 7;

  private final CropReport report;
  private final Markup page = new Markup();

  private CropPage(CropReport report) {
    this.report = report;
  }

  /** The page, a whole HTML document. */
  public static String of(CropReport report) {
    return new CropPage(report).document();
  }

  private String document() {
    page.open("html", "lang", "en");
    page.add(PageFrame.head("Sallet: " + title()));
    page.open("body");
    page.style(STYLE);
    header();
    page.open("main");
    report.detail().ifPresentOrElse(this::detail, this::comparison);
    lines("sure", "How sure", List.of(CropWords.HOW_SURE));
    page.open("aside", "class", "caution").open("p");
    page.open("strong").text(Caution.FOOD.subject() + ".").close();
    page.text(" " + Caution.FOOD.text()).closeLine().closeLine();
    page.closeLine().closeLine().closeLine();
    return "<!DOCTYPE html>\n" + page;
  }

  private String title() {
    return report
        .detail()
        .map(detail -> Words.capital(Words.spoken(detail.crop().name())))
        .orElse("What grows here");
  }

  private void header() {
    page.open("header");
    page.open("p", "class", "name").add(PageFrame.leaf()).text(" Sallet").closeLine();
    page.element("h1", title());
    page.element("p", "Sown on " + Words.dayAndYear(report.sown()), "class", "span");
    page.element("p", CropWords.spot(report.spot()), "class", "summary");
    page.closeLine();
  }

  private void comparison() {
    section("room", "The room");
    risks(List.of(report.damp()));
    page.element("p", "How to read the drawings. " + LEGEND, "class", "quiet");
    page.closeLine();
    for (RoomVerdict.Grade grade : RoomVerdict.Grade.values()) {
      List<RoomVerdict> some = report.verdicts().stream().filter(v -> v.grade() == grade).toList();
      if (!some.isEmpty()) {
        section("grade-" + grade.name().toLowerCase(Locale.ROOT), CropWords.grade(grade));
        page.open("div", "class", "maps");
        some.forEach(this::card);
        page.closeLine().closeLine();
      }
    }
  }

  private void card(RoomVerdict verdict) {
    page.open("figure", "class", "crop");
    page.element("figcaption", Words.capital(Words.spoken(verdict.crop().name())));
    verdict
        .forecast()
        .ifPresent(
            forecast ->
                forecast
                    .course()
                    .ifPresent(
                        course -> {
                          scroll(GrowthChart.of(forecast, course, id(verdict)));
                          page.element(
                              "p",
                              "First harvest %s; about %d g a pot and week."
                                  .formatted(
                                      CropWords.firstHarvest(course),
                                      Math.round(course.potWeekG())));
                          stages(course);
                        }));
    list(verdict.why());
    page.closeLine();
  }

  private static String id(RoomVerdict verdict) {
    return "growth-" + verdict.crop().name().replaceAll("[^\\p{L}\\p{N}]+", "-");
  }

  private void detail(CropReport.Detail detail) {
    RoomVerdict verdict = report.verdicts().get(0);
    section("verdict", CropWords.grade(verdict.grade()));
    page.element("p", CropWords.kind(detail.crop()));
    if (detail.forecast().isEmpty()) {
      page.element("p", "Not planned in pots: " + detail.crop().whyNotPlannable() + ".");
    }
    list(verdict.why());
    page.closeLine();
    detail.forecast().ifPresent(forecast -> forecast(forecast, detail.seedYears()));
    detail.tomato().ifPresent(plan -> fruit(detail, plan));
    months(detail.months());
    lines(
        "keeping",
        "Other ways and keeping",
        CropWords.keeping(detail.crop(), report.spot().dliMol()));
    lines("sources", "Where the numbers come from", CropWords.sources(detail.crop()));
  }

  private void forecast(GrowthForecast forecast, OptionalDouble seedYears) {
    forecast
        .course()
        .ifPresent(
            course -> {
              growth(forecast, course);
              harvest(course);
              section("risks", "What may go wrong");
              risks(course.risks());
              page.closeLine();
            });
    lines("seed", "Seed", CropWords.seed(forecast, seedYears));
  }

  private void growth(GrowthForecast forecast, Course course) {
    section("growth", "Growth");
    scroll(GrowthChart.of(forecast, course, "growth-curve"));
    page.element("p", LEGEND, "class", "quiet");
    page.element("p", "First harvest " + CropWords.firstHarvest(course) + ".");
    stages(course);
    page.open("details").element("summary", "The same as a table");
    table(List.of("Date", "Day", "Middle plant", "One in ten below", "One in ten above"));
    for (int i = 0; i < course.curve().size(); i += CURVE_STEP) {
      GrowthForecast.Day day = course.curve().get(i);
      page.open("tr").element("th", Words.day(day.date()), "scope", "row");
      number(Long.toString(CropWords.daysBetween(forecast.sown(), day.date())));
      number(Words.grams(day.freshG().median()));
      number(Words.grams(day.freshG().low()));
      number(Words.grams(day.freshG().high()));
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine();
    page.closeLine();
  }

  private void stages(Course course) {
    List<CropWords.Stage> stages = CropWords.stages(report.sown(), course);
    page.open("ol", "class", "stages");
    for (int i = 0; i < stages.size(); i++) {
      CropWords.Stage stage = stages.get(i);
      page.open("li");
      if (i > 0) {
        page.open("strong").text(CropWords.letter(i)).close().text(" ");
      }
      page.text(dated(stage.name(), stage.date())).closeLine();
    }
    page.closeLine();
  }

  private String dated(String name, LocalDate date) {
    return "%s: day %d, %s"
        .formatted(name, CropWords.daysBetween(report.sown(), date), Words.day(date));
  }

  private void harvest(Course course) {
    section("harvest", "Harvest of a pot, edible");
    page.open("div", "class", "scroll", "tabindex", "0");
    table(List.of("Date", "How", "Middle plant", "One in ten below", "One in ten above"));
    for (GrowthForecast.Take take : course.takes()) {
      page.open("tr").element("th", Words.day(take.date()), "scope", "row");
      page.element("td", take.lift() ? "lift" : "pick");
      number(Words.grams(take.edibleG().median()));
      number(Words.grams(take.edibleG().low()));
      number(Words.grams(take.edibleG().high()));
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine();
    page.element("p", CropWords.inAll(course));
    page.closeLine();
  }

  private void risks(List<Risk> risks) {
    page.open("ul", "class", "risks");
    for (Risk risk : risks) {
      page.open("li");
      page.open("strong", "class", CropWords.concern(risk.concern()));
      page.text(Words.capital(CropWords.concern(risk.concern())) + ": ").close();
      page.text(Words.capital(risk.kind().words()) + ". " + risk.says());
      if (risk.concern() != Concern.NONE) {
        page.text(" " + risk.mend());
      }
      page.element("div", CropWords.drivers(risk), "class", "quiet");
      page.closeLine();
    }
    page.closeLine();
  }

  private void fruit(CropReport.Detail detail, TomatoPlan plan) {
    section("fruit", "Stages (common practice, by warmth)");
    list(plan.stages().stream().map(stage -> dated(stage.name(), stage.date())).toList());
    CropWords.fruit(detail.crop().guide(), plan).forEach(text -> page.element("p", text));
    page.element("h3", "Hand work");
    list(
        plan.work().stream()
            .map(work -> "from " + Words.day(work.from()) + ": " + work.text())
            .toList());
    page.closeLine();
  }

  private void months(List<CropReport.PotMonths> months) {
    if (months.isEmpty()) {
      return;
    }
    section("months", "Days from sowing to 60 / 120 / 180 g");
    page.open("div", "class", "scroll", "tabindex", "0").open("table").open("thead").open("tr");
    page.element("th", "Sown on", "scope", "col");
    for (CropReport.PotMonths pot : months) {
      page.element("th", pot.spot().pot() + " (" + pot.spot().note() + ")", "scope", "col");
    }
    page.closeLine().closeLine().open("tbody");
    for (int m = 0; m < months.get(0).rows().size(); m++) {
      LocalDate sown = months.get(0).rows().get(m).sown();
      page.open("tr").element("th", Words.dayAndYear(sown), "scope", "row");
      for (CropReport.PotMonths pot : months) {
        page.element("td", CropWords.days(pot.rows().get(m)));
      }
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine();
    page.element(
        "p", "One unpicked plant of median luck. A dash: it is too old by then.", "class", "quiet");
    page.closeLine();
  }

  /** Opens a table and its body, which hold two elements to close. */
  private void table(List<String> heads) {
    page.open("table").open("thead").open("tr");
    heads.forEach(head -> page.element("th", head, "scope", "col"));
    page.closeLine().closeLine().open("tbody");
  }

  private void number(String text) {
    page.element("td", text, "class", "number");
  }

  private void section(String id, String title) {
    page.open("section", "id", id, "aria-labelledby", id + "-head");
    page.element("h2", title, "id", id + "-head");
  }

  private void lines(String id, String title, List<String> lines) {
    section(id, title);
    lines.forEach(line -> page.element("p", line));
    page.closeLine();
  }

  private void list(List<String> lines) {
    if (!lines.isEmpty()) {
      page.open("ul");
      lines.forEach(line -> page.element("li", line));
      page.closeLine();
    }
  }

  private void scroll(Markup drawing) {
    page.open("div", "class", "scroll", "tabindex", "0").add(drawing).closeLine();
  }
}
