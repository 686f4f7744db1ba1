package sallet.app.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.file.PlanFile;
import sallet.app.report.light.LightFiles;
import sallet.app.report.light.LightJson;
import sallet.app.report.light.LightReport;
import sallet.app.report.light.LightText;
import sallet.app.use.CropLight;
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
      description =
          "Light wanted in every pot, 1 to 40 mol/m² a day. Default: what the crops you want need,"
              + " the brightest pots for the most demanding.")
  private @Nullable String target;

  @Option(
      names = "--plan",
      paramLabel = "FILE",
      description = "Aim at what a plan (as plan --json prints it) puts into each pot.")
  private @Nullable String plan;

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
    double most = call.number("--longest-day", longest, 8, 24);
    Optional<Double> same =
        Optional.ofNullable(target).map(text -> call.number("--target", text, 1, 40));
    Optional<LightTarget> wanted =
        same.map(dliMol -> LightTarget.same(dliMol, most))
            .or(() -> file.map(good -> wanted(call, good, most)));
    if (target != null && plan != null) {
      call.fault("--target", "stands beside --plan; give one of the two");
    }
    Optional<LocalDate> given = Optional.ofNullable(date).flatMap(d -> call.date("--date", d));
    Optional<ShowLight.Question> question =
        file.flatMap(
            good -> Optional.ofNullable(explain).flatMap(q -> question(call, q, good.household())));
    return good -> {
      LocalDate day = given.orElseGet(() -> today(good.household(), "--date"));
      LightReport light = ShowLight.of(good.household(), day, wanted.orElseThrow(), question);
      return tell(
          new Report(
              () -> text(light, question), () -> LightJson.of(light), () -> LightFiles.of(light)));
    };
  }

  private LightTarget wanted(CallReader call, HouseholdFile.Good good, double mostHours) {
    Household household = good.household();
    if (plan != null) {
      Consumer<String> fault = sentence -> call.fault("--plan", sentence);
      List<PlanFile.InPot> pots = PlanFile.read(plan, fault);
      return CropLight.planned(household, good.catalogue(), pots, mostHours, fault);
    }
    return CropLight.wanted(household, good.catalogue(), mostHours);
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
