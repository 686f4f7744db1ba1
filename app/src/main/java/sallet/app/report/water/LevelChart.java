package sallet.app.report.water;

import java.util.List;
import java.util.Optional;
import sallet.app.report.Markup;
import sallet.app.report.Svg;
import sallet.app.report.Words;
import sallet.water.reservoir.TankForecast;

/** The reservoir's level from day to day: the middle, the band around it, what a flood needs. */
final class LevelChart {
  private static final double WIDTH = 360;
  private static final double HEIGHT = 240;
  private static final double LEFT = 40;
  private static final double RIGHT = WIDTH - 20;
  private static final double TOP = 20;
  private static final double BOTTOM = 205;
  private static final int TEXT_BAR = 40;

  /** What a phone 360 px wide has inside its frame. */
  private static final double PHONE_WIDTH = 290;

  private static final int MOST_DATES = 4;

  private final TankForecast tank;
  private final double most;
  private final Markup svg = new Markup();

  private LevelChart(TankForecast tank) {
    this.tank = tank;
    this.most = Math.ceil(tank.tank().fullL() / 10) * 10;
  }

  /**
   * The drawing.
   *
   * @param before the forecast before readings taught, whose band is dotted
   */
  static Markup svg(TankForecast tank, Optional<TankForecast> before) {
    return new LevelChart(tank).draw(before);
  }

  private Markup draw(Optional<TankForecast> before) {
    Svg.open(svg, WIDTH, HEIGHT, PHONE_WIDTH);
    Svg.describe(
        svg,
        "level",
        "Level of the reservoir",
        "A line from %.0f L, with a band that holds it 8 times in 10; below the dashed line a flood is no longer whole. The table below has the numbers."
            .formatted(tank.startL()));
    double step = most > 100 ? most / 5 : most > 40 ? 20 : 10;
    for (double litres = 0; litres <= most; litres += step) {
      svg.empty("line", "x1", LEFT, "y1", y(litres), "x2", RIGHT, "y2", y(litres), "class", "rule");
      Svg.text(svg, LEFT - 6, y(litres) + 4, "end", Words.oneDecimal(litres).replace(".0", ""));
    }
    Svg.text(svg, LEFT - 30, 12, "small", "litres");
    band(tank, "band");
    before.ifPresent(b -> band(b, "before"));
    line();
    double least = y(tank.tank().leastL());
    svg.empty("line", "x1", LEFT, "y1", least, "x2", RIGHT, "y2", least, "class", "least");
    Svg.text(svg, RIGHT, least + 14, "end small strong", "a flood needs");
    dates();
    return svg.closeLine();
  }

  private void band(TankForecast told, String style) {
    StringBuilder up = new StringBuilder(WaterWords.of("M%.1f %.1f", x(0), y(told.startL())));
    List<TankForecast.Day> days = told.days();
    for (int i = 0; i < days.size(); i++) {
      up.append(WaterWords.of(" L%.1f %.1f", x(i + 1), y(days.get(i).highL())));
    }
    for (int i = days.size() - 1; i >= 0; i--) {
      up.append(WaterWords.of(" L%.1f %.1f", x(i + 1), y(days.get(i).lowL())));
    }
    svg.empty("path", "d", up + " Z", "class", style);
  }

  private void line() {
    StringBuilder path = new StringBuilder(WaterWords.of("M%.1f %.1f", x(0), y(tank.startL())));
    List<TankForecast.Day> days = tank.days();
    for (int i = 0; i < days.size(); i++) {
      path.append(WaterWords.of(" L%.1f %.1f", x(i + 1), y(days.get(i).levelL())));
    }
    svg.empty("path", "d", path.toString(), "class", "level");
  }

  private void dates() {
    List<TankForecast.Day> days = tank.days();
    int every = Math.max(1, (int) Math.ceil(days.size() / (double) MOST_DATES));
    for (int i = 0; i < days.size(); i += every) {
      Svg.text(svg, x(i), BOTTOM + 20, "middle small", Words.day(days.get(i).date()).substring(4));
    }
  }

  private double x(int day) {
    return LEFT + (RIGHT - LEFT) * day / tank.days().size();
  }

  private double y(double litres) {
    return BOTTOM - (BOTTOM - TOP) * litres / most;
  }

  /** One day as a row of text: sure water, the band, and a stroke at what a flood needs. */
  static String row(TankForecast tank, TankForecast.Day day) {
    double scale = TEXT_BAR / tank.tank().fullL();
    StringBuilder bar = new StringBuilder();
    for (int i = 0; i < TEXT_BAR; i++) {
      double litres = (i + 0.5) / scale;
      bar.append(litres < day.lowL() ? '█' : litres < day.highL() ? '░' : ' ');
    }
    int least = Math.min(TEXT_BAR - 1, (int) Math.round(tank.tank().leastL() * scale));
    bar.setCharAt(least, '│');
    String ec = Double.isNaN(day.ecMsCm()) ? "" : WaterWords.of("  EC %.2f", day.ecMsCm());
    return WaterWords.of(
        "%-10s %s %3.0f L (%.0f to %.0f)%s",
        Words.day(day.date()), bar, day.levelL(), day.lowL(), day.highL(), ec);
  }
}
