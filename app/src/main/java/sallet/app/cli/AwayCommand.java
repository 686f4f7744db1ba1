package sallet.app.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.report.water.AwayFiles;
import sallet.app.report.water.AwayJson;
import sallet.app.report.water.AwayReport;
import sallet.app.report.water.AwayText;
import sallet.app.use.TellWater;
import sallet.household.Absence;

/** {@code sallet away}: whether the bench may be left alone, and what makes it so. */
@Command(
    name = "away",
    header = "Tell whether the water lasts while you are away, and what to do before.",
    description =
        "%nWith --journal what stands and what your readings teach; without, the bench is taken to"
            + " stand as its sowing plan has it, begun some weeks before.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class AwayCommand extends BenchCommand {
  @Option(
      names = "--from",
      paramLabel = "DATE",
      required = true,
      description = "First day away, like 2027-07-03.")
  private @Nullable String from;

  @Option(
      names = "--to",
      paramLabel = "DATE",
      required = true,
      description = "Last day away, like 2027-07-14.")
  private @Nullable String to;

  @Option(
      names = "--explain",
      paramLabel = "PATH",
      description = "Tell how a number of the JSON comes about, like asItStands.lastsProbability.")
  private @Nullable String explain;

  AwayCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    Optional<LocalDate> first = Optional.ofNullable(from).flatMap(t -> call.date("--from", t));
    Optional<LocalDate> last = Optional.ofNullable(to).flatMap(t -> call.date("--to", t));
    StandingOptions.Read read = standing(call);
    return good ->
        bench(
            good,
            read,
            wish ->
                away(
                    good,
                    wish,
                    new Absence(
                        first.orElseThrow(),
                        last.orElseThrow(),
                        good.household().eaters().people())));
  }

  private ExitStatus away(HouseholdFile.Good file, TellWater.Wish wish, Absence absence) {
    try (Interrupt interrupt = new Interrupt()) {
      AwayReport report =
          TellWater.away(
              file.household(),
              file.catalogue(),
              wish,
              absence,
              Optional.ofNullable(explain),
              step -> progress(step + " ..."),
              interrupt::asked);
      return tell(
          new Report(
              () -> AwayText.of(report), () -> AwayJson.of(report), () -> AwayFiles.of(report)));
    }
  }
}
