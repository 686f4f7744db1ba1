package sallet.app.report.feed;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import sallet.feed.dose.PhDose;
import sallet.feed.home.FeedSheet;
import sallet.feed.ion.Ion;
import sallet.feed.product.Product;
import sallet.feed.product.Use;
import sallet.feed.recipe.Recipe;
import sallet.feed.stock.StockTank;
import sallet.feed.stock.TraceStock;

/** The work at the sink, one step a line, in an order in which nothing falls out. */
final class FeedSteps {
  /** Share of the water that goes in before the salts. */
  private static final double FIRST_FILL = 0.9;

  /** Half of the last digit shown, mS/cm. */
  private static final double SHOWN_MS_CM = 0.005;

  private FeedSteps() {}

  /** Mixing the solution. */
  static List<String> mixing(FeedSheet sheet) {
    List<String> steps = new ArrayList<>();
    steps.add(fill(sheet));
    sheet.acid().map(FeedSteps::acid).ifPresent(steps::add);
    List<Recipe.Dose> order = new ArrayList<>(sheet.main().doses());
    order.sort(Comparator.comparingInt(FeedSteps::turn));
    for (Recipe.Dose dose : order) {
      steps.add(weigh(dose));
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
    steps.add(check(sheet));
    sheet.settling().map(FeedSteps::settling).ifPresent(steps::add);
    return steps;
  }

  private static String acid(PhDose dose) {
    String bottle =
        say("%s of %s %%", dose.bottle().reagent().plainName(), plain(dose.bottle().percent()));
    String how =
        dose.thinningL() > 0
            ? say(
                "Pour %.0f mL of %s into %.1f L of water, then stir that in.",
                dose.millilitres(), bottle, dose.thinningL())
            : say("Stir in %.0f mL of %s.", dose.millilitres(), bottle);
    return dose.bottle().reagent().caution() + " " + how;
  }

  private static String weigh(Recipe.Dose dose) {
    Product product = dose.product();
    String how =
        say(
            product.measure() == Product.Measure.GRAM
                ? "Weigh %s g of %s, dissolve it in a jug of that water, pour it back and stir."
                : "Measure %s mL of %s, thin it in a jug of that water, pour it back and stir.",
            amount(dose.amount()),
            product.name());
    return product.use() == Use.MACRO ? how : product.caution() + " " + how;
  }

  private static String fill(FeedSheet sheet) {
    double most = FIRST_FILL * sheet.litres();
    String of =
        sheet
            .blend()
            .map(
                b ->
                    say(
                        "%s L of %s and %s L of %s",
                        litres(most * (1 - b.share())),
                        b.first(),
                        litres(most * b.share()),
                        b.second()))
            .orElseGet(() -> say("%s L of water", litres(most)));
    return say("Fill %s into the reservoir, nine tenths of the %s L.", of, plain(sheet.litres()));
  }

  private static String litres(double litres) {
    return say(litres < 10 ? "%.2f" : "%.0f", litres);
  }

  private static String check(FeedSheet sheet) {
    FeedSheet.State state = sheet.state();
    boolean same = Math.abs(state.meterShowsMsCm() - state.ecMsCm()) < SHOWN_MS_CM;
    return say(
        "Check: EC should be %.2f mS/cm at 25 °C%s, pH about %.1f after a day in air.",
        state.ecMsCm(),
        same ? "" : say(" (your meter shows %.2f)", state.meterShowsMsCm()),
        state.phLater());
  }

  private static String settling(PhDose dose) {
    return say(
        "Next day, if pH reads about as told: %s Stir in %.0f mL of %s of %s %%, half of it first; pH goes to %.1f.",
        dose.bottle().reagent().caution(),
        dose.millilitres(),
        dose.bottle().reagent().plainName(),
        plain(dose.bottle().percent()),
        dose.phLater());
  }

  /** Silicate alone and first, calcium last into the thinned rest. */
  private static int turn(Recipe.Dose dose) {
    boolean silicate = dose.product().use() == Use.SILICATE;
    boolean calcium = dose.product().perUnit().mmol(Ion.CALCIUM) > 0;
    return silicate ? 0 : calcium ? 2 : 1;
  }

  /** Making the bottle of trace elements. */
  static List<String> traceStock(TraceStock stock) {
    List<String> steps = new ArrayList<>();
    steps.add(
        say("Gloves on. Half fill a dark %s L bottle with pure water.", plain(stock.litres())));
    for (TraceStock.Weighing w : stock.weighings()) {
      String how =
          w.dilution()
              .map(
                  d ->
                      say(
                          "weigh %s g, make it up to %.0f mL, take %.1f mL of that (%s g)",
                          amount(d.weighG()), d.intoMl(), d.takeMl(), amount(d.neededG())))
              .orElseGet(() -> say("weigh %s g", amount(w.grams())));
      steps.add(say("%s: %s. %s", w.product().name(), how, w.product().caution()));
    }
    steps.add(
        say(
            "Fill up, shake, label with content, date and \"%.0f mL for a litre\".",
            stock.millilitresPerLitre()));
    return steps;
  }

  /** Salts that mend an EC that is too low. */
  static List<String> mending(FeedSheet.Correction correction) {
    List<String> steps = new ArrayList<>();
    correction.salts().stream()
        .sorted(Comparator.comparingInt(FeedSteps::turn))
        .map(FeedSteps::weigh)
        .forEach(steps::add);
    if (correction.traceMl() > 0) {
      steps.add(say("Add %.0f mL of the trace stock and stir.", correction.traceMl()));
    }
    return steps;
  }

  /** Making concentrates. */
  static List<String> tank(StockTank tank) {
    List<String> steps = new ArrayList<>();
    tank.gramsPerL().entrySet().stream()
        .sorted(Comparator.comparingDouble(e -> -e.getValue()))
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
    return new BigDecimal(value)
        .setScale(4, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
