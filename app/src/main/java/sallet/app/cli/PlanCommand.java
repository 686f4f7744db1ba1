package sallet.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sallet.app.file.Fault;
import sallet.app.file.HouseholdFile;
import sallet.app.file.HouseholdReader;
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
final class PlanCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "The household file (YAML).")
  private String file = "";

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

  @Option(names = "--json", description = "Print JSON instead of text, faults too.")
  private boolean json;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Also write a page, a calendar, JSON and a task table into this folder.")
  private @Nullable String out;

  PlanCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Answer answer = new Answer(terminal, json);
    CallReader call = new CallReader();
    int bowls = call.whole("--weeks", weeks, 1, 52);
    double factor = call.number("--margin", margin, 0.5, 2);
    double time = call.number("--seconds", seconds, 1, 3600);
    int dives = call.whole("--effort", effort, 0, 10_000);
    Optional<LocalDate> given = Optional.ofNullable(today).flatMap(t -> call.date("--today", t));
    Optional<Path> folder = Optional.ofNullable(out).flatMap(dir -> folder(call, dir));
    HouseholdFile read = read(new HouseholdReader(Catalogue.builtIn()));
    List<Fault> faults = new ArrayList<>(call.faults());
    if (read instanceof HouseholdFile.Faulty faulty) {
      faults.addAll(faulty.faults());
    }
    if (!faults.isEmpty() || !(read instanceof HouseholdFile.Good good)) {
      return answer.refuse(ExitStatus.WRONG_INPUT, file, faults).code();
    }
    Household household = good.household();
    Catalogue catalogue = good.catalogue();
    LocalDate from = given.orElseGet(() -> clockDate(household));
    MakePlan.Wish wish = new MakePlan.Wish(from, bowls, factor, time, dives);
    try (Interrupt interrupt = new Interrupt()) {
      SowingPlan plan =
          MakePlan.of(
              household,
              catalogue,
              wish,
              step -> terminal.err().println(step + " ..."),
              interrupt::asked);
      return tell(plan, household, catalogue, folder, answer).code();
    } catch (NoPlan e) {
      String why = Optional.ofNullable(e.getMessage()).orElse("there is no plan");
      return answer.refuse(ExitStatus.NO_ANSWER, "", List.of(new Fault("", 0, why))).code();
    }
  }

  private HouseholdFile read(HouseholdReader reader) {
    try {
      return reader.read(Path.of(file));
    } catch (InvalidPathException e) {
      return new HouseholdFile.Faulty(
          List.of(new Fault("", 0, "this is not a file name; check it for odd signs")));
    }
  }

  private LocalDate clockDate(Household household) {
    LocalDate date = LocalDate.now(terminal.clock().withZone(household.place().timeZone()));
    terminal.err().println("Today is " + date + " by the clock; --today sets another day.");
    return date;
  }

  private static Optional<Path> folder(CallReader call, String dir) {
    try {
      Path folder = Files.createDirectories(Path.of(dir));
      if (Files.isWritable(folder)) {
        return Optional.of(folder);
      }
    } catch (IOException | InvalidPathException e) {
      // Told below, like a folder that cannot be written into.
    }
    call.fault("--out", "\"" + dir + "\" is no folder that can be written into; name another");
    return Optional.empty();
  }

  private static BenchLight benchLight(SowingPlan plan, Household household) {
    LocalDate last = plan.weeks().get(plan.weeks().size() - 1).bowlDay();
    int days = (int) ChronoUnit.DAYS.between(plan.from(), last) + 1;
    return BenchLight.ofPots(household, RoomLight.atPots(household, plan.from(), days));
  }

  private ExitStatus tell(
      SowingPlan plan,
      Household household,
      Catalogue catalogue,
      Optional<Path> folder,
      Answer answer) {
    if (folder.isPresent()) {
      try {
        PlanFiles.write(folder.get(), plan, household, catalogue, benchLight(plan, household));
        terminal.err().println("Wrote the page, calendar, JSON and task table to " + out);
      } catch (IOException e) {
        String sentence = "\"" + out + "\" cannot be written into; check its rights and free space";
        return answer.refuse(ExitStatus.WRONG_INPUT, "", List.of(new Fault("--out", 0, sentence)));
      }
    }
    terminal
        .out()
        .print(
            json
                ? PlanJson.of(plan, household, catalogue)
                : PlanText.of(plan, household, catalogue));
    terminal.out().flush();
    return ExitStatus.DONE;
  }
}
