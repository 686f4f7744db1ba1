package sallet.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.report.rehearse.RehearsalFiles;
import sallet.app.report.rehearse.RehearsalJson;
import sallet.app.report.rehearse.RehearsalReport;
import sallet.app.report.rehearse.RehearsalText;
import sallet.app.use.RehearseHabits;
import sallet.plan.NoPlan;
import sallet.plan.linear.LinearSolver;
import sallet.plan.rehearse.Habit;
import sallet.plan.rehearse.Hidden;

/** {@code sallet rehearse}: how habits fare through seasons good and bad. */
@Command(
    name = "rehearse",
    header = "Play habits of sowing and picking through many seasons, good and bad.",
    description =
        "%nEvery habit meets the same seasons. Ctrl-C ends early and tells of those played.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class RehearseCommand extends HouseholdCommand {
  private static final List<Habit> HABITS =
      List.of(
          new Habit.EveryWeeks(2, 1),
          new Habit.EveryWeeks(1, 1),
          new Habit.AllAtOnce(1),
          new Habit.PlanWeekly());

  @Option(
      names = "--seasons",
      paramLabel = "N",
      defaultValue = "20",
      description = "Seasons for each habit, 1 to 1000. Default: ${DEFAULT-VALUE}.")
  private String seasons = "";

  @Option(
      names = "--habit",
      paramLabel = "NAME",
      split = ",",
      description =
          "every-14-days, every-7-days, all-at-once or plan; may be given several times."
              + " Default: all.")
  private List<String> names = new ArrayList<>();

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "Which seasons, 1 to 999999999. Default: ${DEFAULT-VALUE}.")
  private String seed = "";

  @Option(
      names = "--luck",
      paramLabel = "NAME",
      defaultValue = "usual",
      description = "usual, or hard: crops and plants differ more, twice the deaths.")
  private String luck = "";

  @Option(
      names = "--regrowth",
      paramLabel = "X",
      defaultValue = "0.95",
      description =
          "Growth that each pick leaves a plant, unknown to the planner, 0.5 to 1."
              + " Default: ${DEFAULT-VALUE}.")
  private String regrowth = "";

  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "First day of a season, like 2026-11-28. Default: the clock's date.")
  private @Nullable String today;

  RehearseCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    int count = call.whole("--seasons", seasons, 1, 1000);
    long which = call.whole("--seed", seed, 1, 999_999_999);
    Hidden hidden = hidden(call).withRegrowth(call.number("--regrowth", regrowth, 0.5, 1));
    List<Habit> habits = habits(call);
    Optional<LocalDate> given = Optional.ofNullable(today).flatMap(t -> call.date("--today", t));
    return good -> {
      LocalDate from = given.orElseGet(() -> today(good.household(), "--today"));
      return rehearse(
          good, new RehearseHabits.Wish(from, habits, count, which, hidden, LinearSolver.NATIVE));
    };
  }

  private Hidden hidden(CallReader call) {
    return switch (luck) {
      case "usual" -> Hidden.USUAL;
      case "hard" -> Hidden.HARD;
      default -> {
        call.fault("--luck", "\"" + luck + "\" is no luck we know; choose usual or hard");
        yield Hidden.USUAL;
      }
    };
  }

  private List<Habit> habits(CallReader call) {
    List<String> known = HABITS.stream().map(Habit::word).toList();
    for (String name : names) {
      if (!known.contains(name)) {
        call.fault(
            "--habit", "\"%s\" is no habit; choose %s".formatted(name, String.join(", ", known)));
      }
    }
    return names.isEmpty()
        ? HABITS
        : HABITS.stream().filter(habit -> names.contains(habit.word())).toList();
  }

  private ExitStatus rehearse(HouseholdFile.Good file, RehearseHabits.Wish wish) {
    try (Interrupt interrupt = new Interrupt()) {
      try {
        RehearsalReport report =
            RehearseHabits.of(
                file.household(), file.catalogue(), wish, this::progress, interrupt::asked);
        if (report.results().isEmpty()) {
          return interrupt.ended(
              refuse(ExitStatus.NO_ANSWER, List.of("No season was played to its end.")));
        }
        return interrupt.ended(
            tell(
                new Report(
                    () -> RehearsalText.of(report),
                    () -> RehearsalJson.of(report),
                    () -> RehearsalFiles.of(report))));
      } catch (NoPlan e) {
        String why = Optional.ofNullable(e.getMessage()).orElse("there is no plan");
        return interrupt.ended(refuse(ExitStatus.NO_ANSWER, List.of(why)));
      }
    }
  }
}
