package sallet.app.report;

import java.util.LinkedHashMap;
import java.util.Map;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.SowingPlan;

/** The files of a plan: page, calendar, JSON and task table. */
public final class PlanFiles {
  private PlanFiles() {}

  /**
   * Contents of {@code plan.html}, {@code plan.ics}, {@code plan.json} and {@code tasks.csv}.
   *
   * @param light light of each pot, for the bench map
   */
  public static Map<String, String> of(
      SowingPlan plan, Household household, Catalogue catalogue, BenchLight light) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("plan.html", PlanPage.of(plan, household, catalogue, light));
    files.put("plan.ics", PlanCalendar.of(plan, household));
    files.put("plan.json", PlanJson.of(plan, household, catalogue));
    files.put("tasks.csv", TaskTable.csv(Tasks.of(plan)));
    return files;
  }
}
