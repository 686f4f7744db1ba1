package sallet.app.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.file.UnknownCrop;
import sallet.app.report.crop.CropFiles;
import sallet.app.report.crop.CropJson;
import sallet.app.report.crop.CropReport;
import sallet.app.report.crop.CropText;
import sallet.app.use.ForecastCrops;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.household.Household;
import sallet.household.Pot;

/** {@code sallet crop}: what grows well in a room, and what becomes of one sowing. */
@Command(
    name = "crop",
    header = "Tell what grows well in the room, and what becomes of a crop sown on a day.",
    description =
        "%nWithout --crop it compares all crops; with it, it tells one in full: days, grams, risks.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class CropCommand extends HouseholdCommand {
  @Option(
      names = "--crop",
      paramLabel = "NAME",
      description = "The crop to tell in full, by its name in docs/crops.md or your file.")
  private @Nullable String crop;

  @Option(
      names = "--sow",
      paramLabel = "DATE",
      description = "Day of sowing, like 2026-11-28. Default: the clock's date.")
  private @Nullable String sow;

  @Option(
      names = "--place",
      paramLabel = "POT",
      description = "The pot to reckon for. Default: the pot of middle light.")
  private @Nullable String place;

  CropCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    Optional<LocalDate> given = Optional.ofNullable(sow).flatMap(t -> call.date("--sow", t));
    Optional<Crop> one =
        file.flatMap(
            good -> Optional.ofNullable(crop).flatMap(n -> crop(call, good.catalogue(), n)));
    Optional<Integer> pot =
        file.flatMap(
            good -> Optional.ofNullable(place).flatMap(n -> pot(call, good.household(), n)));
    return good -> {
      LocalDate sown = given.orElseGet(() -> today(good.household(), "--sow"));
      CropReport report = ForecastCrops.of(good.household(), good.catalogue(), sown, one, pot);
      return tell(
          new Report(
              () -> CropText.of(report), () -> CropJson.of(report), () -> CropFiles.of(report)));
    };
  }

  private static Optional<Crop> crop(CallReader call, Catalogue catalogue, String name) {
    Optional<Crop> found = catalogue.find(name);
    if (found.isEmpty()) {
      call.fault("--crop", UnknownCrop.sentence(catalogue, name));
    }
    return found;
  }

  private static Optional<Integer> pot(CallReader call, Household household, String name) {
    List<String> names = household.bench().pots().stream().map(Pot::name).toList();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equalsIgnoreCase(name)) {
        return Optional.of(i);
      }
    }
    call.fault(
        "--place",
        "\"%s\" is no pot of your bench; the first is %s, the last %s"
            .formatted(name, names.get(0), names.get(names.size() - 1)));
    return Optional.empty();
  }
}
