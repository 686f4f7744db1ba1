package sallet.app.report;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import sallet.feed.home.FeedSheet;
import sallet.feed.ion.Nutrient;
import sallet.feed.meter.PpmScale;
import sallet.feed.recipe.Recipe;
import sallet.feed.solution.Mineral;
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

  /** The text. */
  public static String of(FeedSheet sheet) {
    return new FeedText().sheet(sheet);
  }

  private String sheet(FeedSheet sheet) {
    line(
        "%s L of \"%s\" at %.0f %% strength, with %s",
        FeedSteps.plain(sheet.litres()),
        sheet.target().name(),
        100 * sheet.strength(),
        sheet.water().name());
    steps("AT THE SINK", FeedSteps.mixing(sheet));
    chart(sheet);
    state(sheet);
    sheet.traceStock().ifPresent(t -> steps("THE TRACE STOCK, MADE ONCE", FeedSteps.traceStock(t)));
    stock(sheet);
    readings(sheet);
    sheet
        .corrections()
        .ifPresent(
            c -> {
              heading("CORRECTION: " + c.asked());
              wrap("", c.words());
              c.dose().ifPresent(d -> d.notes().forEach(n -> wrap("- ", n)));
            });
    heading("WHAT TO KNOW");
    sheet.acid().ifPresent(a -> a.notes().forEach(n -> wrap("- ", n)));
    sheet.notes().forEach(n -> wrap("- ", n));
    sheet.main().mend().ifPresent(this::mend);
    sheet.trace().flatMap(Recipe::mend).ifPresent(this::mend);
    wrap(
        "- ",
        "Target: %s (%s). EC is good to 5 %%, in hard water 8 %%; limits, weights and the choice of bags are judgement."
            .formatted(sheet.target().source(), sheet.target().knownAs()));
    heading("CAUTION");
    sheet.cautions().forEach(c -> wrap("! ", c.text()));
    sheet
        .main()
        .doses()
        .forEach(d -> wrap("! ", d.product().name() + ": " + d.product().caution()));
    return out.toString();
  }

  private void mend(Recipe.Mend mend) {
    wrap(
        "- ",
        "The one bag that would mend most: %s (%s)"
            .formatted(mend.salt().name(), mend.salt().formula().text()));
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
  }

  private void stock(FeedSheet sheet) {
    sheet
        .stock()
        .ifPresent(
            plan -> {
              heading("STOCK, %d-FOLD".formatted(plan.factor()));
              for (StockTank tank : plan.tanks()) {
                FeedSteps.tank(tank).forEach(step -> wrap("[ ] ", step));
              }
              if (plan.troubles().isEmpty()) {
                wrap(
                    "",
                    "Dose %.1f mL of each tank for a litre: %s. Never pour tanks together undiluted."
                        .formatted(
                            plan.millilitresPerLitre(),
                            String.join(
                                ", stir, then ",
                                plan.tanks().stream().map(StockTank::name).toList())));
              } else {
                plan.troubles().forEach(t -> wrap("! ", t));
                wrap(
                    "! ",
                    plan.largestFactor() > 0
                        ? "Do not mix it so strong: %d-fold keeps clear"
                            .formatted(plan.largestFactor())
                        : "No stock of this recipe keeps clear: mix it at its final strength");
              }
            });
  }

  private void readings(FeedSheet sheet) {
    if (!sheet.readings().isEmpty()) {
      heading("WHAT THE READING CAN MEAN");
      for (FeedSheet.Reading r : sheet.readings()) {
        line(
            "%-34s %5.2f mS/cm, %3.0f %% of this recipe",
            r.meaning().scale(), r.meaning().msCm(), 100 * r.strength());
      }
      wrap(
          "",
          "Which scale a meter has shows a 1.41 mS/cm standard (0.01 mol/kg potassium chloride): about 705 on 0.5, 900 on 0.64, 990 on 0.7.");
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
