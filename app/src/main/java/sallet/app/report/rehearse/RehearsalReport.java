package sallet.app.report.rehearse;

import java.time.LocalDate;
import java.util.List;
import sallet.household.Household;
import sallet.plan.rehearse.Hidden;
import sallet.plan.rehearse.Result;

/**
 * Habits played through the same seasons.
 *
 * @param household the household
 * @param from first day of a season
 * @param weeks weeks of a season
 * @param startUp first weeks that are not counted
 * @param seasons seasons asked for; a habit has fewer when it was interrupted
 * @param seed which seasons
 * @param hidden what the planner did not know of them
 * @param results one for each habit with a season played to its end
 */
public record RehearsalReport(
    Household household,
    LocalDate from,
    int weeks,
    int startUp,
    int seasons,
    long seed,
    Hidden hidden,
    List<Result> results) {
  public RehearsalReport {
    results = List.copyOf(results);
  }

  int kinds() {
    return household.eaters().kinds();
  }
}
