package sallet.app.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.plan.SowingPlan;

/** The files of a plan: page, calendar, JSON and task table. */
public final class PlanFiles {
  private PlanFiles() {}

  /** Writes the files with the bench map drawn from the mean light of the pot groups. */
  public static void write(Path dir, SowingPlan plan, Household household, Catalogue catalogue)
      throws IOException {
    write(dir, plan, household, catalogue, BenchLight.ofGroups(plan));
  }

  /**
   * Writes {@code plan.html}, {@code plan.ics}, {@code plan.json} and {@code tasks.csv}, in UTF-8.
   * Files of these names are replaced.
   *
   * @param dir folder, made when it is missing
   * @param light light of each pot, for the bench map
   */
  public static void write(
      Path dir, SowingPlan plan, Household household, Catalogue catalogue, BenchLight light)
      throws IOException {
    Files.createDirectories(dir);
    Files.writeString(dir.resolve("plan.html"), PlanPage.of(plan, household, catalogue, light));
    Files.writeString(dir.resolve("plan.ics"), PlanCalendar.of(plan, household));
    Files.writeString(dir.resolve("plan.json"), PlanJson.of(plan, household, catalogue));
    Files.writeString(dir.resolve("tasks.csv"), TaskTable.csv(Tasks.of(plan)));
  }
}
