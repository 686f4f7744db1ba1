package sallet.app.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sallet.crop.Catalogue;
import sallet.crop.forecast.Band;
import sallet.household.Household;
import sallet.plan.BowlWeek;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.SowingPlan;
import sallet.plan.WhatIf;

/**
 * The plan as JSON, described by {@code docs/schema/plan.schema.json}. Dates are ISO dates, grams
 * are edible grams rounded to 0.1.
 */
public final class PlanJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private PlanJson() {}

  /** The JSON text, indented. */
  public static String of(PlanAnswer answer, Household household, Catalogue catalogue) {
    SowingPlan plan = answer.plan();
    PlanReport report = PlanReport.of(answer, household, catalogue, BenchLight.ofGroups(plan));
    ObjectNode root = NODES.objectNode();
    root.put("from", plan.from().toString());
    plan.taskDays().forEach(day -> array(root, "taskDays").add(day.toString()));
    root.put("margin", plan.margin());
    root.put("basis", answer.basis());
    plan.weeks().forEach(week -> array(root, "weeks").add(week(week)));
    plan.sowings().forEach(sowing -> array(root, "sowings").add(sowing(sowing)));
    answer.standing().ifPresent(s -> StandingJson.addTo(root, s));
    plan.standing().forEach(batch -> array(root, "continuing").add(sowing(batch)));
    plan.picksNow().forEach(pick -> array(root, "picksNow").add(pickNow(pick)));
    answer.changes().forEach(change -> array(root, "changes").add(change));
    report.tasks().forEach(task -> array(root, "tasks").add(task(task)));
    plan.groups().forEach(group -> array(root, "potGroups").add(group(group)));
    root.set("objective", objective(report));
    root.set("solver", solver(plan.solver()));
    plan.marginals().forEach(m -> array(root, "marginals").add(marginal(m)));
    answer.bottlenecks().forEach(b -> array(root, "bottlenecks").add(bottleneck(b)));
    plan.notes().forEach(note -> array(root, "notes").add(note));
    for (String name :
        List.of(
            "taskDays",
            "weeks",
            "sowings",
            "standing",
            "learned",
            "continuing",
            "picksNow",
            "changes",
            "tasks",
            "potGroups",
            "marginals",
            "bottlenecks",
            "notes")) {
      array(root, name);
    }
    return write(root);
  }

  private static String write(ObjectNode root) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values cannot fail to be written", e);
    }
  }

  private static ObjectNode week(BowlWeek week) {
    ObjectNode node = NODES.objectNode();
    node.put("bowlDay", week.bowlDay().toString());
    node.put("demandGrams", tenths(week.demandGrams()));
    node.put("reachable", week.reachable());
    node.put("plannedGrams", tenths(week.plannedGrams()));
    week.luck()
        .ifPresentOrElse(
            luck -> {
              band(node, "harvestGrams", luck.harvestGrams());
              band(node, "bowlGrams", luck.bowlGrams());
            },
            () -> node.put("harvestGramsExpected", tenths(week.harvestGrams())));
    node.put("shortfallGrams", tenths(week.shortfallGrams()));
    node.put("surplusGrams", tenths(week.surplusGrams()));
    ArrayNode kinds = node.putArray("kinds");
    week.kinds().stream()
        .filter(kind -> kind.grams() >= 0.05)
        .forEach(
            kind -> kinds.addObject().put("crop", kind.crop()).put("grams", tenths(kind.grams())));
    ArrayNode full = node.putArray("fullPlaces");
    week.fullPlaces().forEach(full::add);
    return node;
  }

  private static void band(ObjectNode node, String name, Band band) {
    node.put(name + "Low", tenths(band.low()));
    node.put(name + "Expected", tenths(band.median()));
    node.put(name + "High", tenths(band.high()));
  }

  private static ObjectNode sowing(Sowing sowing) {
    ObjectNode node = NODES.objectNode();
    node.put("batch", sowing.batch());
    node.put("date", sowing.date().toString());
    node.put("crop", sowing.crop());
    node.put("seeds", sowing.seeds());
    node.put("cells", sowing.cells());
    node.put("emergence", sowing.emergence().toString());
    node.put("plantsExpected", sowing.plants());
    moves(sowing, node.putArray("moves"));
    ArrayNode pots = node.putArray("pots");
    sowing.courses().forEach(course -> course.pots().forEach(pots::add));
    picks(sowing, node.putArray("picks"));
    ArrayNode courses = node.putArray("courses");
    sowing.courses().forEach(course -> courses.add(course(course)));
    return node;
  }

  private static void moves(Sowing sowing, ArrayNode moves) {
    Map<LocalDate, Integer> toNursery = new TreeMap<>();
    Map<LocalDate, Integer> toPots = new TreeMap<>();
    for (Course course : sowing.courses()) {
      if (course.throughNursery()) {
        toNursery.merge(course.toNursery(), course.plants(), Integer::sum);
      }
      toPots.merge(course.toBench(), course.plants(), Integer::sum);
    }
    toNursery.forEach((date, count) -> moves.add(move(date, "nursery", count)));
    toPots.forEach((date, count) -> moves.add(move(date, "bench", count)));
  }

  private static ObjectNode move(LocalDate date, String to, int count) {
    return NODES.objectNode().put("date", date.toString()).put("to", to).put("count", count);
  }

  /** Grams of the whole batch, one entry for each day and way of taking. */
  private static void picks(Sowing sowing, ArrayNode picks) {
    record Take(LocalDate date, boolean lift) {}
    Map<Take, Double> grams =
        new TreeMap<>(java.util.Comparator.comparing(Take::date).thenComparing(Take::lift));
    for (Course course : sowing.courses()) {
      course
          .picks()
          .forEach(
              pick ->
                  grams.merge(
                      new Take(pick.date(), course.lifted() && pick.date().equals(course.end())),
                      pick.gramsPerPlant() * course.plants(),
                      Double::sum));
    }
    grams.forEach(
        (take, sum) ->
            picks
                .addObject()
                .put("date", take.date().toString())
                .put("grams", tenths(sum))
                .put("lift", take.lift()));
  }

  private static ObjectNode course(Course course) {
    ObjectNode node = NODES.objectNode();
    node.put("plants", course.plants());
    node.put("toNursery", course.toNursery().toString());
    node.put("toBench", course.toBench().toString());
    node.put("potGroup", course.group());
    ArrayNode pots = node.putArray("pots");
    course.pots().forEach(pots::add);
    ArrayNode picks = node.putArray("picks");
    course
        .picks()
        .forEach(
            pick ->
                picks
                    .addObject()
                    .put("date", pick.date().toString())
                    .put("leafShare", Math.round(pick.share() * 1e4) / 1e4)
                    .put("gramsPerPlant", tenths(pick.gramsPerPlant()))
                    .put("lift", course.lifted() && pick.date().equals(course.end())));
    node.put("end", course.end().toString());
    node.put("lifted", course.lifted());
    node.put("clearedGramsPerPlant", tenths(course.clearedGrams()));
    return node;
  }

  private static ObjectNode task(Task task) {
    return NODES
        .objectNode()
        .put("date", task.date().toString())
        .put("event", task.event().journalWord())
        .put("batch", task.batch())
        .put("crop", task.crop())
        .put("count", task.count())
        .put("place", task.place())
        .put("grams", tenths(task.grams()))
        .put("text", task.text())
        .put("minutes", task.minutes());
  }

  private static ObjectNode group(SowingPlan.PotGroup group) {
    ObjectNode node = NODES.objectNode();
    node.put("name", group.name());
    ArrayNode pots = node.putArray("pots");
    group.pots().forEach(pots::add);
    node.put("meanDliMol", tenths(group.meanDliMol()));
    node.put("siteCm2", tenths(group.siteCm2()));
    return node;
  }

  private static ObjectNode objective(PlanReport report) {
    SowingPlan.Objective o = report.plan().objective();
    ObjectNode node = NODES.objectNode();
    node.put("value", tenths(o.value()));
    putOrNull(node, "gridBound", o.gridBound(), 10);
    putOrNull(node, "gapGrams", o.gapGrams(), 10);
    putOrNull(node, "gapShare", Found.gapShare(report), 1e6);
    node.put("shortGrams", tenths(o.shortGrams()));
    node.put("wasteGrams", tenths(o.wasteGrams()));
    node.put("oneKindGrams", tenths(o.oneKindGrams()));
    node.put("carriedGrams", tenths(o.carriedGrams()));
    node.put("seedsExpected", tenths(o.seeds()));
    node.put("changedSowings", o.changes());
    return node;
  }

  private static ObjectNode pickNow(SowingPlan.PickNow pick) {
    return NODES
        .objectNode()
        .put("date", pick.date().toString())
        .put("place", pick.place())
        .put("batch", pick.batch())
        .put("crop", pick.crop())
        .put("grams", tenths(pick.grams()))
        .put("lift", pick.lift())
        .put("why", pick.why());
  }

  private static ObjectNode bottleneck(WhatIf.Bottleneck b) {
    return NODES
        .objectNode()
        .put("change", b.change())
        .put("gramsPerWeek", Math.round(b.gramsPerWeek() * 100) / 100.0);
  }

  private static ObjectNode marginal(SowingPlan.Marginal marginal) {
    ObjectNode node = NODES.objectNode();
    node.put("place", marginal.place());
    node.put("gramsPerWeek", Math.round(marginal.gramsPerWeek() * 100) / 100.0);
    return node;
  }

  private static ObjectNode solver(SowingPlan.SolverReport solver) {
    ObjectNode node = NODES.objectNode();
    node.put("status", solver.status());
    node.put("wallSeconds", Math.round(solver.wallSeconds() * 1000) / 1000.0);
    ArrayNode steps = node.putArray("steps");
    solver.steps().forEach(steps::add);
    return node;
  }

  private static ArrayNode array(ObjectNode node, String name) {
    return node.withArray(name);
  }

  private static void putOrNull(ObjectNode node, String name, double value, double perUnit) {
    if (Double.isFinite(value)) {
      node.put(name, Math.round(value * perUnit) / perUnit);
    } else {
      node.putNull(name);
    }
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
