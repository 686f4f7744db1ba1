package sallet.app.report.light;

import java.util.List;
import java.util.Locale;
import sallet.app.report.Caution;
import sallet.app.report.MapScale;
import sallet.app.report.Markup;
import sallet.app.report.PageFrame;
import sallet.app.report.Words;
import sallet.household.Pot;
import sallet.light.LampWeek;
import sallet.light.LightWatch;
import sallet.light.LightYear;

/** The year's light as one self-contained page: no script, no request to anywhere. */
public final class LightPage {
  /** What this page has beyond the common style: colours of daylight, lamp light and panes. */
  private static final String STYLE =
      """
      .daylight { fill: var(--l5); stroke: var(--ink); stroke-width: .8; }
      .lamplight { fill: var(--sheet); stroke: var(--ink); stroke-width: .8; stroke-dasharray: 3 2; }
      .weeks { stroke: var(--ink); stroke-width: 1.5; }
      .maps { grid-template-columns: repeat(auto-fill, minmax(min(26rem, 100%), 1fr)); }
      .runs { white-space: nowrap; }
      .pane { fill: var(--accent); }
      .roof-pane { fill: none; stroke: var(--accent); stroke-width: 2; }
      """;

  private final LightYear year;
  private final Markup page = new Markup();

  private LightPage(LightYear year) {
    this.year = year;
  }

  /** The page, a whole HTML document. */
  public static String of(LightYear year) {
    return new LightPage(year).document();
  }

  private String document() {
    page.open("html", "lang", "en");
    page.add(PageFrame.head("Sallet: light at the bench"));
    page.open("body");
    page.style(STYLE);
    header();
    page.open("main");
    chart();
    maps();
    pots();
    if (!year.weeks().isEmpty()) {
      lamps();
    }
    lines("nursery", "Nursery", PlaceWords.nursery(year));
    lines(
        "watch",
        "What to watch",
        LightWatch.of(year).stream().map(w -> LightWords.watch(year, w)).toList());
    lines("readings", "Your readings", LightWords.readings(year));
    lines("outdoors", "Where the light outdoors comes from", year.notes());
    page.closeLine().closeLine().closeLine();
    return "<!DOCTYPE html>\n" + page;
  }

  private void header() {
    page.open("header");
    page.open("p", "class", "name").add(PageFrame.leaf()).text(" Sallet").closeLine();
    page.element("h1", "Light at the bench");
    page.element(
        "p",
        "%s to %s"
            .formatted(
                Words.dayAndYear(year.light().from()),
                Words.dayAndYear(year.light().from().plusDays(year.light().days() - 1L))),
        "class",
        "span");
    page.element("p", LightWords.summary(year), "class", "summary");
    page.closeLine();
  }

  private void section(String id, String title) {
    page.open("section", "id", id, "aria-labelledby", id + "-head");
    page.element("h2", title, "id", id + "-head");
  }

  private void lines(String id, String title, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    section(id, title);
    list(lines);
    page.closeLine();
  }

  private void list(List<String> lines) {
    page.open("ul");
    lines.forEach(line -> page.element("li", line));
    page.closeLine();
  }

  private void scroll(Markup drawing) {
    page.open("div", "class", "scroll", "tabindex", "0").add(drawing).closeLine();
  }

  private void chart() {
    section("year", "Through the year");
    scroll(YearChart.of(year));
    page.element(
        "p",
        "Mean of all pots. Filled: daylight through the windows. Dashed: lamps as they are set. The"
            + " stroke runs from a dull week's daylight (one in ten is darker) to a bright one's.",
        "class",
        "quiet");
    page.open("details").element("summary", "The same as a table");
    page.open("table").open("thead").open("tr");
    for (String head : List.of("Month", "Windows", "Lamps", "Dull week", "Bright week", "Day")) {
      page.element("th", head, "scope", "col");
    }
    page.closeLine().closeLine().open("tbody");
    for (LightYear.Month month : year.months()) {
      page.open("tr").element("th", LightWords.month(month), "scope", "row");
      for (double value :
          new double[] {
            month.meanWindowMol(), month.meanLampMol(), month.dullWeekMol(), month.brightWeekMol()
          }) {
        number(LightWords.mol(value));
      }
      number(Words.oneDecimal(month.dayHours()) + " h");
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine().closeLine();
  }

  private void number(String text) {
    page.element("td", text, "class", "number");
  }

  private void maps() {
    section("bench", "On the bench");
    MapScale scale = LightMap.scale(year.household().room(), year.household().bench());
    page.open("div", "class", "maps", "style", scale.rowStyle());
    map(LightWords.darkest(year));
    if (!LightWords.brightest(year).equals(LightWords.darkest(year))) {
      map(LightWords.brightest(year));
    }
    page.closeLine();
    page.element(
        "p",
        "Light of a day at each pot in mol/m²; the darker the tint, the more. Bars in the walls are"
            + " windows, plain frames roof windows, dashed frames lamps."
            + scale.hint(),
        "class",
        "quiet");
    page.element("h3", "What the places are for in " + LightWords.month(LightWords.darkest(year)));
    list(PlaceWords.places(year, LightWords.darkest(year)));
    List<String> crops = PlaceWords.crops(year, LightWords.darkest(year));
    if (!crops.isEmpty()) {
      page.element("h3", "Which crop where");
      list(crops);
    }
    page.closeLine();
  }

  private void map(LightYear.Month month) {
    page.open("figure").element("figcaption", LightWords.month(month));
    scroll(LightMap.of(year, month));
    page.closeLine();
  }

  private void pots() {
    section("pots", "Each pot");
    page.open("div", "class", "scroll", "tabindex", "0").open("table").open("thead").open("tr");
    page.element("th", "Pot", "scope", "col");
    year.months().forEach(m -> page.element("th", LightWords.month(m), "scope", "col"));
    page.closeLine().closeLine().open("tbody");
    List<Pot> pots = year.household().bench().pots();
    for (int i = 0; i < pots.size(); i++) {
      page.open("tr").element("th", pots.get(i).name(), "scope", "row");
      for (LightYear.Month month : year.months()) {
        number(LightWords.mol(month.dliMol(i)));
      }
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine();
    page.element("p", "Windows and lamps together, mol/m² a day.", "class", "quiet");
    page.closeLine();
  }

  private void lamps() {
    section("lamps", "Lamps");
    list(LightWords.height(year));
    page.element("h3", "Hours that bring each pot nearest to what its crop wants");
    page.open("div", "class", "scroll", "tabindex", "0").open("table").open("thead").open("tr");
    boolean priced = year.household().tariff().isPresent();
    for (String head : List.of("Month", "Lamps run", "Darkest pot", "Brightest pot", "Wanted")) {
      page.element("th", head, "scope", "col");
    }
    if (priced) {
      page.element("th", "A day costs", "scope", "col");
    }
    page.closeLine().closeLine().open("tbody");
    for (LightYear.Month month : year.months()) {
      LampWeek week = LightWords.week(year, month);
      page.open("tr").element("th", LightWords.month(month), "scope", "row");
      page.element("td", LightWords.runs(week), "class", "runs");
      number(LightWords.mol(week.dliMol().stream().mapToDouble(d -> d).min().orElse(0)));
      number(LightWords.mol(week.dliMol().stream().mapToDouble(d -> d).max().orElse(0)));
      number(PlaceWords.wantedMol(week));
      if (priced) {
        number(String.format(Locale.ROOT, "%.2f", week.costPerDay()));
      }
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine();
    page.element("h3", "As the leaves rise");
    list(LightWords.raises(year));
    for (Caution caution : List.of(Caution.LAMP, Caution.MAINS)) {
      page.open("aside", "class", "caution").open("p");
      page.open("strong").text(caution.subject() + ".").close().text(" " + caution.text());
      page.closeLine().closeLine();
    }
    page.closeLine();
  }
}
