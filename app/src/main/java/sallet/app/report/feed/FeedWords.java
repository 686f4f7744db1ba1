package sallet.app.report.feed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sallet.app.report.Caution;
import sallet.feed.dose.PhDose;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.WaterBlend;
import sallet.feed.product.Product;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.stock.StockPlan;
import sallet.feed.stock.StockTank;

/** What text and page say in the same words. */
final class FeedWords {
  private FeedWords() {}

  /** What is mixed, in one sentence. */
  static String summary(FeedSheet sheet) {
    return say(
        "%s L of \"%s\" at %.0f %% strength, with %s",
        FeedSteps.plain(sheet.litres()),
        sheet.target().name(),
        100 * sheet.strength(),
        sheet.water().name());
  }

  /** Notes of water, recipe and doses, and where the target comes from. */
  static List<String> notes(FeedSheet sheet) {
    List<String> notes = new ArrayList<>();
    sheet.acid().map(PhDose::notes).ifPresent(notes::addAll);
    sheet.settling().map(PhDose::notes).ifPresent(notes::addAll);
    notes.addAll(sheet.notes());
    Stream.concat(Stream.of(sheet.main()), sheet.trace().stream())
        .flatMap(recipe -> recipe.mend().stream())
        .map(FeedWords::mend)
        .forEach(notes::add);
    notes.add(
        "Target: %s (%s). EC is good to 5 %%, in hard water 8 %%; limits, weights and the choice of bags are judgement. How a number comes about: --explain with its path in the JSON"
            .formatted(sheet.target().source(), sheet.target().knownAs()));
    return notes.stream().distinct().toList();
  }

  private static String mend(Recipe.Mend mend) {
    return "The one bag that would mend most: %s (%s)"
        .formatted(mend.salt().name(), mend.salt().formula().text());
  }

  /** All cautions: general ones, then each thing on the sheet. */
  static List<String> cautions(FeedSheet sheet) {
    List<String> cautions = new ArrayList<>();
    sheet.cautions().forEach(c -> cautions.add(c.text()));
    cautions.add(Caution.MAINS.text());
    for (Product product : sheet.products()) {
      cautions.add(product.name() + ": " + product.caution());
    }
    return cautions;
  }

  /** How the waters are blended, and why so. */
  static String blend(WaterBlend blend) {
    String taken =
        blend.asked()
            ? say("%.0f %% %s, as you set it.", 100 * blend.share(), blend.second())
            : say(
                "%.0f %% %s: the least with which the recipe is off by no more than 5 %% on the mean, or fits as well as with any share.",
                100 * blend.share(), blend.second());
    return blend
        .shareWithoutAcid()
        .map(
            share ->
                say("%s No acid against alkalinity is needed from %.0f %% on.", taken, 100 * share))
        .orElse(taken);
  }

  /** What pouring the stocks takes. */
  static String dosing(StockPlan plan) {
    return say(
        "Dose %.1f mL of each tank for a litre: %s. Never pour tanks together undiluted.",
        plan.millilitresPerLitre(),
        String.join(", stir, then ", plan.tanks().stream().map(StockTank::name).toList()));
  }

  /** Which strength keeps clear instead. */
  static String weaker(StockPlan plan) {
    return plan.largestFactor() > 0
        ? "Do not mix it so strong: %d-fold keeps clear".formatted(plan.largestFactor())
        : "No stock of this recipe keeps clear: mix it at its final strength";
  }

  /** How to find a meter's scale. */
  static String findScale() {
    return "Which scale a meter has shows a 1.41 mS/cm standard (0.01 mol/kg potassium chloride): about 705 on 0.5, 900 on 0.64, 990 on 0.7. Write it as feed.meter.ppmFactor";
  }

  /** What to do with the reservoir in a week. */
  static String week(TankWeek week) {
    String topUp =
        week.topUpStrength() > 0
            ? say("pour in %.1f L of %.0f %% strength", week.topUpL(), 100 * week.topUpStrength())
            : say("pour in %.1f L of water", week.topUpL());
    return week.dose()
        .map(
            d ->
                say(
                    "%s; pH %.1f: stir in %.0f mL of %s of %s %%",
                    topUp,
                    week.phBefore(),
                    d.millilitres(),
                    d.bottle().reagent().plainName(),
                    FeedSteps.plain(d.bottle().percent())))
        .orElse(topUp);
  }

  /** When and why to renew. */
  static String renewal(List<TankWeek> weeks) {
    return weeks.stream()
        .filter(w -> !w.reasons().isEmpty())
        .findFirst()
        .map(
            w ->
                "Renew the solution at the end of week %d. Why: %s."
                    .formatted(w.week(), String.join("; ", w.reasons())))
        .orElse("Nothing calls for a fresh solution in these weeks.");
  }

  /** Where the weeks come from. */
  static String weeksSource() {
    return "Reckoned from what leaves hold and drink, good to a factor of about 1.5 (judgement); a third of the alkalinity roots could leave is taken to show. EC alone cannot see this: read pH weekly.";
  }

  static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
