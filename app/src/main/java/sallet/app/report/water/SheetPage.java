package sallet.app.report.water;

import java.util.List;
import java.util.Optional;
import sallet.app.report.Markup;
import sallet.app.report.PageFrame;
import sallet.app.report.Words;
import sallet.water.caution.WaterCaution;
import sallet.water.reservoir.TankForecast;

/** What the pages of water and of days away share. */
final class SheetPage {
  /** What these pages have beyond the common style. */
  private static final String STYLE =
      """
      .segment { fill: var(--l0); stroke: var(--quiet); stroke-width: .6; }
      .pump-on { fill: var(--c3); stroke: var(--ink); stroke-width: 1.2; }
      .band { fill: var(--c3); fill-opacity: .25; }
      .level { fill: none; stroke: var(--c3); stroke-width: 2.5; }
      .before { fill: none; stroke: var(--quiet); stroke-width: 1.5; stroke-dasharray: 2 4; }
      .least { stroke: var(--warn); stroke-width: 2; stroke-dasharray: 6 4; }
      .verdict { font-size: 1.25rem; font-weight: 600; max-width: 44rem; }
      .times { columns: 8rem; max-width: 46rem; list-style: none; padding: 0; font-variant-numeric: tabular-nums; }
      .two { display: flex; flex-wrap: wrap; gap: 1rem; align-items: center; }
      .two > svg { flex: 0 1 300px; } .two > div { flex: 1 1 16rem; }
      .note { break-before: page; }
      """;

  final Markup page = new Markup();

  void begin(String title, String span, String verdict) {
    page.open("html", "lang", "en");
    page.add(PageFrame.head("Sallet: " + title));
    page.open("body");
    page.style(STYLE);
    page.open("header");
    page.open("p", "class", "name").add(PageFrame.leaf()).text(" Sallet").closeLine();
    page.element("h1", Words.capital(title));
    page.element("p", span, "class", "span");
    page.element("p", verdict, "class", "verdict");
    page.closeLine();
    page.open("main");
  }

  String end() {
    page.closeLine().closeLine().closeLine();
    return "<!DOCTYPE html>\n" + page;
  }

  void section(String id, String title) {
    page.open("section", "id", id, "aria-labelledby", id + "-head");
    page.element("h2", title, "id", id + "-head");
  }

  void list(String id, String title, List<String> lines) {
    if (!lines.isEmpty()) {
      section(id, title);
      page.open("ul");
      lines.forEach(line -> page.element("li", line));
      page.closeLine().closeLine();
    }
  }

  void level(TankForecast tank, Optional<TankForecast> before) {
    page.open("div", "class", "scroll", "tabindex", "0")
        .add(LevelChart.svg(tank, before))
        .closeLine();
    page.element(
        "p",
        "Line: the middle of the forecast. Band: holds it 8 times in 10. Dashed: below it a flood is no longer whole."
            + (before.isPresent() ? " Dotted: the band before your readings." : ""),
        "class",
        "quiet");
    page.open("details").element("summary", "The same as a table");
    page.open("div", "class", "scroll", "tabindex", "0");
    head("Evening of", "Used, L", "Level, L", "Band, L", "EC, mS/cm", "Lasts");
    for (TankForecast.Day day : tank.days()) {
      page.open("tr").element("th", Words.day(day.date()), "scope", "row");
      number("%.1f", day.useL());
      number("%.1f", day.levelL());
      page.element("td", WaterWords.of("%.0f to %.0f", day.lowL(), day.highL()), "class", "number");
      if (Double.isNaN(day.ecMsCm())) {
        page.element("td", "");
      } else {
        number("%.2f", day.ecMsCm());
      }
      number("%.0f %%", 100 * day.lasts());
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine().closeLine();
  }

  void head(String... columns) {
    page.open("table").open("thead").open("tr");
    for (String column : columns) {
      page.element("th", column, "scope", "col");
    }
    page.closeLine().closeLine().open("tbody");
  }

  void number(String format, double value) {
    page.element("td", WaterWords.of(format, value), "class", "number");
  }

  void cautions(List<WaterCaution> cautions) {
    section("caution", "Caution");
    for (WaterCaution caution : cautions) {
      page.open("div", "class", "caution").element("p", caution.text()).closeLine();
    }
    page.closeLine();
  }
}
