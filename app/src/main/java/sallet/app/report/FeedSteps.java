package sallet.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.feed.home.FeedSheet;
import sallet.feed.product.Use;
import sallet.feed.recipe.Recipe;
import sallet.feed.stock.StockTank;
import sallet.feed.stock.TraceStock;

/** The work at the sink, one step a line, in an order in which nothing falls out. */
final class FeedSteps {
  private FeedSteps() {}

  /** Mixing the solution. */
  static List<String> mixing(FeedSheet sheet) {
    List<String> steps = new ArrayList<>();
    steps.add(
        say(
            "Fill %.0f L of water into the reservoir, nine tenths of the %s L.",
            0.9 * sheet.litres(), plain(sheet.litres())));
    sheet
        .acid()
        .ifPresent(
            a ->
                steps.add(
                    say(
                        "Goggles and gloves on. Stir in %.0f mL of %s of %s %%%s.",
                        a.millilitres(),
                        a.reagent().plainName(),
                        plain(a.percent()),
                        a.percent() > 5 ? ", thinned as told below" : "")));
    List<Recipe.Dose> order = new ArrayList<>(sheet.main().doses());
    order.sort(java.util.Comparator.comparingInt(FeedSteps::turn));
    for (Recipe.Dose dose : order) {
      steps.add(
          say(
              "Weigh %s %s of %s, dissolve it in a litre of warm water, pour it in and stir.",
              amount(dose.amount()), dose.product().measure().symbol(), dose.product().name()));
    }
    sheet
        .traceStock()
        .ifPresent(
            t ->
                steps.add(
                    say(
                        "Add %.0f mL of the trace stock and stir.",
                        t.millilitresPerLitre() * sheet.litres())));
    steps.add("Fill up to the mark, stir, wait a quarter of an hour.");
    steps.add(
        say(
            "Check: EC should be %.2f mS/cm at 25 °C, pH about %.1f after a day in air.",
            sheet.state().ecMsCm(), sheet.state().phLater()));
    return steps;
  }

  /** Silicate alone and first, calcium last into the thinned rest. */
  private static int turn(Recipe.Dose dose) {
    boolean silicate = dose.product().use() == Use.SILICATE;
    boolean calcium = dose.product().perUnit().mmol(sallet.feed.ion.Ion.CALCIUM) > 0;
    return silicate ? 0 : calcium ? 2 : 1;
  }

  /** Making the bottle of trace elements. */
  static List<String> traceStock(TraceStock stock) {
    List<String> steps = new ArrayList<>();
    steps.add(say("Half fill a dark %s L bottle with pure water.", plain(stock.litres())));
    for (TraceStock.Weighing w : stock.weighings()) {
      String name = w.product().name();
      steps.add(
          w.dilution()
              .map(
                  d ->
                      say(
                          "%s: weigh %s g, make it up to %.0f mL, take %.1f mL of that (%s g).",
                          name, amount(d.weighG()), d.intoMl(), d.takeMl(), amount(d.neededG())))
              .orElseGet(() -> say("%s: weigh %s g.", name, amount(w.grams()))));
    }
    steps.add(
        say(
            "Fill up, shake, label with content, date and \"%.0f mL for a litre\".",
            stock.millilitresPerLitre()));
    return steps;
  }

  /** Making concentrates. */
  static List<String> tank(StockTank tank) {
    List<String> steps = new ArrayList<>();
    tank.gramsPerL().entrySet().stream()
        .sorted(java.util.Comparator.comparingDouble(e -> -e.getValue()))
        .forEach(
            e ->
                steps.add(
                    say(
                        "%s %s of %s for each litre of tank %s",
                        amount(e.getValue()),
                        e.getKey().measure().symbol(),
                        e.getKey().name(),
                        tank.name())));
    return steps;
  }

  /** A mass with as many digits as matter. */
  static String amount(double value) {
    int digits = value >= 100 ? 0 : value >= 1 ? 1 : value >= 0.1 ? 2 : 4;
    return plain(Double.parseDouble(String.format(Locale.ROOT, "%." + digits + "f", value)));
  }

  static String plain(double value) {
    return new java.math.BigDecimal(value)
        .setScale(4, java.math.RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
