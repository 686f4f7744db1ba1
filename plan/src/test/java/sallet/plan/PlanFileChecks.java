package sallet.plan;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Checks;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.cases.UnreadableCase;
import sallet.plan.linear.LinearSolver;

/**
 * Small sowing plans with optima that four solvers proved and the bound with fractions of units.
 */
public final class PlanFileChecks implements Checks {
  private static final List<String> FILES = List.of("01", "02", "03", "05", "06", "08", "09", "11");

  @Override
  public Map<String, RowCheck> byFile() {
    Map<String, RowCheck> checks = new TreeMap<>();
    FILES.forEach(n -> checks.put("plan/plan" + n + ".json", PlanFileChecks::check));
    return checks;
  }

  private static List<Outcome> check(CaseRow row, CaseFolder folder) {
    JsonNode file = read(row);
    JsonNode expected = file.path("expected");
    double tolerance = expected.path("tolerance").asDouble();
    List<Outcome> outcomes = new ArrayList<>();
    for (LinearSolver solver : LinearSolver.values()) {
      String by = ", " + solver.name().toLowerCase(Locale.ROOT) + " solver";
      try (FixedPatterns plan = new FixedPatterns(file, solver)) {
        outcomes.add(
            Outcome.relative(
                "bound" + by, expected.path("lpBound").asDouble(), plan.bound(), tolerance));
        outcomes.add(
            Outcome.relative(
                "optimum" + by, expected.path("objective").asDouble(), plan.optimum(), tolerance));
      }
    }
    return outcomes;
  }

  private static JsonNode read(CaseRow row) {
    try {
      JsonNode file = new ObjectMapper().readTree(row.text("text"));
      for (String field : List.of("weights", "patterns", "servings", "resources", "expected")) {
        if (!file.has(field)) {
          throw new UnreadableCase(row.file() + " has no " + field + ".");
        }
      }
      return file;
    } catch (JsonProcessingException e) {
      throw new UnreadableCase(row.file() + " is not JSON (" + e.getOriginalMessage() + ").");
    }
  }
}
