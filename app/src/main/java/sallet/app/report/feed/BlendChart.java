package sallet.app.report.feed;

import java.util.List;
import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.feed.home.WaterBlend;

/** How far off the best recipe is with each share of the second water. */
final class BlendChart {
  private static final double WIDTH = 340;
  private static final double HEIGHT = 170;
  private static final double LEFT = 40;
  private static final double FOOT = 34;
  private static final double HEAD = 14;

  private BlendChart() {}

  static Markup of(WaterBlend blend) {
    List<WaterBlend.Trial> trials = blend.trials();
    double top = 1;
    for (WaterBlend.Trial trial : trials) {
      top = Math.max(top, 100 * trial.miss());
    }
    double step = (WIDTH - LEFT) / trials.size();
    double scale = (HEIGHT - FOOT - HEAD) / top;
    Markup svg = new Markup();
    Svg.open(svg, WIDTH, HEIGHT);
    Svg.describe(svg, "blend", "Misfit by share of " + blend.second(), FeedWords.blend(blend));
    Svg.text(svg, LEFT - 4, HEAD + 4, "end", FeedWords.say("%.0f %%", top));
    Svg.text(svg, LEFT - 4, HEIGHT - FOOT, "end", "0 %");
    for (int i = 0; i < trials.size(); i++) {
      WaterBlend.Trial trial = trials.get(i);
      boolean taken = Math.abs(trial.share() - blend.share()) < 1e-9;
      double height = Math.max(1, scale * 100 * trial.miss());
      double x = LEFT + i * step;
      svg.empty(
          "rect",
          "x",
          x,
          "y",
          HEIGHT - FOOT - height,
          "width",
          step - 2,
          "height",
          height,
          "class",
          taken ? "lift" : "water");
      if (taken || i % 10 == 0) {
        Svg.text(
            svg,
            x + step / 2,
            HEIGHT - FOOT + (taken ? 30 : 15),
            taken ? "strong middle" : "middle",
            FeedWords.say("%.0f %%", 100 * trial.share()));
      }
    }
    return svg.close();
  }
}
