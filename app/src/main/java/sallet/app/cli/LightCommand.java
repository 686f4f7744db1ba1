package sallet.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sallet.app.file.Fault;
import sallet.app.file.HouseholdFile;
import sallet.app.file.HouseholdReader;
import sallet.app.report.light.LightFiles;
import sallet.app.report.light.LightJson;
import sallet.app.report.light.LightReport;
import sallet.app.report.light.LightText;
import sallet.app.use.ShowLight;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.light.LightTarget;

/** {@code sallet light}: how much light each pot gets and what the lamps should do. */
@Command(
    name = "light",
    header = "Show the light of every pot through the year or a day, and what the lamps should do.",
    description = "%nReads a household file and prints the year's light, or one day's with --date.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class LightCommand implements Callable<Integer> {
  private static final Pattern QUESTION = Pattern.compile("(.+)@(\\d{1,2})");

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "The household file (YAML).")
  private String file = "";

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "Show this day hour by hour, like 2027-01-15.")
  private @Nullable String date;

  @Option(
      names = "--year",
      description = "Show the year, from the month of --date on. The default without --date.")
  private boolean wholeYear;

  @Option(
      names = "--target",
      paramLabel = "N",
      defaultValue = "14",
      description = "Light wanted, 1 to 40 mol/m² a day. Default: ${DEFAULT-VALUE}.")
  private String target = "";

  @Option(
      names = "--longest-day",
      paramLabel = "H",
      defaultValue = "18",
      description = "Longest day the crops bear, 8 to 24 h. Default: ${DEFAULT-VALUE}.")
  private String longest = "";

  @Option(
      names = "--explain",
      paramLabel = "POT@HOUR",
      description = "Tell how a pot's light comes about in an hour, like A1@12.")
  private @Nullable String explain;

  @Option(names = "--json", description = "Print JSON instead of text, faults too.")
  private boolean json;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Also write a page, JSON and a table of days into this folder.")
  private @Nullable String out;

  LightCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Answer answer = new Answer(terminal, json);
    CallReader call = new CallReader();
    LightTarget wanted =
        new LightTarget(
            call.number("--target", target, 1, 40), call.number("--longest-day", longest, 8, 24));
    Optional<LocalDate> given = Optional.ofNullable(date).flatMap(d -> call.date("--date", d));
    Optional<Path> folder = Optional.ofNullable(out).flatMap(dir -> folder(call, dir));
    HouseholdFile read = read(new HouseholdReader(Catalogue.builtIn()));
    Optional<ShowLight.Question> question = Optional.empty();
    if (read instanceof HouseholdFile.Good good) {
      question =
          Optional.ofNullable(explain).flatMap(text -> question(call, text, good.household()));
    }
    List<Fault> faults = new ArrayList<>(call.faults());
    if (read instanceof HouseholdFile.Faulty faulty) {
      faults.addAll(faulty.faults());
    }
    if (!faults.isEmpty() || !(read instanceof HouseholdFile.Good good)) {
      return answer.refuse(ExitStatus.WRONG_INPUT, file, faults).code();
    }
    LocalDate day = given.orElseGet(() -> clockDate(good.household()));
    LightReport light = ShowLight.of(good.household(), day, wanted, question);
    return tell(light, question, folder, answer).code();
  }

  private HouseholdFile read(HouseholdReader reader) {
    try {
      return reader.read(Path.of(file));
    } catch (InvalidPathException e) {
      return new HouseholdFile.Faulty(
          List.of(new Fault("", 0, "this is not a file name; check it for odd signs")));
    }
  }

  private static Optional<ShowLight.Question> question(
      CallReader call, String text, Household household) {
    Matcher matcher = QUESTION.matcher(text);
    List<Pot> pots = household.bench().pots();
    if (matcher.matches()) {
      int hour = Integer.parseInt(matcher.group(2));
      Optional<Integer> pot =
          IntStream.range(0, pots.size())
              .filter(i -> pots.get(i).name().equalsIgnoreCase(matcher.group(1)))
              .boxed()
              .findFirst();
      if (pot.isPresent() && hour <= 23) {
        return Optional.of(new ShowLight.Question(pot.get(), hour));
      }
    }
    call.fault(
        "--explain",
        "\""
            + text
            + "\" is no pot and hour; write one like "
            + pots.get(0).name()
            + "@12, hours 0 to 23");
    return Optional.empty();
  }

  private LocalDate clockDate(Household household) {
    LocalDate today = LocalDate.now(terminal.clock().withZone(household.place().timeZone()));
    terminal.err().println("Today is " + today + " by the clock; --date sets another day.");
    return today;
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

  private ExitStatus tell(
      LightReport light,
      Optional<ShowLight.Question> question,
      Optional<Path> folder,
      Answer answer) {
    if (folder.isPresent()) {
      try {
        LightFiles.write(folder.get(), light);
        terminal.err().println("Wrote the page, JSON and table of days to " + out);
      } catch (IOException e) {
        String sentence = "\"" + out + "\" cannot be written into; check its rights and free space";
        return answer.refuse(ExitStatus.WRONG_INPUT, "", List.of(new Fault("--out", 0, sentence)));
      }
    }
    terminal.out().print(json ? LightJson.of(light) : text(light, question));
    terminal.out().flush();
    return ExitStatus.DONE;
  }

  private String text(LightReport light, Optional<ShowLight.Question> question) {
    StringBuilder text = new StringBuilder();
    if (question.isPresent() && light.explained().isPresent()) {
      Pot pot = light.year().household().bench().pots().get(question.get().pot());
      text.append(
          LightText.of(light.explained().get(), pot.name(), light.date(), question.get().hour()));
      return text.toString();
    }
    if (date != null) {
      text.append(LightText.ofDay(light));
    }
    if (wholeYear || date == null) {
      text.append(date == null ? "" : "\n").append(LightText.ofYear(light.year()));
    }
    return text.toString();
  }
}
