package sallet.app.report.feed;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sallet.app.report.Steps;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.WaterBlend;
import sallet.feed.ion.Nutrient;
import sallet.feed.meter.PpmScale;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.solution.Mineral;
import sallet.feed.stock.StockPlan;
import sallet.feed.stock.StockTank;

/** The sheet for the sink as text for a terminal of 80 columns. */
public final class FeedText {
  private static final int WIDTH = 78;
  private static final int BAR = 30;

  /** The space between a number and its unit, which must stay on one line. */
  private static final Pattern UNIT =
      Pattern.compile("(?<=\\d) (?=(%|°C|g|mL|L|meq/L|mS/cm)(\\W|$))");

  private final StringBuilder out = new StringBuilder();

  private FeedText() {}

  /** The text: the sheet, or how the number asked for comes about. */
  public static String of(FeedReport report) {
    return report
        .explained()
        .map(told -> told.path() + "\n\n" + Steps.text(told.steps()))
        .orElseGet(() -> new FeedText().sheet(report.sheet()));
  }

  private String sheet(FeedSheet sheet) {
    wrap("", FeedWords.summary(sheet));
    steps("AT THE SINK", FeedSteps.mixing(sheet));
    chart(sheet);
    state(sheet);
    sheet.blend().ifPresent(this::blend);
    sheet.traceStock().ifPresent(t -> steps("THE TRACE STOCK, MADE ONCE", FeedSteps.traceStock(t)));
    sheet.stock().ifPresent(this::stock);
    readings(sheet.running().readings());
    sheet.running().correction().ifPresent(this::correction);
    weeks(sheet.running());
    heading("WHAT TO KNOW");
    FeedWords.notes(sheet).forEach(n -> wrap("- ", n));
    heading("CAUTION");
    FeedWords.closing(sheet).forEach(c -> wrap("! ", c));
    return out.toString();
  }

  private void correction(FeedSheet.Correction correction) {
    heading("CORRECTION: " + correction.asked());
    wrap("", correction.words());
    correction.dose().ifPresent(d -> d.notes().forEach(n -> wrap("- ", n)));
    FeedSteps.mending(correction).forEach(step -> wrap("[ ] ", step));
  }

  private void blend(WaterBlend blend) {
    heading("WHICH SHARE OF " + blend.second().toUpperCase(Locale.ROOT));
    wrap("", FeedWords.blend(blend));
    line("%n  share  off by  acid, mL  bags");
    double top = blend.trials().stream().mapToDouble(t -> 100 * t.miss()).max().orElse(1);
    for (WaterBlend.Trial trial : blend.trials()) {
      double miss = 100 * trial.miss();
      line(
          "%s %3.0f %%  %4.1f %%  %8.0f  %4d  %s",
          Math.abs(trial.share() - blend.share()) < 1e-9 ? "→" : " ",
          100 * trial.share(),
          miss,
          trial.acidMl(),
          trial.bags(),
          "█".repeat((int) Math.round(BAR * miss / Math.max(top, 1e-9))));
    }
  }

  private void weeks(FeedSheet.Running running) {
    List<TankWeek> weeks = running.weeks();
    if (weeks.isEmpty()) {
      return;
    }
    heading("THE RESERVOIR WEEK BY WEEK, mg/L at the end of the week");
    line(
        "week   EC   pH%s  idle",
        TankWeek.TOLD.stream().map(n -> "%6s".formatted(n.symbol())).collect(Collectors.joining()));
    for (TankWeek week : weeks) {
      line(
          "%4d %4.2f  %3.1f%s %4.0f%%%s",
          week.week(),
          week.ledger().ecMsCm(),
          week.ph(),
          TankWeek.TOLD.stream()
              .map(n -> "%6.0f".formatted(week.ledger().perLitre().mg(n)))
              .collect(Collectors.joining()),
          100 * week.ledger().idleShare(),
          week.reasons().isEmpty() ? "" : "  renew");
    }
    weeks.forEach(week -> wrap("[ ] ", "Week " + week.week() + ": " + FeedWords.week(week)));
    FeedWords.cautions(weeks).forEach(c -> wrap("! ", c));
    wrap("", FeedWords.renewal(running));
    wrap("", FeedWords.weeksSource(running.plants()));
  }

  private void chart(FeedSheet sheet) {
    heading("WANTED AND REACHED, mg/L   (bar: reached, of it the water ░; │ wanted)");
    double top =
        sheet.main().fits().stream()
            .mapToDouble(f -> Math.max(f.mgL(), f.goal().mgL()))
            .max()
            .orElse(1);
    for (Recipe.Fit fit : sheet.main().fits()) {
      line(
          "%-6s %6.1f of %6.1f  %s",
          fit.nutrient().symbol(), fit.mgL(), fit.goal().mgL(), bar(fit, top));
    }
    for (Recipe.Fit fit : sheet.trace().map(Recipe::fits).orElse(List.of())) {
      line("%-6s %6.3f of %6.3f", fit.nutrient().symbol(), fit.mgL(), fit.goal().mgL());
    }
    line(
        "%-6s %6.1f           of no use to plants",
        "Na, Cl", sheet.perLitre().mg(Nutrient.SODIUM) + sheet.perLitre().mg(Nutrient.CHLORIDE));
  }

  private static String bar(Recipe.Fit fit, double top) {
    int reached = (int) Math.round(BAR * fit.mgL() / top);
    int water = (int) Math.round(BAR * Math.min(fit.waterMgL(), fit.mgL()) / top);
    int wanted = (int) Math.round(BAR * fit.goal().mgL() / top);
    StringBuilder bar = new StringBuilder("░".repeat(water) + "█".repeat(reached - water));
    bar.append(" ".repeat(BAR + 1 - bar.length()));
    bar.setCharAt(wanted, '│');
    return bar.toString().stripTrailing();
  }

  private void state(FeedSheet sheet) {
    FeedSheet.State s = sheet.state();
    heading("THE SOLUTION");
    line(
        "EC %.2f mS/cm at 25 °C (on ppm scales 0.5: %.0f, 0.64: %.0f, 0.7: %.0f)",
        s.ecMsCm(),
        PpmScale.HALF.ppm(s.ecMsCm()),
        PpmScale.IRRIGATION.ppm(s.ecMsCm()),
        PpmScale.NATURAL_WATER.ppm(s.ecMsCm()));
    line(
        "pH %.1f in air at 20 °C, alkalinity %.2f meq/L, osmotic pressure %.0f kPa",
        s.phLater(), s.alkalinityMeq(), s.osmoticKPa());
    line(
        "cations %.1f, anions %.1f meq/L; saturation: gypsum %+.1f, calcium phosphate %+.1f",
        sheet.perLitre().cationsMeq(),
        sheet.perLitre().anionsMeq() + s.alkalinityMeq(),
        s.saturation().getOrDefault(Mineral.GYPSUM, 0.0),
        s.saturation().getOrDefault(Mineral.BRUSHITE, 0.0));
    sheet.cost().ifPresent(c -> wrap("", FeedWords.cost(c, sheet.litres())));
  }

  private void stock(StockPlan plan) {
    heading("STOCK, %d-FOLD".formatted(plan.factor()));
    for (StockTank tank : plan.tanks()) {
      FeedSteps.tank(tank).forEach(step -> wrap("[ ] ", step));
    }
    if (plan.troubles().isEmpty()) {
      wrap("", FeedWords.dosing(plan));
    } else {
      plan.troubles().forEach(t -> wrap("! ", t));
      wrap("! ", FeedWords.weaker(plan));
    }
  }

  private void readings(List<FeedSheet.Reading> readings) {
    if (readings.isEmpty()) {
      return;
    }
    heading("WHAT THE READING CAN MEAN");
    for (FeedSheet.Reading r : readings) {
      line(
          "%-34s %5.2f mS/cm, %3.0f %% of this recipe",
          r.meaning().scale(), r.meaning().msCm(), 100 * r.strength());
    }
    if (readings.size() > 1) {
      wrap("", FeedWords.findScale());
    }
  }

  private void steps(String title, List<String> steps) {
    heading(title);
    for (String step : steps) {
      wrap("[ ] ", step);
    }
  }

  private void heading(String title) {
    out.append('\n').append(title).append('\n');
  }

  private void line(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }

  /** Words on lines of the terminal's width, the first behind a mark. */
  private void wrap(String mark, String text) {
    int column = mark.length();
    out.append(mark);
    boolean first = true;
    for (String word : UNIT.matcher(text).replaceAll("\u00a0").split(" ", -1)) {
      if (!first && column + 1 + word.length() > WIDTH) {
        out.append('\n').append(" ".repeat(mark.length()));
        column = mark.length();
        first = true;
      }
      if (!first) {
        out.append(' ');
        column++;
      }
      out.append(word.replace('\u00a0', ' '));
      column += word.length();
      first = false;
    }
    out.append('\n');
  }
}
