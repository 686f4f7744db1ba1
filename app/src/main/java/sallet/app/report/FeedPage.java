package sallet.app.report;

import java.util.List;
import java.util.Locale;
import sallet.feed.home.FeedSheet;
import sallet.feed.recipe.Recipe;
import sallet.feed.stock.StockTank;

/** The sheet for the sink as one page to print: tick boxes, grams, a bar chart, cautions. */
public final class FeedPage {
  private static final double ROW = 26;
  private static final double LEFT = 60;
  private static final double BAR = 420;

  private static final String CSS =
      """
      body { font: 17px/1.45 Georgia, serif; color: #1c1c1a; background: #fbfaf5; margin: 0 auto; max-width: 46rem; padding: 1rem; }
      h1 { font-size: 1.5rem; } h2 { font-size: 1.15rem; border-bottom: 2px solid #1c1c1a; margin-top: 1.6rem; }
      ol.steps { list-style: none; padding: 0; } ol.steps li { padding: .35rem 0; border-bottom: 1px solid #c9c6ba; }
      ol.steps li::before { content: ""; display: inline-block; width: 1em; height: 1em; border: 2px solid #1c1c1a; margin-right: .7em; vertical-align: -.15em; }
      table { border-collapse: collapse; } td, th { padding: .15rem .8rem .15rem 0; text-align: right; } td:first-child, th:first-child { text-align: left; }
      svg { width: 100%; } .reached { fill: #3d6b4f; } .water { fill: #7d97a8; } .wanted { stroke: #1c1c1a; stroke-width: 3; } .label { font: 14px Georgia, serif; fill: #1c1c1a; }
      .caution { border-left: 4px solid #8a3b12; padding-left: .7rem; }
      @media print { body { background: #fff; font-size: 12pt; } h2 { break-after: avoid; } li, tr { break-inside: avoid; } }
      """;

  private final Markup page = new Markup();

  private FeedPage() {}

  /** The page as HTML. */
  public static String of(FeedSheet sheet) {
    return new FeedPage().sheet(sheet);
  }

  private String sheet(FeedSheet sheet) {
    String title = "%s L of %s".formatted(FeedSteps.plain(sheet.litres()), sheet.target().name());
    page.open("html", "lang", "en").open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", title);
    page.style(CSS).closeLine();
    page.open("body").open("main");
    page.element("h1", title);
    page.element(
        "p",
        String.format(
            Locale.ROOT,
            "At %.0f %% of the published strength, with %s. EC %.2f mS/cm at 25 °C, pH about %.1f after a day in air.",
            100 * sheet.strength(),
            sheet.water().name(),
            sheet.state().ecMsCm(),
            sheet.state().phLater()));
    steps("At the sink", FeedSteps.mixing(sheet));
    chart(sheet);
    table(sheet);
    sheet.traceStock().ifPresent(t -> steps("The trace stock, made once", FeedSteps.traceStock(t)));
    sheet
        .stock()
        .ifPresent(
            plan -> {
              for (StockTank tank : plan.tanks()) {
                steps(
                    "Stock tank " + tank.name() + ", " + plan.factor() + "-fold",
                    FeedSteps.tank(tank));
              }
              plan.troubles().forEach(t -> page.element("p", t, "class", "caution"));
            });
    page.element("h2", "What to know");
    list(sheet.notes());
    page.element("h2", "Caution");
    sheet.cautions().forEach(c -> page.element("p", c.text(), "class", "caution"));
    sheet
        .main()
        .doses()
        .forEach(
            d ->
                page.element(
                    "p", d.product().name() + ": " + d.product().caution(), "class", "caution"));
    page.closeLine().closeLine().closeLine();
    return "<!DOCTYPE html>\n" + page;
  }

  private void steps(String title, List<String> steps) {
    page.element("h2", title);
    page.open("ol", "class", "steps");
    steps.forEach(step -> page.element("li", step));
    page.closeLine();
  }

  private void list(List<String> texts) {
    page.open("ul");
    texts.forEach(text -> page.element("li", text));
    page.closeLine();
  }

  private void chart(FeedSheet sheet) {
    List<Recipe.Fit> fits = sheet.main().fits();
    double top = 1;
    for (Recipe.Fit fit : fits) {
      top = Math.max(top, Math.max(fit.mgL(), fit.goal().mgL()));
    }
    page.element("h2", "Wanted and reached");
    Svg.open(page, LEFT + BAR + 20, ROW * fits.size() + 8);
    Svg.describe(
        page,
        "ions",
        "Nutrients in mg/L",
        "Bars: what the solution holds, the water's part in another shade; upright strokes: what is wanted. The table below has the numbers.");
    double y = 4;
    for (Recipe.Fit fit : fits) {
      double scale = BAR / top;
      double water = Math.min(fit.waterMgL(), fit.mgL()) * scale;
      double wanted = LEFT + fit.goal().mgL() * scale;
      Svg.text(page, 0, y + 16, "label", fit.nutrient().symbol());
      page.empty(
          "rect",
          "x",
          LEFT,
          "y",
          y + 3,
          "width",
          fit.mgL() * scale,
          "height",
          ROW - 8,
          "class",
          "reached");
      page.empty(
          "rect", "x", LEFT, "y", y + 3, "width", water, "height", ROW - 8, "class", "water");
      page.empty("line", "x1", wanted, "x2", wanted, "y1", y, "y2", y + ROW - 2, "class", "wanted");
      y += ROW;
    }
    page.closeLine();
  }

  private void table(FeedSheet sheet) {
    page.open("table").open("tr");
    for (String head : List.of("mg/L", "wanted", "from the water", "reached")) {
      page.element("th", head, "scope", "col");
    }
    page.closeLine();
    sheet.main().fits().forEach(this::row);
    sheet.trace().ifPresent(trace -> trace.fits().forEach(this::row));
    page.closeLine();
  }

  private void row(Recipe.Fit fit) {
    page.open("tr");
    page.element("td", fit.nutrient().symbol());
    for (double value : new double[] {fit.goal().mgL(), fit.waterMgL(), fit.mgL()}) {
      page.element("td", FeedSteps.amount(value));
    }
    page.closeLine();
  }
}
