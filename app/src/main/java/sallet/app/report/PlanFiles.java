package sallet.app.report;

import java.util.LinkedHashMap;
import java.util.Map;
import sallet.crop.Catalogue;
import sallet.household.Household;

/** The files of a plan: page, calendar, JSON and task table. */
public final class PlanFiles {
  private PlanFiles() {}

  /**
   * Contents of {@code plan.html}, {@code plan.ics}, {@code plan.json} and {@code tasks.csv}.
   *
   * @param light light of each pot, for the bench map
   */
  public static Map<String, String> of(
      PlanAnswer answer, Household household, Catalogue catalogue, BenchLight light) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("plan.html", PlanPage.of(answer, household, catalogue, light));
    files.put("plan.ics", PlanCalendar.of(answer.plan(), household));
    files.put("plan.json", PlanJson.of(answer, household, catalogue));
    files.put("tasks.csv", TaskTable.csv(Tasks.of(answer.plan())));
    return files;
  }
}
