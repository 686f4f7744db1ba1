package sallet.app.report.light;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import sallet.app.report.Steps;
import sallet.household.Pot;
import sallet.light.HourlyLight;
import sallet.light.LampHeight;
import sallet.light.LampShadow;
import sallet.light.LampWeek;
import sallet.light.LightExplanation;
import sallet.light.LightFactors;
import sallet.light.LightNeed;
import sallet.light.LightTarget;
import sallet.light.LightWatch;
import sallet.light.LightYear;
import sallet.light.PlaceUse;

/**
 * Light as JSON, described by {@code docs/schema/light.schema.json}. Lists of pots are in the order
 * of {@code pots}; hours are standard time.
 */
public final class LightJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private LightJson() {}

  /** The JSON text, indented. */
  public static String of(LightReport answer) {
    LightYear year = answer.year();
    ObjectNode root = NODES.objectNode();
    root.put("from", year.light().from().toString());
    root.set("target", target(year.target()));
    ArrayNode pots = root.putArray("pots");
    year.household().bench().pots().forEach(pot -> pots.add(pot(pot)));
    ArrayNode months = root.putArray("months");
    year.months().forEach(month -> months.add(month(year, month)));
    ArrayNode weeks = root.putArray("weeks");
    year.weeks().forEach(week -> weeks.add(week(week)));
    root.set("lamps", lamps(year));
    year.nursery()
        .ifPresent(
            shelf -> {
              ObjectNode nursery = root.putObject("nursery");
              nursery.put("columns", shelf.columns()).put("rows", shelf.rows());
              nursery.set("ppfdUmol", numbers(shelf.ppfdUmol()));
            });
    root.putObject("seedlings")
        .put("dliMol", rounded(year.seedlingMol()))
        .put("targetMol", rounded(year.wantedSeedlingMol()));
    ObjectNode factors = root.putObject("factors");
    LightFactors learned = year.calibration().factors();
    factors.set("window", factor(learned.window()));
    factors.set("lamp", factor(learned.lamp()));
    ArrayNode watches = root.putArray("watches");
    LightWatch.of(year).forEach(watch -> watches.add(watch(watch)));
    ArrayNode notes = root.putArray("notes");
    year.notes().forEach(notes::add);
    year.calibration().refusals().forEach(notes::add);
    root.set("day", day(answer));
    answer.explained().ifPresent(told -> root.set("explanation", explanation(told)));
    return write(root);
  }

  private static ObjectNode target(LightTarget wanted) {
    ObjectNode target = NODES.objectNode();
    target.put("origin", word(wanted.origin()));
    target.put("mostHours", wanted.mostHours());
    ArrayNode crops = target.putArray("crops");
    wanted.wanted().forEach(need -> crops.add(need(need)));
    return target;
  }

  private static ObjectNode lamps(LightYear year) {
    ObjectNode lamps = NODES.objectNode();
    year.hanging().ifPresent(height -> lamps.set("hanging", height(height)));
    year.better().ifPresent(height -> lamps.set("better", height(height)));
    year.shadow().ifPresent(shadow -> lamps.set("shadow", shadow(shadow)));
    ArrayNode raises = lamps.putArray("raises");
    year.raises()
        .forEach(
            raise ->
                raises
                    .addObject()
                    .put("day", raise.day())
                    .put("leavesM", rounded(raise.leavesM()))
                    .put("toAboveBenchM", rounded(raise.toAboveBenchM())));
    return lamps;
  }

  private static String write(ObjectNode root) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values cannot fail to be written", e);
    }
  }

  private static ObjectNode pot(Pot pot) {
    return NODES
        .objectNode()
        .put("name", pot.name())
        .put("xM", rounded(pot.xM()))
        .put("yM", rounded(pot.yM()));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static ObjectNode need(LightNeed need) {
    return NODES
        .objectNode()
        .put("crop", need.crop())
        .put("heads", need.heads())
        .put("seedlingMol", rounded(need.seedlingMol()))
        .put("leastMol", rounded(need.leastMol()))
        .put("targetMol", rounded(need.targetMol()))
        .put("tipBurns", need.tipBurns())
        .put("longDaysBolt", need.longDaysBolt());
  }

  private static ObjectNode month(LightYear year, LightYear.Month month) {
    ObjectNode node = NODES.objectNode();
    node.put("month", month.month().toString());
    node.set("windowMol", numbers(month.windowMol()));
    node.set("lampMol", numbers(month.lampMol()));
    node.put("dayHours", rounded(month.dayHours()));
    node.put("dullWeekMol", rounded(month.dullWeekMol()));
    node.put("brightWeekMol", rounded(month.brightWeekMol()));
    ArrayNode uses = node.putArray("uses");
    for (int i = 0; i < month.windowMol().size(); i++) {
      uses.add(word(PlaceUse.of(month.dliMol(i), year.target().wanted())));
    }
    ArrayNode crops = node.putArray("crops");
    for (int i = 0; i < month.windowMol().size(); i++) {
      crops.add(year.target().need(i, month.middle()).map(LightNeed::crop).orElse(null));
    }
    return node;
  }

  private static ObjectNode week(LampWeek week) {
    ObjectNode node = NODES.objectNode();
    node.put("from", week.from().toString());
    node.put("windowMol", rounded(week.windowMol()));
    node.set("dimming", numbers(week.dimming()));
    node.put("fullHours", rounded(week.fullHours()));
    node.set("dliMol", numbers(week.dliMol()));
    ArrayNode targets = node.putArray("targetMol");
    week.needs().forEach(need -> targets.add(need.map(LightNeed::targetMol).orElse(null)));
    node.put("costPerDay", rounded(week.costPerDay()));
    return node;
  }

  private static ObjectNode height(LampHeight height) {
    return NODES
        .objectNode()
        .put("aboveBenchM", rounded(height.aboveBenchM()))
        .put("clearanceM", rounded(height.clearanceM()))
        .put("meanUmol", rounded(height.map().meanUmol()))
        .put("minUmol", rounded(height.map().minUmol()))
        .put("maxUmol", rounded(height.map().maxUmol()))
        .put("variation", rounded(height.map().variation()))
        .put("utilisation", rounded(height.utilisation()))
        .put("brightestUmol", rounded(height.brightestUmol()));
  }

  private static ObjectNode shadow(LampShadow shadow) {
    ObjectNode node = NODES.objectNode();
    node.put("share", rounded(shadow.share()));
    node.set("ofMonths", numbers(shadow.ofMonths()));
    node.set("ofPots", numbers(shadow.ofPots()));
    shadow.clearAboveBenchM().ifPresent(height -> node.put("clearAboveBenchM", rounded(height)));
    return node;
  }

  private static ObjectNode factor(LightFactors.Factor factor) {
    return NODES
        .objectNode()
        .put("value", rounded(factor.value()))
        .put("spread", rounded(factor.spread()))
        .put("readings", factor.readings());
  }

  private static ObjectNode watch(LightWatch watch) {
    ObjectNode node = NODES.objectNode();
    node.put("kind", word(watch.worst().kind()));
    node.put("grade", word(watch.worst().grade()));
    node.put("text", watch.worst().text());
    node.put("source", watch.worst().source());
    ArrayNode pots = node.putArray("pots");
    watch.pots().forEach(pots::add);
    ArrayNode months = node.putArray("months");
    watch.months().forEach(months::add);
    return node;
  }

  private static ObjectNode day(LightReport answer) {
    HourlyLight light = answer.day();
    ObjectNode node = NODES.objectNode();
    node.put("date", answer.date().toString());
    node.put("dayHours", rounded(light.photoperiodHours(0)));
    ArrayNode pots = node.putArray("pots");
    for (int i = 0; i < light.places(); i++) {
      ObjectNode pot = pots.addObject();
      pot.put("name", answer.year().household().bench().pots().get(i).name());
      pot.put("dliMol", rounded(light.dliMol(i, 0)));
      ArrayNode windows = pot.putArray("daylightUmol");
      ArrayNode lamps = pot.putArray("lampUmol");
      for (int h = 0; h < 24; h++) {
        windows.add(rounded(light.daylightUmol(i, 0, h)));
        lamps.add(rounded(light.lampUmol(i, 0, h)));
      }
    }
    return node;
  }

  private static ObjectNode explanation(LightExplanation told) {
    ObjectNode node = NODES.objectNode();
    node.put("ppfdUmol", rounded(told.ppfdUmol()));
    node.set("steps", Steps.json(told.steps()));
    return node;
  }

  private static ArrayNode numbers(List<Double> values) {
    ArrayNode node = NODES.arrayNode();
    values.forEach(value -> node.add(rounded(value)));
    return node;
  }

  /** To a thousandth. */
  private static double rounded(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
