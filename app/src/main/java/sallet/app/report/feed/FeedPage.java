package sallet.app.report.feed;

import java.util.ArrayList;
import java.util.List;
import sallet.app.report.Markup;
import sallet.app.report.PageFrame;
import sallet.feed.dose.PhDose;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.WaterBlend;
import sallet.feed.ion.Nutrient;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.stock.StockPlan;
import sallet.feed.stock.StockTank;

/** The sheet for the sink as one page to print: tick boxes, grams, bars, cautions. */
public final class FeedPage {
  private static final String STYLE =
      """
      .reached { fill: var(--c0); }
      .water { fill: var(--c6); }
      section th, section td { padding-right: .5rem; }
      """;

  private final FeedSheet sheet;
  private final Markup page = new Markup();

  private FeedPage(FeedSheet sheet) {
    this.sheet = sheet;
  }

  /** The page, a whole HTML document without scripts or requests. */
  public static String of(FeedSheet sheet) {
    return new FeedPage(sheet).document();
  }

  private String document() {
    page.open("html", "lang", "en");
    page.add(PageFrame.head("Sallet: the nutrient solution"));
    page.open("body");
    page.style(STYLE);
    header();
    page.open("main");
    checklist("sink", "At the sink", FeedSteps.mixing(sheet));
    nutrients();
    sheet.blend().ifPresent(this::blend);
    sheet
        .traceStock()
        .ifPresent(t -> checklist("trace", "The trace stock, made once", FeedSteps.traceStock(t)));
    sheet.stock().ifPresent(this::stock);
    readings(sheet.running().readings());
    sheet.running().correction().ifPresent(this::correction);
    weeks(sheet.running());
    section("know", "What to know");
    list(FeedWords.notes(sheet));
    page.closeLine();
    cautions();
    page.closeLine().closeLine().closeLine();
    return "<!DOCTYPE html>\n" + page;
  }

  private void header() {
    page.open("header");
    page.open("p", "class", "name").add(PageFrame.leaf()).text(" Sallet").closeLine();
    page.element("h1", "The nutrient solution");
    page.element("p", FeedWords.summary(sheet), "class", "span");
    FeedSheet.State state = sheet.state();
    page.element(
        "p",
        FeedWords.say(
            "EC %.2f mS/cm at 25 °C, pH about %.1f after a day in air.",
            state.ecMsCm(), state.phLater()),
        "class",
        "summary");
    page.closeLine();
  }

  private void section(String id, String title) {
    page.open("section", "id", id, "aria-labelledby", id + "-head");
    page.element("h2", title, "id", id + "-head");
  }

  private void list(List<String> texts) {
    page.open("ul");
    texts.forEach(text -> page.element("li", text));
    page.closeLine();
  }

  private void checklist(String id, String title, List<String> steps) {
    section(id, title);
    boxes(steps);
    page.closeLine();
  }

  private void boxes(List<String> steps) {
    page.open("ul", "class", "checklist");
    for (String step : steps) {
      page.open("li").open("label");
      page.empty("input", "type", "checkbox");
      page.element("span", step);
      page.close().closeLine();
    }
    page.closeLine();
  }

  private void nutrients() {
    section("nutrients-wanted", "Wanted and reached");
    scroll("Chart of the nutrients", NutrientChart.of(sheet));
    page.element(
        "p",
        "mg/L. Bars: what the solution holds, at their left end the part the water brings; upright"
            + " strokes: what is wanted.",
        "class",
        "quiet");
    head(List.of("mg/L", "wanted", "water", "reached", "off by"));
    sheet.main().fits().forEach(this::row);
    sheet.trace().ifPresent(trace -> trace.fits().forEach(this::row));
    idle();
    page.closeLine().closeLine().closeLine();
    sheet.cost().ifPresent(c -> page.element("p", FeedWords.cost(c, sheet.litres())));
    page.closeLine();
  }

  private void row(Recipe.Fit fit) {
    page.open("tr").element("th", fit.nutrient().symbol(), "scope", "row");
    for (double value : new double[] {fit.goal().mgL(), fit.waterMgL(), fit.mgL()}) {
      number(FeedSteps.amount(value));
    }
    number(
        fit.goal().mgL() > 0 ? FeedWords.say("%+.0f %%", Math.rint(100 * fit.miss()) + 0.0) : "");
    page.closeLine();
  }

  /** What plants have no use for. */
  private void idle() {
    for (Nutrient nutrient : List.of(Nutrient.SODIUM, Nutrient.CHLORIDE)) {
      page.open("tr").element("th", nutrient.symbol(), "scope", "row");
      number("");
      number("");
      number(FeedSteps.amount(sheet.perLitre().mg(nutrient)));
      number("no use");
      page.closeLine();
    }
  }

  private void number(String text) {
    page.element("td", text, "class", "number");
  }

  private void scroll(String label, Markup drawing) {
    page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", label);
    page.add(drawing).closeLine();
  }

  /** Opens a table that scrolls by itself, its head and its body. */
  private void head(List<String> heads) {
    page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Table");
    page.open("table").open("thead").open("tr");
    heads.forEach(head -> page.element("th", head, "scope", "col"));
    page.closeLine().closeLine().open("tbody");
  }

  private void blend(WaterBlend blend) {
    section("waters", "Which share of " + blend.second());
    page.element("p", FeedWords.blend(blend));
    scroll("Chart of the shares", BlendChart.of(blend));
    page.element(
        "p",
        "How far off the best recipe is on the mean, by share of "
            + blend.second()
            + "; the dark bar is taken.",
        "class",
        "quiet");
    page.closeLine();
  }

  private void stock(StockPlan plan) {
    section("stock", "Stock, %d-fold".formatted(plan.factor()));
    for (StockTank tank : plan.tanks()) {
      page.element("h3", "Tank " + tank.name());
      boxes(FeedSteps.tank(tank));
    }
    if (plan.troubles().isEmpty()) {
      page.element("p", FeedWords.dosing(plan));
    } else {
      plan.troubles().forEach(this::caution);
      caution(FeedWords.weaker(plan));
    }
    page.closeLine();
  }

  private void readings(List<FeedSheet.Reading> readings) {
    if (readings.isEmpty()) {
      return;
    }
    section("reading", "What the reading can mean");
    List<String> lines = new ArrayList<>();
    for (FeedSheet.Reading r : readings) {
      lines.add(
          FeedWords.say(
              "%s: %.2f mS/cm, %.0f %% of this recipe",
              r.meaning().scale(), r.meaning().msCm(), 100 * r.strength()));
    }
    list(lines);
    if (readings.size() > 1) {
      page.element("p", FeedWords.findScale());
    }
    page.closeLine();
  }

  private void correction(FeedSheet.Correction correction) {
    section("correction", "Correction: " + correction.asked());
    page.element("p", correction.words());
    correction.dose().map(PhDose::notes).ifPresent(this::list);
    List<String> salts = FeedSteps.mending(correction);
    if (!salts.isEmpty()) {
      boxes(salts);
    }
    page.closeLine();
  }

  private void weeks(FeedSheet.Running running) {
    List<TankWeek> weeks = running.weeks();
    if (weeks.isEmpty()) {
      return;
    }
    section("weeks", "The reservoir week by week");
    page.element("p", FeedWords.renewal(running));
    List<String> heads = new ArrayList<>(List.of("Week", "EC", "pH"));
    TankWeek.TOLD.forEach(n -> heads.add(n.symbol()));
    heads.add("idle");
    head(heads);
    for (TankWeek week : weeks) {
      page.open("tr").element("th", Integer.toString(week.week()), "scope", "row");
      number(FeedWords.say("%.2f", week.ledger().ecMsCm()));
      number(FeedWords.say("%.1f", week.ph()));
      TankWeek.TOLD.forEach(n -> number(FeedWords.say("%.0f", week.ledger().perLitre().mg(n))));
      number(FeedWords.say("%.0f %%", 100 * week.ledger().idleShare()));
      page.closeLine();
    }
    page.closeLine().closeLine().closeLine();
    page.element(
        "p",
        "EC in mS/cm, the rest in mg/L at the end of the week; idle: share of the salt that plants"
            + " hardly use.",
        "class",
        "quiet");
    boxes(weeks.stream().map(w -> "Week %d: %s".formatted(w.week(), FeedWords.week(w))).toList());
    FeedWords.cautions(weeks).forEach(this::caution);
    page.element("p", FeedWords.weeksSource(running.plants()), "class", "quiet");
    page.closeLine();
  }

  private void cautions() {
    section("caution", "Caution");
    FeedWords.closing(sheet).forEach(this::caution);
    page.closeLine();
  }

  private void caution(String text) {
    page.open("div", "class", "caution", "role", "note");
    page.element("p", text).closeLine();
  }
}
