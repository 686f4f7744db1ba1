package sallet.app.cli;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import sallet.app.file.HouseholdFile;
import sallet.app.report.water.WaterFiles;
import sallet.app.report.water.WaterJson;
import sallet.app.report.water.WaterText;
import sallet.app.use.TellWater;
import sallet.plan.NoPlan;
import sallet.water.WaterFault;
import sallet.water.home.WaterSheet;

/** {@code sallet water}: how to set the timer, and how long the reservoir lasts. */
@Command(
    name = "water",
    header = "Tell when to flood, how long the reservoir lasts and how to refill it.",
    description =
        "%nThe bench is taken to stand as its sowing plan has it, begun some weeks before.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class WaterCommand extends HouseholdCommand {
  @Mixin private StandingOptions standing = new StandingOptions();

  WaterCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    StandingOptions.Read read = standing.read(call);
    return good -> water(good, read.wish(() -> today(good.household(), "--today")));
  }

  private ExitStatus water(HouseholdFile.Good file, TellWater.Wish wish) {
    try (Interrupt interrupt = new Interrupt()) {
      WaterSheet sheet =
          TellWater.water(
              file.household(),
              file.catalogue(),
              wish,
              step -> progress(step + " ..."),
              interrupt::asked);
      return tell(
          new Report(
              () -> WaterText.of(sheet), () -> WaterJson.of(sheet), () -> WaterFiles.of(sheet)));
    } catch (WaterFault e) {
      return refuse(e);
    } catch (NoPlan e) {
      return refuse(e);
    }
  }
}
