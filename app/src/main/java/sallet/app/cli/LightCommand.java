package sallet.app.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.report.light.LightFiles;
import sallet.app.report.light.LightJson;
import sallet.app.report.light.LightReport;
import sallet.app.report.light.LightText;
import sallet.app.use.ShowLight;
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
final class LightCommand extends HouseholdCommand {
  private static final Pattern QUESTION = Pattern.compile("(.+)@(\\d{1,2})");

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

  LightCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    LightTarget wanted =
        new LightTarget(
            call.number("--target", target, 1, 40), call.number("--longest-day", longest, 8, 24));
    Optional<LocalDate> given = Optional.ofNullable(date).flatMap(d -> call.date("--date", d));
    Optional<ShowLight.Question> question =
        file.flatMap(
            good -> Optional.ofNullable(explain).flatMap(q -> question(call, q, good.household())));
    return good -> {
      LocalDate day = given.orElseGet(() -> today(good.household(), "--date"));
      LightReport light = ShowLight.of(good.household(), day, wanted, question);
      return tell(
          new Report(
              () -> text(light, question), () -> LightJson.of(light), () -> LightFiles.of(light)));
    };
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
