package sallet.feed.home;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import sallet.feed.FeedFault;
import sallet.feed.dose.Bottle;
import sallet.feed.dose.PhDose;
import sallet.feed.ion.Nutrient;
import sallet.feed.product.Product;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.IonLedger;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.reservoir.UptakePrior;
import sallet.feed.stock.TraceStock;
import sallet.units.Step;

/** How each number of the sheet comes about, step by step, by its path in the JSON. */
public final class FeedExplanation {
  private static final String FILE = "your file or our default";
  private static final String WEIGHTS = "atomic weights: Prohaska and others 2022";
  private static final String PURE =
      "formula, purity or label: your file or our default; " + WEIGHTS;
  private static final String FIT =
      "minimises the sum of (weight x (reached - wanted) / wanted)², few bags, whole scale steps";
  private static final String SOLVER = "Goldfarb and Idnani 1983; weights and bags: judgement";

  private final FeedSheet sheet;
  private final Map<String, Supplier<List<Step>>> told = new LinkedHashMap<>();

  private FeedExplanation(FeedSheet sheet) {
    this.sheet = sheet;
    told.put("target.strength", this::strength);
    told.putAll(SolutionExplanation.of(sheet));
    sheet.acid().ifPresent(dose -> told.put("acid.millilitres", () -> dose(dose)));
    sheet.settling().ifPresent(dose -> told.put("settling.millilitres", () -> dose(dose)));
    sheet
        .running()
        .correction()
        .flatMap(FeedSheet.Correction::dose)
        .ifPresent(dose -> told.put("correction.dose.millilitres", () -> dose(dose)));
    putRecipe();
    putReservoir();
    told.put("uptake.litresPerKgDry", () -> uptake(sheet.running().plants()));
    sheet.cost().ifPresent(cost -> told.put("cost.amount", () -> cost(cost)));
    sheet.blend().ifPresent(blend -> told.put("blend.share", () -> share(blend)));
  }

  /**
   * The steps behind a number.
   *
   * @param path such as "solution.ecMsCm" or "doses[0].amount"
   * @throws FeedFault when nothing on the sheet has that path; it names those that have
   */
  public static List<Step> of(FeedSheet sheet, String path) {
    Map<String, Supplier<List<Step>>> told = new FeedExplanation(sheet).told;
    Supplier<List<Step>> steps = told.get(path.strip());
    if (steps == null) {
      throw new FeedFault(
          "\"%s\" is no number of this sheet that can be explained; ask for %s (counted from 0)"
              .formatted(
                  path,
                  String.join(
                      ", ",
                      told.keySet().stream()
                          .filter(name -> !name.matches(".*\\[[1-9].*"))
                          .toList())));
    }
    return steps.get();
  }

  /** All paths of a sheet that can be explained. */
  public static List<String> paths(FeedSheet sheet) {
    return List.copyOf(new FeedExplanation(sheet).told.keySet());
  }

  private void putRecipe() {
    List<Recipe.Dose> doses = sheet.main().doses();
    for (int i = 0; i < doses.size(); i++) {
      Recipe.Dose one = doses.get(i);
      told.put("doses[" + i + "].amount", () -> amount(one));
    }
    List<Recipe.Fit> main = sheet.main().fits();
    List<Recipe.Fit> trace = sheet.trace().map(Recipe::fits).orElse(List.of());
    for (int i = 0; i < main.size() + trace.size(); i++) {
      Recipe.Fit fit = i < main.size() ? main.get(i) : trace.get(i - main.size());
      told.put("nutrients[" + i + "].reachedMgL", () -> reached(fit));
      told.put("nutrients[" + i + "].wantedMgL", () -> wanted(fit));
    }
    List<TraceStock.Weighing> weighings =
        sheet.traceStock().map(TraceStock::weighings).orElse(List.of());
    for (int i = 0; i < weighings.size(); i++) {
      TraceStock.Weighing one = weighings.get(i);
      told.put("traceStock.weighings[" + i + "].grams", () -> grams(one));
    }
  }

  private void putReservoir() {
    List<FeedSheet.Reading> readings = sheet.running().readings();
    for (int i = 0; i < readings.size(); i++) {
      FeedSheet.Reading one = readings.get(i);
      told.put("readings[" + i + "].strength", () -> reading(one));
    }
    for (int i = 0; i < sheet.running().weeks().size(); i++) {
      TankWeek week = sheet.running().weeks().get(i);
      for (Nutrient nutrient : TankWeek.TOLD) {
        told.put("weeks[%d].mgL.%s".formatted(i, nutrient.symbol()), () -> balance(week, nutrient));
      }
    }
  }

  private static Step step(String name, double value, String unit, String how, String source) {
    return new Step(name, value, unit, how, source);
  }

  private List<Step> strength() {
    return List.of(
        step(
            "EC of the published solution",
            sheet.target().atStrength(1 / sheet.strength()).ecMsCm(),
            "mS/cm",
            "its ions in pure water at 25 °C",
            sheet.target().source() + " (" + sheet.target().knownAs() + ")"),
        step("EC of this recipe", sheet.state().ecMsCm(), "mS/cm", "see solution.ecMsCm", ""),
        step(
            "strength",
            sheet.strength(),
            "",
            "1, or so that the finished solution has the EC of feed.ec",
            FILE));
  }

  private List<Step> dose(PhDose dose) {
    Bottle bottle = dose.bottle();
    List<Step> steps = new ArrayList<>();
    steps.add(
        step(
            "charge to take from a litre",
            dose.meqL(),
            "meq/L",
            "alkalinity before - after; at most 90 % at once; a base has the other sign",
            "charge balance; limit: judgement"));
    steps.add(step("volume", sheet.litres(), "L", "--mix or the reservoir", FILE));
    steps.add(step("strength of the bottle", bottle.percent(), "% by mass", "", FILE));
    steps.add(
        step(
            "its density",
            bottle.densityGmL(),
            "g/mL",
            "at 20 °C",
            "handbook tables or your file"));
    steps.add(
        step(
            "amount in a litre of it",
            bottle.molarity(),
            "mol/L",
            "10 x percent x density / molar mass",
            WEIGHTS));
    steps.add(
        step(
            "volume to add",
            dose.millilitres(),
            "mL",
            "charge x volume / (amount x %d equivalents)"
                .formatted(Math.abs(bottle.reagent().equivalents())),
            ""));
    return steps;
  }

  private static List<Step> amount(Recipe.Dose dose, double litres, List<Recipe.Fit> fits) {
    List<Step> steps = new ArrayList<>();
    double gramsPerL = dose.amount() / litres;
    for (Recipe.Fit fit : fits) {
      double content = dose.product().perUnit().mg(fit.nutrient());
      if (content > 0) {
        String name = fit.nutrient().symbol();
        steps.add(step(name + " in a gram", content, "mg/g", "1000 x atoms x weight / M", PURE));
        steps.add(
            step(name + " it brings", content * gramsPerL, "mg/L", "content x grams a litre", ""));
      }
    }
    return steps;
  }

  private List<Step> amount(Recipe.Dose dose) {
    List<Step> steps = new ArrayList<>(amount(dose, sheet.litres(), sheet.main().fits()));
    double perLitre = dose.amount() / sheet.litres();
    steps.add(step("in a litre", perLitre, dose.product().measure().symbol() + "/L", FIT, SOLVER));
    steps.add(
        step(
            "misfit of the recipe",
            sheet.main().objective(),
            "",
            "that sum, of the masses as weighed; no masses of as many bags do better than %.2g"
                .formatted(sheet.main().bound()),
            SOLVER));
    steps.add(
        step(
            dose.product().name(),
            dose.amount(),
            dose.product().measure().symbol(),
            "in a litre x %s L".formatted(sheet.litres()),
            ""));
    return steps;
  }

  private List<Step> reached(Recipe.Fit fit) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        step(
            "from the water",
            fit.waterMgL(),
            "mg/L",
            "with the acid against its alkalinity",
            "analysis: " + FILE));
    for (Recipe recipe : Stream.concat(Stream.of(sheet.main()), sheet.trace().stream()).toList()) {
      for (Recipe.Dose dose : recipe.doses()) {
        double content = dose.product().perUnit().mg(fit.nutrient());
        if (content > 0) {
          double perLitre = dose.amount() / recipe.litres();
          steps.add(
              step(
                  "from " + dose.product().name(),
                  content * perLitre,
                  "mg/L",
                  "%.4g mg/g x %.4g g/L".formatted(content, perLitre),
                  PURE));
        }
      }
    }
    steps.add(step("reached", fit.mgL(), "mg/L", "sum", ""));
    steps.addAll(wanted(fit));
    steps.add(
        step(
            "off by",
            100 * fit.miss(),
            "%",
            "(reached - wanted) / wanted",
            "weight %.2g: judgement".formatted(fit.goal().weight())));
    return steps;
  }

  private List<Step> wanted(Recipe.Fit fit) {
    return List.of(
        step(
            "wanted",
            fit.goal().mgL(),
            "mg/L",
            "published x strength of %.3f".formatted(sheet.strength()),
            sheet.target().source() + " (" + sheet.target().knownAs() + ")"));
  }

  private static List<Step> grams(TraceStock.Weighing weighing) {
    Product product = weighing.product();
    return List.of(
        step(
            product.name(),
            weighing.grams(),
            "g",
            "milligrams a litre of solution x strength of the bottle x its litres, as the scale shows",
            PURE + "; fit as of the main salts"));
  }

  private List<Step> reading(FeedSheet.Reading reading) {
    return List.of(
        step(
            "conductivity",
            reading.meaning().msCm(),
            "mS/cm",
            "reading by " + reading.meaning().scale() + ", 2 % for each °C off 25, meter's factor",
            "meter: your file; factor: learned from your fresh solutions, 1 without"),
        step("EC of this recipe", sheet.state().ecMsCm(), "mS/cm", "see solution.ecMsCm", ""),
        step(
            "strength",
            reading.strength(),
            "",
            "((reading - water) / (recipe - water))^(1/0.95)",
            "exponent 0.942 to 0.950 of the conductivity model"));
  }

  private static List<Step> uptake(UptakePrior plants) {
    UptakePrior prior = UptakePrior.find(plants.kind()).orElse(plants);
    String unit = "L/kg";
    return List.of(
        step("prior", prior.litresPerKgDry(), unit, "water for a kilogram dry", prior.source()),
        step("its 10 % point", prior.lowLitres(), unit, "humid winter air", "judgement"),
        step("its 90 % point", prior.highLitres(), unit, "dry heat", "judgement"),
        step(
            plants.kind(),
            plants.litresPerKgDry(),
            unit,
            "mean of logarithms of prior and readings, by 1 / spread²; a reading has 20 %",
            "learned from feed.running.seen, the prior without; spread of a reading: judgement"),
        step("10 % point now", plants.lowLitres(), unit, "", "likewise"),
        step("90 % point now", plants.highLitres(), unit, "", "likewise"));
  }

  private static List<Step> cost(Cost cost) {
    List<Step> steps = new ArrayList<>();
    cost.each()
        .forEach(
            (name, amount) ->
                steps.add(step(name, amount, "", "kilograms x pricePerKg", "prices: your file")));
    steps.add(step("cost", cost.amount(), "", "sum", ""));
    return steps;
  }

  private static List<Step> share(WaterBlend blend) {
    List<Step> steps = new ArrayList<>();
    for (WaterBlend.Trial trial : blend.trials()) {
      steps.add(
          step(
              "misfit with %.0f %%".formatted(100 * trial.share()),
              trial.objective(),
              "",
              "best recipe of that blend",
              SOLVER));
    }
    steps.add(
        step(
            "share of " + blend.second(),
            blend.share(),
            "",
            blend.asked()
                ? "as you set it"
                : "the least that is off by no more than 5 % on the mean, or as good as the best",
            blend.asked() ? "your file" : "judgement"));
    return steps;
  }

  private List<Step> balance(TankWeek week, Nutrient nutrient) {
    IonLedger ledger = week.ledger();
    double fresh = ledger.fresh().mg(nutrient) * sheet.litres();
    double taken = ledger.takenMmol().mg(nutrient);
    double now = ledger.perLitre().mg(nutrient) * ledger.litres();
    return List.of(
        step("in the fresh solution", fresh, "mg", "concentration x litres", ""),
        step(
            "taken up since",
            taken,
            "mg",
            "content of dry leaf / water drunk for it x water drunk, at most what is there",
            "uptake prior of feed.running.plants, to be learned"),
        step(
            "poured in since",
            now - fresh + taken,
            "mg",
            "%.1f L of top-up, acid and base".formatted(ledger.addedLitres()),
            "feed.running: " + FILE),
        step("now", now, "mg", "fresh - taken + poured in", "balance of masses"),
        step(
            "concentration",
            ledger.perLitre().mg(nutrient),
            "mg/L",
            "now / %.1f L".formatted(ledger.litres()),
            "uptake is good to a factor of about 1.5: judgement"));
  }
}
