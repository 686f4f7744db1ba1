package sallet.app.report.feed;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import sallet.app.report.Steps;
import sallet.feed.dose.PhDose;
import sallet.feed.home.Cost;
import sallet.feed.home.FeedSheet;
import sallet.feed.home.WaterBlend;
import sallet.feed.ion.Nutrient;
import sallet.feed.recipe.Recipe;
import sallet.feed.reservoir.EcCorrection;
import sallet.feed.reservoir.TankWeek;
import sallet.feed.solution.Mineral;
import sallet.feed.stock.StockPlan;
import sallet.feed.stock.StockTank;
import sallet.feed.stock.TraceStock;

/** The sheet for the sink as JSON, described by {@code docs/schema/feed.schema.json}. */
public final class FeedJson {
  private FeedJson() {}

  /** The JSON text, indented. */
  public static String of(FeedReport report) {
    FeedSheet sheet = report.sheet();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("litres", sheet.litres());
    ObjectNode target = root.putObject("target");
    target.put("id", sheet.target().id());
    target.put("name", sheet.target().name());
    target.put("source", sheet.target().source());
    target.put("knownAs", sheet.target().knownAs());
    put(target, "strength", sheet.strength());
    root.set("water", water(sheet));
    sheet.acid().ifPresent(acid -> root.set("acid", dose(acid)));
    root.set("doses", doses(sheet.main().doses()));
    put(root, "objective", sheet.main().objective());
    put(root, "objectiveBound", sheet.main().bound());
    root.set("nutrients", nutrients(sheet));
    sheet.main().mend().ifPresent(m -> root.put("bagThatMendsMost", m.salt().id()));
    root.set("solution", solution(sheet));
    sheet.cost().ifPresent(cost -> root.set("cost", cost(cost)));
    sheet.traceStock().ifPresent(stock -> root.set("traceStock", trace(stock)));
    sheet.stock().ifPresent(stock -> root.set("stock", stock(stock)));
    sheet.settling().ifPresent(dose -> root.set("settling", dose(dose)));
    sheet.blend().ifPresent(blend -> root.set("blend", blend(blend)));
    running(root, sheet.running());
    texts(root, "steps", FeedSteps.mixing(sheet));
    texts(root, "notes", FeedWords.notes(sheet));
    texts(root, "cautions", FeedWords.cautions(sheet));
    report
        .explained()
        .ifPresent(
            told ->
                root.putObject("explained")
                    .put("path", told.path())
                    .set("steps", Steps.json(told.steps())));
    return root.toPrettyString() + "\n";
  }

  private static ObjectNode cost(Cost cost) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    put(node, "amount", cost.amount());
    ObjectNode each = node.putObject("each");
    cost.each().forEach((name, amount) -> put(each, name, amount));
    texts(node, "unpriced", cost.unpriced());
    return node;
  }

  private static ObjectNode blend(WaterBlend blend) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("first", blend.first());
    node.put("second", blend.second());
    put(node, "share", blend.share());
    node.put("asked", blend.asked());
    ArrayNode trials = node.putArray("trials");
    for (WaterBlend.Trial trial : blend.trials()) {
      ObjectNode one = trials.addObject();
      put(one, "share", trial.share());
      put(one, "objective", trial.objective());
      put(one, "miss", trial.miss());
      put(one, "alkalinityMeqL", trial.alkalinityMeqL());
      put(one, "acidMillilitres", trial.acidMl());
      one.put("bags", trial.bags());
    }
    return node;
  }

  private static void running(ObjectNode root, FeedSheet.Running running) {
    ArrayNode readings = root.putArray("readings");
    for (FeedSheet.Reading reading : running.readings()) {
      ObjectNode one = readings.addObject();
      one.put("scale", reading.meaning().scale());
      put(one, "ecMsCm", reading.meaning().msCm());
      put(one, "strength", reading.strength());
    }
    running
        .correction()
        .ifPresent(
            c -> {
              ObjectNode one = root.putObject("correction");
              one.put("asked", c.asked());
              one.put("text", c.words());
              c.dose().ifPresent(d -> one.set("dose", dose(d)));
              c.strength().ifPresent(s -> strength(one, s));
              one.set("salts", doses(c.salts()));
              put(one, "traceStockMl", c.traceMl());
            });
    ArrayNode weeks = root.putArray("weeks");
    for (int i = 0; i < running.weeks().size(); i++) {
      ObjectNode week = week(running.weeks().get(i));
      ObjectNode low = week.putObject("mgLLow");
      ObjectNode high = week.putObject("mgLHigh");
      for (Nutrient nutrient : TankWeek.TOLD) {
        put(low, nutrient.symbol(), running.range(i, nutrient).low());
        put(high, nutrient.symbol(), running.range(i, nutrient).high());
      }
      weeks.add(week);
    }
    ObjectNode plants = root.putObject("uptake");
    plants.put("plants", running.plants().kind());
    put(plants, "litresPerKgDry", running.plants().litresPerKgDry());
    put(plants, "litresPerKgDryLow", running.plants().lowLitres());
    put(plants, "litresPerKgDryHigh", running.plants().highLitres());
  }

  private static void strength(ObjectNode node, EcCorrection correction) {
    put(node, "waterL", correction.waterL());
    put(node, "stockMl", correction.stockMl());
    put(node, "strengthNow", correction.strengthNow());
    put(node, "strengthWanted", correction.strengthWanted());
  }

  private static ObjectNode week(TankWeek week) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("week", week.week());
    put(node, "litres", week.ledger().litres());
    put(node, "topUpL", week.topUpL());
    put(node, "topUpStrength", week.topUpStrength());
    put(node, "ecMsCm", week.ledger().ecMsCm());
    put(node, "phBefore", week.phBefore());
    put(node, "ph", week.ph());
    week.dose().ifPresent(d -> node.set("dose", dose(d)));
    ObjectNode mgL = node.putObject("mgL");
    TankWeek.TOLD.forEach(n -> put(mgL, n.symbol(), week.ledger().perLitre().mg(n)));
    put(node, "idleShare", week.ledger().idleShare());
    texts(node, "reasonsToRenew", week.reasons());
    return node;
  }

  private static ObjectNode water(FeedSheet sheet) {
    ObjectNode water = JsonNodeFactory.instance.objectNode();
    water.put("name", sheet.water().name());
    put(water, "ecMsCm", sheet.water().ecMsCm());
    put(water, "alkalinityMeqL", sheet.water().alkalinityMeq());
    put(water, "hardnessMmolL", sheet.water().hardnessMmol());
    return water;
  }

  private static ObjectNode dose(PhDose dose) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("reagent", dose.bottle().reagent().plainName());
    put(node, "percent", dose.bottle().percent());
    put(node, "millilitres", dose.millilitres());
    put(node, "meqL", dose.meqL());
    put(node, "phNow", dose.phNow());
    put(node, "phLater", dose.phLater());
    put(node, "alkalinityLeftMeqL", dose.alkalinityLeftMeqL());
    texts(node, "notes", dose.notes());
    return node;
  }

  private static ArrayNode doses(List<Recipe.Dose> recipe) {
    ArrayNode doses = JsonNodeFactory.instance.arrayNode();
    for (Recipe.Dose dose : recipe) {
      ObjectNode one = doses.addObject();
      one.put("id", dose.product().id());
      one.put("name", dose.product().name());
      one.put("unit", dose.product().measure().symbol());
      put(one, "amount", dose.amount());
      one.put("caution", dose.product().caution());
    }
    return doses;
  }

  private static ArrayNode nutrients(FeedSheet sheet) {
    ArrayNode nutrients = JsonNodeFactory.instance.arrayNode();
    add(nutrients, sheet.main().fits());
    sheet.trace().ifPresent(trace -> add(nutrients, trace.fits()));
    return nutrients;
  }

  private static void add(ArrayNode nutrients, List<Recipe.Fit> fits) {
    for (Recipe.Fit fit : fits) {
      ObjectNode one = nutrients.addObject();
      one.put("nutrient", fit.nutrient().symbol());
      put(one, "wantedMgL", fit.goal().mgL());
      put(one, "waterMgL", fit.waterMgL());
      put(one, "reachedMgL", fit.mgL());
      put(one, "weight", fit.goal().weight());
    }
  }

  private static ObjectNode solution(FeedSheet sheet) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    FeedSheet.State state = sheet.state();
    put(node, "ecMsCm", state.ecMsCm());
    put(node, "meterShowsMsCm", state.meterShowsMsCm());
    put(node, "ph", state.phLater());
    put(node, "alkalinityMeqL", state.alkalinityMeq());
    put(node, "osmoticKPa", state.osmoticKPa());
    put(node, "bufferMeqPerPh", state.bufferMeqPerPh());
    put(node, "sodiumMgL", sheet.perLitre().mg(Nutrient.SODIUM));
    put(node, "chlorideMgL", sheet.perLitre().mg(Nutrient.CHLORIDE));
    ObjectNode ions = node.putObject("ionsMmolL");
    sheet.perLitre().mmol().forEach((ion, mmol) -> put(ions, ion.name(), mmol));
    ObjectNode saturation = node.putObject("saturationIndex");
    for (Mineral mineral : Mineral.values()) {
      double index = state.saturation().getOrDefault(mineral, Double.NEGATIVE_INFINITY);
      if (Double.isFinite(index)) {
        put(saturation, mineral.plainName(), index);
      }
    }
    return node;
  }

  private static ObjectNode trace(TraceStock stock) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("factor", stock.factor());
    put(node, "litres", stock.litres());
    ArrayNode weighings = node.putArray("weighings");
    for (TraceStock.Weighing weighing : stock.weighings()) {
      ObjectNode one = weighings.addObject();
      one.put("id", weighing.product().id());
      put(one, "grams", weighing.grams());
      weighing
          .dilution()
          .ifPresent(
              d -> {
                put(one, "weighGrams", d.weighG());
                put(one, "intoMl", d.intoMl());
                put(one, "takeMl", d.takeMl());
              });
    }
    texts(node, "steps", FeedSteps.traceStock(stock));
    return node;
  }

  private static ObjectNode stock(StockPlan plan) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("factor", plan.factor());
    put(node, "millilitresPerLitre", plan.millilitresPerLitre());
    node.put("largestFactor", plan.largestFactor());
    ArrayNode tanks = node.putArray("tanks");
    for (StockTank tank : plan.tanks()) {
      ObjectNode one = tanks.addObject();
      one.put("name", tank.name());
      put(one, "fullness", tank.fullness());
      ObjectNode grams = one.putObject("gramsPerL");
      tank.gramsPerL().entrySet().stream()
          .sorted(Comparator.comparing(e -> e.getKey().id()))
          .forEach(e -> put(grams, e.getKey().id(), e.getValue()));
    }
    texts(node, "troubles", plan.troubles());
    return node;
  }

  private static void texts(ObjectNode node, String name, List<String> texts) {
    ArrayNode array = node.putArray(name);
    texts.forEach(array::add);
  }

  private static void put(ObjectNode node, String name, double value) {
    node.put(name, Steps.rounded(value));
  }
}
