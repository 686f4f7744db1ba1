package sallet.app.report.feed;

import java.util.ArrayList;
import java.util.List;
import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.feed.home.FeedSheet;
import sallet.feed.recipe.Recipe;

/** What is wanted and what the solution holds, each main nutrient on its own bar. */
final class NutrientChart {
  private static final double ROW = 26;
  private static final double LEFT = 52;
  private static final double BAR = 250;
  private static final double RIGHT = 46;

  private NutrientChart() {}

  static Markup of(FeedSheet sheet) {
    List<Recipe.Fit> fits = sheet.main().fits();
    double top = 1;
    List<String> words = new ArrayList<>();
    for (Recipe.Fit fit : fits) {
      top = Math.max(top, Math.max(fit.mgL(), fit.goal().mgL()));
      words.add(
          FeedWords.say("%s %.0f of %.0f", fit.nutrient().symbol(), fit.mgL(), fit.goal().mgL()));
    }
    Markup svg = new Markup();
    Svg.open(svg, LEFT + BAR + RIGHT, ROW * fits.size() + 8);
    Svg.describe(svg, "nutrients", "Nutrients in mg/L", String.join(", ", words));
    double y = 4;
    for (Recipe.Fit fit : fits) {
      bar(svg, fit, y, BAR / top);
      y += ROW;
    }
    return svg.close();
  }

  private static void bar(Markup svg, Recipe.Fit fit, double y, double scale) {
    double wanted = LEFT + fit.goal().mgL() * scale;
    Svg.text(svg, 0, y + 16, "strong", fit.nutrient().symbol());
    rectangle(svg, y, fit.mgL() * scale, "reached");
    rectangle(svg, y, Math.min(fit.waterMgL(), fit.mgL()) * scale, "water");
    svg.empty("line", "x1", wanted, "x2", wanted, "y1", y, "y2", y + ROW - 2, "class", "demand");
    Svg.text(svg, LEFT + BAR + 6, y + 16, "", FeedWords.say("%.0f", fit.mgL()));
  }

  private static void rectangle(Markup svg, double y, double width, String styleClass) {
    svg.empty(
        "rect", "x", LEFT, "y", y + 3, "width", width, "height", ROW - 8, "class", styleClass);
  }
}
