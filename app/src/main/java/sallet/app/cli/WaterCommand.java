package sallet.app.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.report.water.WaterFiles;
import sallet.app.report.water.WaterJson;
import sallet.app.report.water.WaterReport;
import sallet.app.report.water.WaterText;
import sallet.app.use.TellWater;

/** {@code sallet water}: how to set the timer, and how long the reservoir lasts. */
@Command(
    name = "water",
    header = "Tell when to flood, how long the reservoir lasts and how to refill it.",
    description =
        "%nWith --journal what stands and what your readings teach; without, the bench is taken to"
            + " stand as its sowing plan has it, begun some weeks before.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class WaterCommand extends BenchCommand {
  @Option(
      names = "--explain",
      paramLabel = "PATH",
      description = "Tell how a number of the JSON comes about, like pots[0].useMlPerDay.")
  private @Nullable String explain;

  WaterCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    StandingOptions.Read read = standing(call);
    return good -> bench(good, read, wish -> water(good, wish));
  }

  private ExitStatus water(HouseholdFile.Good file, TellWater.Wish wish) {
    try (Interrupt interrupt = new Interrupt()) {
      WaterReport report =
          TellWater.water(
              file.household(),
              file.catalogue(),
              wish,
              Optional.ofNullable(explain),
              step -> progress(step + " ..."),
              interrupt::asked);
      return tell(
          new Report(
              () -> WaterText.of(report), () -> WaterJson.of(report), () -> WaterFiles.of(report)));
    }
  }
}
