package sallet.app.cli;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.report.BenchLight;
import sallet.app.report.PlanFiles;
import sallet.app.report.PlanJson;
import sallet.app.report.PlanText;
import sallet.app.use.MakePlan;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.light.RoomLight;
import sallet.plan.NoPlan;
import sallet.plan.SowingPlan;

/** {@code sallet plan}: what to sow, move on and pick, week by week. */
@Command(
    name = "plan",
    header = "Plan what to sow, move on and pick so that every bowl is full.",
    description =
        "%nReads a household file and prints the tasks and the bowls of the coming weeks.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class PlanCommand extends HouseholdCommand {
  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "First day of the plan, like 2026-11-28. Default: the clock's date.")
  private @Nullable String today;

  @Option(
      names = "--weeks",
      paramLabel = "N",
      defaultValue = "26",
      description = "Number of bowls, 1 to 52. Default: ${DEFAULT-VALUE}.")
  private String weeks = "";

  @Option(
      names = "--margin",
      paramLabel = "X",
      defaultValue = "1.15",
      description = "Plan for X times the demand, 0.5 to 2. Default: ${DEFAULT-VALUE}.")
  private String margin = "";

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "8",
      description = "Time to think, 1 to 3600 s. Default: ${DEFAULT-VALUE}.")
  private String seconds = "";

  @Option(
      names = "--effort",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "Search N times instead of by the clock, 1 to 10000: the same file and day then give the"
              + " same plan.")
  private String effort = "";

  PlanCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    int bowls = call.whole("--weeks", weeks, 1, 52);
    double factor = call.number("--margin", margin, 0.5, 2);
    double time = call.number("--seconds", seconds, 1, 3600);
    int dives = call.whole("--effort", effort, 0, 10_000);
    Optional<LocalDate> given = Optional.ofNullable(today).flatMap(t -> call.date("--today", t));
    return good -> {
      LocalDate from = given.orElseGet(() -> today(good.household(), "--today"));
      return plan(good, new MakePlan.Wish(from, bowls, factor, time, dives));
    };
  }

  private ExitStatus plan(HouseholdFile.Good file, MakePlan.Wish wish) {
    Household household = file.household();
    Catalogue catalogue = file.catalogue();
    try (Interrupt interrupt = new Interrupt()) {
      SowingPlan plan =
          MakePlan.of(
              household, catalogue, wish, step -> progress(step + " ..."), interrupt::asked);
      return tell(
          new Report(
              () -> PlanText.of(plan, household, catalogue),
              () -> PlanJson.of(plan, household, catalogue),
              () -> PlanFiles.of(plan, household, catalogue, benchLight(plan, household))));
    } catch (NoPlan e) {
      String why = Optional.ofNullable(e.getMessage()).orElse("there is no plan");
      return refuse(ExitStatus.NO_ANSWER, List.of(why));
    }
  }

  private static BenchLight benchLight(SowingPlan plan, Household household) {
    LocalDate last = plan.weeks().get(plan.weeks().size() - 1).bowlDay();
    int days = (int) ChronoUnit.DAYS.between(plan.from(), last) + 1;
    return BenchLight.ofPots(household, RoomLight.atPots(household, plan.from(), days));
  }
}
