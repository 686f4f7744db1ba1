package sallet.app.report.feed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.app.report.Caution;
import sallet.feed.dose.PhDose;
import sallet.feed.home.Cost;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.WaterBlend;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Product;
import sallet.feed.product.Use;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.reservoir.UptakePrior;
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

  /** Cautions that do not stand beside their step already. */
  static List<String> closing(FeedSheet sheet) {
    List<String> beside =
        sheet.products().stream()
            .filter(product -> product.use() != Use.MACRO)
            .map(product -> product.name() + ": " + product.caution())
            .toList();
    return cautions(sheet).stream().filter(text -> !beside.contains(text)).toList();
  }

  /** Cautions of the acids and bases of some weeks. */
  static List<String> cautions(List<TankWeek> weeks) {
    return weeks.stream()
        .flatMap(week -> week.dose().stream())
        .map(dose -> dose.bottle().reagent().plainName() + ": " + dose.bottle().reagent().caution())
        .distinct()
        .toList();
  }

  /** What the salts cost. */
  static String cost(Cost cost, double litres) {
    String unpriced =
        cost.unpriced().isEmpty()
            ? ""
            : say(", without %s, which have no price", String.join(", ", cost.unpriced()));
    return say(
        "The salts cost %.2f, a litre %.4f, in the currency of the prices%s.",
        cost.amount(), cost.amount() / litres, unpriced);
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

  /** When and why to renew, and how sure that is. */
  static String renewal(FeedSheet.Running running) {
    String when =
        firstToRenew(running.weeks())
            .map(
                w ->
                    say(
                        "Renew the solution at the end of week %d. Why: %s.",
                        w.week(), String.join("; ", w.reasons())))
            .orElse("Nothing calls for a fresh solution in these weeks.");
    int last = running.weeks().size();
    FeedSheet.Range nitrogen = running.range(last - 1, Nutrient.NITROGEN);
    return say(
        "%s%s In week %d nitrogen ends at %.0f to %.0f mg/L.",
        when, spread(running), last, nitrogen.low(), nitrogen.high());
  }

  private static String spread(FeedSheet.Running running) {
    String early = weekToRenew(running, true);
    String late = weekToRenew(running, false);
    return early.equals(late)
        ? ""
        : say(" By how much plants take up it may be %s to %s.", early, late);
  }

  private static Optional<TankWeek> firstToRenew(List<TankWeek> weeks) {
    return weeks.stream().filter(w -> !w.reasons().isEmpty()).findFirst();
  }

  private static String weekToRenew(FeedSheet.Running running, boolean early) {
    IntStream weeks =
        Stream.of(running.weeks(), running.hungry(), running.thirsty())
            .mapToInt(w -> firstToRenew(w).map(TankWeek::week).orElse(w.size() + 1));
    int week = early ? weeks.min().orElse(0) : weeks.max().orElse(0);
    return week > running.weeks().size() ? "later" : "week " + week;
  }

  /** Where the weeks come from. */
  static String weeksSource(UptakePrior plants) {
    return say(
        "Reckoned from what leaves hold and the water they drink for it, %.0f (%.0f to %.0f) L for a kilogram of dry leaf; your own readings under feed.running.seen narrow that. A third of the alkalinity roots could leave is taken to show. EC alone cannot see this: read pH weekly.",
        plants.litresPerKgDry(), plants.lowLitres(), plants.highLitres());
  }

  static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
