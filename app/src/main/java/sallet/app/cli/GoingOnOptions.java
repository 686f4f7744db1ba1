package sallet.app.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import sallet.app.file.PlanReader;
import sallet.plan.LastPlan;

/** Options of commands that go on with a plan from what stands. */
final class GoingOnOptions {
  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "Today, the first day of the plan, like 2026-11-28. Default: the clock's date.")
  private @Nullable String today;

  @Option(
      names = "--journal",
      paramLabel = "FILE.csv",
      description =
          "Plan from what stands by this journal, and with what its rows and readings teach;"
              + " docs/journal.md lists the columns.")
  private @Nullable String journal;

  @Option(
      names = "--last-plan",
      paramLabel = "FILE.json",
      description =
          "The last plan as printed by plan --json: little of what it promised for the coming two"
              + " weeks is changed, and plan says what and why.")
  private @Nullable String lastPlan;

  @Option(
      names = "--effort",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "Search N times instead of by the clock, 1 to 10000: the same file and day then give the"
              + " same plan.")
  private String effort = "";

  /**
   * The options as read.
   *
   * @param today empty for the clock's date
   * @param journal name of its file
   * @param last the last plan
   * @param dives searches asked for; 0 to search by the clock
   */
  record Read(
      Optional<LocalDate> today, Optional<String> journal, Optional<LastPlan> last, int dives) {}

  Read read(CallReader call) {
    return new Read(
        Optional.ofNullable(today).flatMap(t -> call.date("--today", t)),
        Optional.ofNullable(journal),
        Optional.ofNullable(lastPlan).flatMap(name -> lastPlan(call, name)),
        call.whole("--effort", effort, 0, 10_000));
  }

  /** Whether a last plan is named, readable or not. */
  boolean namesLastPlan() {
    return lastPlan != null;
  }

  private static Optional<LastPlan> lastPlan(CallReader call, String name) {
    try {
      return Optional.of(PlanReader.read(name));
    } catch (PlanReader.Unreadable e) {
      call.fault("--last-plan", "\"" + name + "\": " + e.getMessage());
      return Optional.empty();
    }
  }
}
