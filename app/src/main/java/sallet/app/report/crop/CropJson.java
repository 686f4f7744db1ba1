package sallet.app.report.crop;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sallet.app.report.Caution;
import sallet.crop.Emergence;
import sallet.crop.TomatoPlan;
import sallet.crop.forecast.Band;
import sallet.crop.forecast.DaysToMass;
import sallet.crop.forecast.GrowthForecast;
import sallet.crop.forecast.GrowthForecast.Course;
import sallet.crop.forecast.RoomVerdict;
import sallet.crop.risk.Risk;

/**
 * The report of crops as JSON, described by {@code docs/schema/crop.schema.json}. Dates are ISO
 * dates, numbers are rounded to 0.1; an end that is never reached is null.
 */
public final class CropJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private CropJson() {}

  /** The JSON text, indented. */
  public static String of(CropReport report) {
    ObjectNode root = NODES.objectNode();
    root.put("sown", report.sown().toString());
    root.set("place", spot(report.spot()));
    root.set("damp", risk(report.damp()));
    ArrayNode crops = root.putArray("crops");
    report.verdicts().forEach(verdict -> crops.add(verdict(verdict)));
    report.detail().ifPresent(detail -> root.set("detail", detail(report, detail)));
    root.put("caution", Caution.FOOD.text());
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values cannot fail to be written", e);
    }
  }

  private static ObjectNode spot(CropReport.Spot spot) {
    return NODES
        .objectNode()
        .put("pot", spot.pot())
        .put("siteCm2", tenths(spot.siteCm2()))
        .put("meanDliMol", tenths(spot.dliMol()))
        .put("note", spot.note());
  }

  private static ObjectNode verdict(RoomVerdict verdict) {
    ObjectNode node = NODES.objectNode();
    node.put("crop", verdict.crop().name());
    node.put("grade", word(verdict.grade()));
    put(node, "firstHarvestDays", verdict.readyDays());
    put(node, "gramsPerPotWeek", verdict.potWeekG());
    ArrayNode why = node.putArray("why");
    verdict.why().forEach(why::add);
    return node;
  }

  private static ObjectNode detail(CropReport report, CropReport.Detail detail) {
    ObjectNode node = NODES.objectNode();
    node.put("crop", detail.crop().name());
    node.put("species", detail.crop().species());
    node.put("style", word(detail.crop().style()));
    put(node, "seedAgeYears", detail.seedYears());
    put(
        node,
        "babyLeafGramsPer100Cm2",
        RoomVerdict.babyLeafG(detail.crop(), report.spot().dliMol()));
    detail.forecast().ifPresent(forecast -> node.set("forecast", forecast(forecast)));
    detail.tomato().ifPresent(plan -> node.set("fruit", tomato(plan)));
    ArrayNode months = node.putArray("daysToMass");
    for (CropReport.PotMonths pot : detail.months()) {
      ObjectNode one = months.addObject();
      one.set("place", spot(pot.spot()));
      ArrayNode rows = one.putArray("sowings");
      pot.rows().forEach(row -> rows.add(row(row)));
    }
    node.putObject("sources")
        .put("guide", detail.crop().sources().guide())
        .put("rules", detail.crop().sources().rules())
        .put("growth", detail.crop().sources().growth());
    return node;
  }

  private static ObjectNode row(DaysToMass row) {
    ObjectNode node = NODES.objectNode().put("sown", row.sown().toString());
    for (int i = 0; i < row.days().size(); i++) {
      OptionalInt days = row.days().get(i);
      String name = "daysTo%dGrams".formatted(Math.round(CropReport.MASSES_G.get(i)));
      if (days.isPresent()) {
        node.put(name, days.getAsInt());
      } else {
        node.putNull(name);
      }
    }
    return node;
  }

  private static ObjectNode forecast(GrowthForecast forecast) {
    ObjectNode node = NODES.objectNode();
    Emergence emergence = forecast.emergence();
    ObjectNode seed = node.putObject("seed");
    put(seed, "medianDays", emergence.medianDays());
    put(seed, "ninetyPercentDays", emergence.daysUntil(0.9));
    seed.put("usableShare", Math.round(emergence.usableShare() * 1000) / 1000.0);
    seed.put("concern", word(emergence.concern()));
    seed.put("advice", emergence.advice());
    forecast.course().ifPresent(course -> course(node, course));
    return node;
  }

  private static void course(ObjectNode node, Course course) {
    node.putObject("stages")
        .put("emergence", course.emerged().toString())
        .put("outOfCell", course.outOfCell().toString())
        .put("toBench", course.toBench().toString())
        .put("lastDay", course.lastDay().toString())
        .put("nearSeed", course.nearSeed());
    course
        .window()
        .ifPresent(
            w ->
                node.putObject("bestLifted")
                    .put("from", course.emerged().plusDays(w.firstDay()).toString())
                    .put("to", course.emerged().plusDays(w.lastDay()).toString())
                    .put("overMatureAfter", w.overMature()));
    course.replace().ifPresent(day -> node.put("betterReplaced", day.toString()));
    node.set("firstHarvestDays", band(course.readyDays()));
    ArrayNode curve = node.putArray("freshGrams");
    for (GrowthForecast.Day day : course.curve()) {
      curve.add(band(day.freshG()).put("date", day.date().toString()));
    }
    ArrayNode takes = node.putArray("harvests");
    for (GrowthForecast.Take take : course.takes()) {
      takes
          .addObject()
          .put("date", take.date().toString())
          .put("lift", take.lift())
          .set("edibleGrams", band(take.edibleG()));
    }
    node.set("potGrams", band(course.potG()));
    ArrayNode risks = node.putArray("risks");
    course.risks().forEach(risk -> risks.add(risk(risk)));
  }

  private static ObjectNode risk(Risk risk) {
    ObjectNode node = NODES.objectNode();
    node.put("risk", word(risk.kind()).replace('_', '-'));
    node.put("concern", word(risk.concern()));
    node.put("says", risk.says());
    node.put("mend", risk.mend());
    ArrayNode drivers = node.putArray("drivers");
    for (Risk.Driver driver : risk.drivers()) {
      drivers
          .addObject()
          .put("name", driver.name())
          .put("value", hundredths(driver.value()))
          .put("unit", driver.unit())
          .put("watchFrom", hundredths(driver.watchFrom()));
    }
    node.put("source", risk.source());
    return node;
  }

  private static ObjectNode tomato(TomatoPlan plan) {
    ObjectNode node = NODES.objectNode();
    ArrayNode stages = node.putArray("stages");
    plan.stages()
        .forEach(
            stage ->
                stages.addObject().put("stage", stage.name()).put("date", stage.date().toString()));
    node.put("trusses", tenths(plan.trusses()));
    node.put("usualGramsLow", plan.usualG().map(g -> g.low()).orElse(0.0));
    node.put("usualGramsHigh", plan.usualG().map(g -> g.high()).orElse(0.0));
    node.put("optimisticGrams", tenths(plan.modelG()));
    ArrayNode work = node.putArray("work");
    plan.work()
        .forEach(
            one -> work.addObject().put("from", one.from().toString()).put("text", one.text()));
    return node;
  }

  private static ObjectNode band(Band band) {
    ObjectNode node = NODES.objectNode();
    put(node, "low", OptionalDouble.of(band.low()));
    put(node, "median", OptionalDouble.of(band.median()));
    put(node, "high", OptionalDouble.of(band.high()));
    return node;
  }

  private static void put(ObjectNode node, String name, OptionalDouble value) {
    if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
      node.put(name, tenths(value.getAsDouble()));
    } else {
      node.putNull(name);
    }
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(java.util.Locale.ROOT);
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static double hundredths(double value) {
    return Math.round(value * 100) / 100.0;
  }
}
