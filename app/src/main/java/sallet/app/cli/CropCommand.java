package sallet.app.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
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
final class CropCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "The household file (YAML).")
  private String file = "";

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

  @Option(names = "--json", description = "Print JSON instead of text, faults too.")
  private boolean json;

  CropCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Answer answer = new Answer(terminal, json);
    CallReader call = new CallReader();
    Optional<LocalDate> given = Optional.ofNullable(sow).flatMap(t -> call.date("--sow", t));
    HouseholdFile read = read();
    List<Fault> faults = new ArrayList<>();
    if (!(read instanceof HouseholdFile.Good good)) {
      faults.addAll(call.faults());
      faults.addAll(((HouseholdFile.Faulty) read).faults());
      return answer.refuse(ExitStatus.WRONG_INPUT, file, faults).code();
    }
    Optional<Crop> one =
        Optional.ofNullable(crop).flatMap(name -> crop(call, good.catalogue(), name));
    Optional<Integer> pot =
        Optional.ofNullable(place).flatMap(name -> pot(call, good.household(), name));
    if (!call.faults().isEmpty()) {
      return answer.refuse(ExitStatus.WRONG_INPUT, file, call.faults()).code();
    }
    LocalDate sown = given.orElseGet(() -> clockDate(good.household()));
    CropReport report = ForecastCrops.of(good.household(), good.catalogue(), sown, one, pot);
    terminal.out().print(json ? CropJson.of(report) : CropText.of(report));
    terminal.out().flush();
    return ExitStatus.DONE.code();
  }

  private HouseholdFile read() {
    try {
      return new HouseholdReader(Catalogue.builtIn()).read(Path.of(file));
    } catch (InvalidPathException e) {
      return new HouseholdFile.Faulty(
          List.of(new Fault("", 0, "this is not a file name; check it for odd signs")));
    }
  }

  private static Optional<Crop> crop(CallReader call, Catalogue catalogue, String name) {
    Optional<Crop> found = catalogue.find(name);
    if (found.isEmpty()) {
      List<String> near = catalogue.suggestions(name);
      call.fault(
          "--crop",
          "\"%s\" is not a crop of the catalogue or your file%s"
              .formatted(name, near.isEmpty() ? "" : " (did you mean \"" + near.get(0) + "\"?)"));
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

  private LocalDate clockDate(Household household) {
    LocalDate date = LocalDate.now(terminal.clock().withZone(household.place().timeZone()));
    terminal.err().println("Today is " + date + " by the clock; --sow sets another day.");
    return date;
  }
}
