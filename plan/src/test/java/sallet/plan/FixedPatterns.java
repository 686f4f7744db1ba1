package sallet.plan;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import sallet.plan.linear.LinearProgramme;
import sallet.plan.linear.LinearSolver;

/**
 * A small sowing plan of fixed yields, as a check file states it: whole units of patterns that each
 * take places for some days and give grams on some days. Solved by the same linear programmes as
 * the sowing plan, and by branch and bound for whole units.
 *
 * <pre>
 * x p         units of a pattern, whole, 0 to its most
 * place r,d   sum of plants x places &lt;= capacity, on every day on which something comes
 * cells d     sum of cells of all sown on a day &lt;= capacity
 * batch b     sum of units of a batch that stands &lt;= its plants
 * harvest k,h grams cut - eaten - wasted = 0
 * serving s   eaten + missing = demand
 * kind k,s    eaten of a crop &lt;= whole grams of its share
 * min  short x missing + waste x wasted + seed x plants sown
 * </pre>
 */
final class FixedPatterns implements AutoCloseable {
  private static final double FREE = LinearProgramme.FREE;
  private static final double WHOLE = 1e-6;

  /** Costs are whole numbers. */
  private static final double COST_STEP = 1;

  private final JsonNode file;
  private final LinearProgramme programme;
  private final List<Integer> units = new ArrayList<>();
  private final List<Integer> most = new ArrayList<>();
  private final BranchAndBound wholeUnits;

  FixedPatterns(JsonNode file, LinearSolver solver) {
    this.file = file;
    this.programme = solver.programme();
    if (!file.path("maxCropsPerSowDay").isNull()) {
      throw new IllegalArgumentException("a limit on crops sown on a day is not known");
    }
    file.path("patterns").forEach(this::addUnits);
    file.path("resources").forEach(this::addPlaces);
    addSowDays();
    file.path("startingBatches").forEach(this::addBatch);
    addServings();
    wholeUnits = new BranchAndBound(programme, units, most, COST_STEP);
  }

  private void addUnits(JsonNode pattern) {
    boolean sown = !pattern.path("sowDay").isNull();
    double cost = sown ? weight("perSownPlant") * pattern.path("plantsPerUnit").asInt() : 0;
    units.add(programme.column(cost));
    most.add(pattern.path("maxUnits").asInt());
  }

  private double weight(String name) {
    return file.path("weights").path(name).asDouble();
  }

  private JsonNode pattern(int p) {
    return file.path("patterns").get(p);
  }

  private void addPlaces(JsonNode resource) {
    TreeSet<Integer> days = new TreeSet<>();
    for (JsonNode pattern : file.path("patterns")) {
      uses(pattern, resource).forEach(use -> days.add(use.path("from").asInt()));
    }
    for (int day : days) {
      int row = programme.row(-FREE, resource.path("capacityTenths").asInt());
      for (int p = 0; p < units.size(); p++) {
        double tenths = 0;
        for (JsonNode use : uses(pattern(p), resource)) {
          if (use.path("from").asInt() <= day && day < use.path("to").asInt()) {
            tenths += use.path("tenthsPerPlant").asDouble();
          }
        }
        set(row, p, tenths * pattern(p).path("plantsPerUnit").asInt());
      }
    }
  }

  private static List<JsonNode> uses(JsonNode pattern, JsonNode resource) {
    List<JsonNode> uses = new ArrayList<>();
    for (JsonNode use : pattern.path("uses")) {
      if (use.path("r").asText().equals(resource.path("id").asText())) {
        uses.add(use);
      }
    }
    return uses;
  }

  private void set(int row, int pattern, double coefficient) {
    if (coefficient != 0) {
      programme.set(row, units.get(pattern), coefficient);
    }
  }

  private void addSowDays() {
    Map<Integer, Integer> rows = new HashMap<>();
    for (int p = 0; p < units.size(); p++) {
      JsonNode pattern = pattern(p);
      if (!pattern.path("sowDay").isNull()) {
        int row =
            rows.computeIfAbsent(
                pattern.path("sowDay").asInt(),
                day -> programme.row(-FREE, file.path("maxCellsTenthsPerSowDay").asInt()));
        double tenths = 0;
        for (JsonNode use : pattern.path("uses")) {
          tenths +=
              use.path("r").asText().equals("cells") ? use.path("tenthsPerPlant").asDouble() : 0;
        }
        set(row, p, tenths * pattern.path("plantsPerUnit").asInt());
      }
    }
  }

  private void addBatch(JsonNode batch) {
    int row = programme.row(-FREE, batch.path("plants").asInt());
    for (int p = 0; p < units.size(); p++) {
      JsonNode from = pattern(p).path("startingBatch");
      set(row, p, !from.isNull() && from.asInt() == batch.path("id").asInt() ? 1 : 0);
    }
  }

  private record Harvest(String crop, int day) {}

  private void addServings() {
    Map<Harvest, Integer> harvests = new HashMap<>();
    for (int p = 0; p < units.size(); p++) {
      for (JsonNode cut : pattern(p).path("harvests")) {
        Harvest harvest = new Harvest(pattern(p).path("crop").asText(), cut.path("day").asInt());
        int row = harvests.computeIfAbsent(harvest, this::addHarvest);
        set(row, p, cut.path("g").asDouble() * pattern(p).path("plantsPerUnit").asInt());
      }
    }
    for (JsonNode serving : file.path("servings")) {
      addServing(serving, harvests);
    }
  }

  private int addHarvest(Harvest harvest) {
    int row = programme.row(0, 0);
    programme.set(row, programme.column(weight("wastePerG")), -1);
    return row;
  }

  private void addServing(JsonNode serving, Map<Harvest, Integer> harvests) {
    double demand = serving.path("demandG").asDouble();
    int day = serving.path("day").asInt();
    int row = programme.row(demand, demand);
    programme.set(row, programme.column(weight("shortPerG")), 1);
    double share = Math.floor(file.path("maxSharePerKind").asDouble() * demand + WHOLE);
    Map<String, Integer> kinds = new HashMap<>();
    harvests.forEach(
        (harvest, supply) -> {
          if (harvest.day <= day && day <= harvest.day + file.path("storageDays").asInt()) {
            int eaten = programme.column(0);
            programme.set(supply, eaten, -1);
            programme.set(row, eaten, 1);
            programme.set(
                kinds.computeIfAbsent(harvest.crop, k -> programme.row(-FREE, share)), eaten, 1);
          }
        });
  }

  /** The least cost with fractions of units. */
  double bound() {
    return wholeUnits.bound();
  }

  /** The least cost with whole units. */
  double optimum() {
    return Math.rint(wholeUnits.optimum());
  }

  @Override
  public void close() {
    programme.close();
  }
}
