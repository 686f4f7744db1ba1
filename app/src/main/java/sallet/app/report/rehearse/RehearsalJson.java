package sallet.app.report.rehearse;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sallet.plan.rehearse.Estimate;
import sallet.plan.rehearse.Habit;
import sallet.plan.rehearse.Hidden;
import sallet.plan.rehearse.Result;

/**
 * A rehearsal as JSON, described by {@code docs/schema/rehearse.schema.json}. Shares are 0 to 1,
 * numbers rounded to 0.0001.
 */
public final class RehearsalJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final double ROUNDING = 1e4;

  private RehearsalJson() {}

  /** The JSON text, indented. */
  public static String of(RehearsalReport report) {
    ObjectNode root = NODES.objectNode();
    root.put("from", report.from().toString());
    root.put("weeks", report.weeks());
    root.put("startUpWeeks", report.startUp());
    root.put("kinds", report.kinds());
    root.put("seed", report.seed());
    root.put("seasons", report.seasons());
    root.set("hidden", hidden(report.hidden()));
    ArrayNode habits = root.putArray("habits");
    report.results().forEach(result -> habits.add(habit(report, result)));
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values cannot fail to be written", e);
    }
  }

  private static ObjectNode hidden(Hidden hidden) {
    return NODES
        .objectNode()
        .put("growthMedian", hidden.growthMedian())
        .put("growthCv", hidden.growthCv())
        .put("plantCv", hidden.plantCv())
        .put("seedStrength", hidden.seedStrength())
        .put("sunSpread", hidden.sunSpread())
        .put("sunPersistence", hidden.sunPersistence())
        .put("deathShare", hidden.deathShare())
        .put("regrowth", hidden.regrowth())
        .put("readingSd", hidden.readingSd());
  }

  private static ObjectNode habit(RehearsalReport report, Result result) {
    ObjectNode node = NODES.objectNode();
    node.put("habit", result.habit().word());
    node.put("seasons", result.scores().size());
    if (result.habit() instanceof Habit.EveryWeeks rhythm) {
      node.put("plantsAWeek", rounded(rhythm.plantsAWeek()));
    } else if (result.habit() instanceof Habit.AllAtOnce once) {
      node.put("plants", rounded(once.plants()));
    }
    for (Measure measure : Measure.all(report)) {
      Estimate estimate = result.estimate(measure.part());
      node.putObject(measure.key())
          .put("mean", rounded(estimate.mean()))
          .put("low", rounded(estimate.low()))
          .put("high", rounded(estimate.high()));
    }
    return node;
  }

  private static double rounded(double value) {
    return Math.round(value * ROUNDING) / ROUNDING;
  }
}
