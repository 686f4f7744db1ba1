package sallet.app.cli;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.report.BenchLight;
import sallet.app.report.PlanAnswer;
import sallet.app.report.PlanFiles;
import sallet.app.report.PlanJson;
import sallet.app.report.PlanText;
import sallet.app.use.MakePlan;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.light.RoomLight;
import sallet.plan.LastPlan;
import sallet.plan.NoPlan;
import sallet.plan.SowingPlan;
import sallet.plan.linear.LinearSolver;

/** {@code sallet plan}: what to sow, move on and pick, week by week. */
@Command(
    name = "plan",
    header = "Plan what to sow, move on and pick so that every bowl is full.",
    description =
        "%nReads a household file and prints the tasks and the bowls of the coming weeks.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class PlanCommand extends HouseholdCommand {
  @Mixin private GoingOnOptions goingOn = new GoingOnOptions();

  @Option(
      names = "--weeks",
      paramLabel = "N",
      defaultValue = "26",
      description = "Number of bowls, 1 to 52. Default: ${DEFAULT-VALUE}.")
  private String weeks = "";

  @Option(
      names = "--margin",
      paramLabel = "X",
      description =
          "Plan for X times the demand, 0.5 to 2. Default: 1.15; with a journal 1.05 to 1.3, more"
              + " where picked plants regrow below forecast.")
  private @Nullable String margin;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "8",
      description = "Time to think, 1 to 3600 s. Default: ${DEFAULT-VALUE}.")
  private String seconds = "";

  @Option(
      names = "--what-if",
      description =
          "Also ask what limits the bowl: the question again with one more pot, cell or nursery"
              + " place, more light, one person more, one crop less.")
  private boolean whatIf;

  @Option(
      names = "--solver",
      paramLabel = "NAME",
      defaultValue = "native",
      description =
          "Who solves the linear programmes: native (fast) or java (slower, nothing native is"
              + " loaded). Default: ${DEFAULT-VALUE}.")
  private String solver = "";

  PlanCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    int bowls = call.whole("--weeks", weeks, 1, 52);
    Optional<Double> factor =
        Optional.ofNullable(margin).map(m -> call.number("--margin", m, 0.5, 2));
    double time = call.number("--seconds", seconds, 1, 3600);
    GoingOnOptions.Read on = goingOn.read(call);
    LinearSolver linear = call.oneOf("--solver", solver, LinearSolver.class);
    return good -> {
      LocalDate from = on.today().orElseGet(() -> today(good.household(), "--today"));
      MakePlan.Wish wish = new MakePlan.Wish(from, bowls, factor, time, on.dives(), linear, whatIf);
      Function<Optional<MakePlan.Stock>, ExitStatus> plan =
          stock -> plan(good, wish, stock, on.last());
      return on.journal().isEmpty()
          ? plan.apply(Optional.empty())
          : withStock(on.journal().get(), good, from, stock -> plan.apply(Optional.of(stock)));
    };
  }

  private ExitStatus plan(
      HouseholdFile.Good file,
      MakePlan.Wish wish,
      Optional<MakePlan.Stock> stock,
      Optional<LastPlan> last) {
    Household household = file.household();
    Catalogue catalogue = file.catalogue();
    try (Interrupt interrupt = new Interrupt()) {
      try {
        PlanAnswer answer =
            MakePlan.of(
                household,
                catalogue,
                wish,
                stock,
                last,
                step -> progress(step + " ..."),
                interrupt::asked);
        return interrupt.ended(
            tell(
                new Report(
                    () -> PlanText.of(answer, household, catalogue),
                    () -> PlanJson.of(answer, household, catalogue),
                    () ->
                        PlanFiles.of(
                            answer, household, catalogue, benchLight(answer.plan(), household)))));
      } catch (NoPlan e) {
        String why = Optional.ofNullable(e.getMessage()).orElse("there is no plan");
        return interrupt.ended(refuse(ExitStatus.NO_ANSWER, List.of(why)));
      }
    }
  }

  private static BenchLight benchLight(SowingPlan plan, Household household) {
    LocalDate last = plan.weeks().get(plan.weeks().size() - 1).bowlDay();
    int days = (int) ChronoUnit.DAYS.between(plan.from(), last) + 1;
    return BenchLight.ofPots(household, RoomLight.atPots(household, plan.from(), days));
  }
}
