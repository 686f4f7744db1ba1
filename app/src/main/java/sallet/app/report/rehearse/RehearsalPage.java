package sallet.app.report.rehearse;

import java.util.List;
import sallet.app.report.Markup;
import sallet.app.report.PageFrame;
import sallet.app.report.Words;
import sallet.plan.rehearse.Estimate;
import sallet.plan.rehearse.Result;

/** A rehearsal as one self-contained page: no script, no request to anywhere. */
public final class RehearsalPage {
  private static final String STYLE =
      """
      .measures { display: grid; grid-template-columns: repeat(auto-fit, minmax(20rem, 1fr)); gap: .5rem 1.5rem; }
      .measures figure { margin: 0; overflow-x: auto; }
      .measures figcaption { font-weight: 600; }
      .interval { stroke: var(--accent); stroke-width: 6; stroke-linecap: round; opacity: .45; }
      .mean { fill: var(--accent); stroke: var(--sheet); stroke-width: 1.5; }
      .results td, .results th { text-align: right; }
      .results th:first-child { text-align: left; }
      .results small { display: block; color: var(--quiet); white-space: nowrap; }
      """;

  private final RehearsalReport report;
  private final List<Measure> measures;
  private final Markup page = new Markup();

  private RehearsalPage(RehearsalReport report) {
    this.report = report;
    this.measures = Measure.all(report);
  }

  /** The page, a whole HTML document. */
  public static String of(RehearsalReport report) {
    return new RehearsalPage(report).document();
  }

  private String document() {
    page.open("html", "lang", "en");
    page.add(PageFrame.head("Sallet: rehearsal"));
    page.open("body");
    page.style(STYLE);
    header();
    page.open("main");
    pictures();
    table();
    list("habits", "The habits", report.results().stream().map(RehearsalWords::habit).toList());
    list("hidden", "What the seasons hide", RehearsalWords.hidden(report.hidden()));
    page.closeLine().closeLine().closeLine();
    return "<!DOCTYPE html>\n" + page;
  }

  private void header() {
    page.open("header");
    page.open("p", "class", "name").add(PageFrame.leaf()).text(" Sallet").closeLine();
    page.element("h1", "Rehearsal");
    page.element("p", "Seasons from " + Words.dayAndYear(report.from()), "class", "span");
    page.element("p", RehearsalWords.played(report), "class", "summary");
    page.closeLine();
  }

  private void section(String id, String title) {
    page.open("section", "id", id, "aria-labelledby", id + "-head");
    page.element("h2", title, "id", id + "-head");
  }

  private void pictures() {
    section("picture", "Habit by habit");
    page.open("div", "class", "measures");
    for (Measure measure : measures) {
      page.open("figure");
      page.element("figcaption", measure.title());
      page.add(RehearsalChart.of(report, measure));
      page.closeLine();
    }
    page.closeLine();
    page.element(
        "p",
        "Dots are means over the seasons; strokes are where the true mean lies in"
            + " nine of ten rehearsals.",
        "class",
        "quiet");
    page.closeLine();
  }

  private void table() {
    section("table", "The numbers");
    page.open("div", "class", "scroll", "tabindex", "0");
    page.open("table", "class", "results");
    page.open("thead").open("tr");
    page.element("th", "habit", "scope", "col");
    measures.forEach(m -> page.element("th", String.join(" ", m.column()).trim(), "scope", "col"));
    page.closeLine().closeLine();
    page.open("tbody");
    report.results().forEach(this::row);
    page.closeLine().closeLine().closeLine();
    page.element("p", RehearsalWords.TUNED, "class", "quiet");
    page.closeLine();
  }

  private void row(Result result) {
    page.open("tr");
    page.element("th", result.habit().word(), "scope", "row");
    for (Measure measure : measures) {
      Estimate estimate = result.estimate(measure.part());
      page.open("td");
      page.text(measure.say(estimate.mean()) + measure.unit());
      page.element("small", measure.say(estimate.low()) + " to " + measure.say(estimate.high()));
      page.closeLine();
    }
    page.closeLine();
  }

  private void list(String id, String title, List<String> lines) {
    section(id, title);
    page.open("ul");
    lines.forEach(line -> page.element("li", line));
    page.closeLine().closeLine();
  }
}
