package sallet.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.file.UnknownCrop;
import sallet.app.report.crop.CropFiles;
import sallet.app.report.crop.CropJson;
import sallet.app.report.crop.CropReport;
import sallet.app.report.crop.CropReport.Asked;
import sallet.app.report.crop.CropText;
import sallet.app.use.ForecastCrops;
import sallet.crop.Catalogue;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.HarvestStyle;
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
  /** Less is not worth the walk, %. Judgement. */
  private static final int LEAST_PICK_PERCENT = 5;

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

  @Option(
      names = "--seed-age",
      paramLabel = "YEARS",
      description = "Years the crop's seed was kept, 0 to 20. Default: new seed.")
  private @Nullable String seedAge;

  @Option(
      names = "--pick",
      paramLabel = "PERCENT",
      description = "Leaf area each weekly pick takes, 5 to 40 %%. Default: 40 %%.")
  private @Nullable String pick;

  CropCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    Optional<LocalDate> given = Optional.ofNullable(sow).flatMap(t -> call.date("--sow", t));
    Optional<Asked> one = asked(call, file);
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

  private Optional<Asked> asked(CallReader call, Optional<HouseholdFile.Good> file) {
    OptionalDouble years = OptionalDouble.empty();
    if (seedAge != null) {
      years = OptionalDouble.of(call.number("--seed-age", seedAge, 0, 20));
    }
    double share = pick == null ? HarvestRule.LARGEST_PICK : share(call, pick);
    if (crop == null) {
      for (String option : lonely()) {
        call.fault(option, "goes with --crop, which names the crop");
      }
      return Optional.empty();
    }
    String name = crop;
    Optional<Crop> found = file.flatMap(good -> crop(call, good.catalogue(), name));
    if (pick != null) {
      found
          .filter(one -> one.style() != HarvestStyle.LEAF_BY_LEAF)
          .ifPresent(
              one ->
                  call.fault(
                      "--pick",
                      one.name() + " is harvested " + one.style().words() + ", not picked"));
    }
    OptionalDouble age = years;
    return found.map(one -> new Asked(one, age, share));
  }

  /** The options that say nothing without a crop. */
  private List<String> lonely() {
    List<String> given = new ArrayList<>();
    if (seedAge != null) {
      given.add("--seed-age");
    }
    if (pick != null) {
      given.add("--pick");
    }
    return given;
  }

  /** Share of a pick written as "30", "30%" or "30 %". */
  private static double share(CallReader call, String text) {
    String number = text.strip().replaceFirst("\\s*%$", "");
    if (number.matches("\\d{1,9}(\\.\\d+)?")) {
      double percent = Double.parseDouble(number);
      if (percent >= LEAST_PICK_PERCENT && percent <= 100 * HarvestRule.LARGEST_PICK) {
        return percent / 100;
      }
    }
    call.fault(
        "--pick",
        "\"%s\" is no pick a plant can bear; write the share of its leaf area, %d to %d %%"
            .formatted(text, LEAST_PICK_PERCENT, Math.round(100 * HarvestRule.LARGEST_PICK)));
    return HarvestRule.LARGEST_PICK;
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
