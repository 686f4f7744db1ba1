package sallet.app.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sallet.app.file.HouseholdFile;
import sallet.app.report.feed.FeedFiles;
import sallet.app.report.feed.FeedJson;
import sallet.app.report.feed.FeedReport;
import sallet.app.report.feed.FeedText;
import sallet.app.use.MixFeed;
import sallet.feed.FeedFault;
import sallet.feed.UnsafeDose;
import sallet.household.Household;

/** {@code sallet feed}: what to weigh, what it makes, and what to add to a running reservoir. */
@Command(
    name = "feed",
    header = "Mix, measure and mend the nutrient solution.",
    description =
        "%nReads the feed section of a household file and prints a recipe to follow at the sink.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class FeedCommand extends HouseholdCommand {
  @Option(
      names = "--mix",
      paramLabel = "LITRES",
      description = "Volume to mix, 0.5 to 10000 L. Default: the whole reservoir.")
  private @Nullable String mix;

  @Option(
      names = "--stock",
      paramLabel = "FACTOR",
      description = "Also make concentrates so many times stronger, 2 to 400.")
  private @Nullable String stock;

  @Option(
      names = "--reading",
      paramLabel = "TEXT",
      description = "Explain what a meter shows, like \"840 ppm\".")
  private @Nullable String reading;

  @Option(
      names = "--correct",
      paramLabel = "TEXT",
      description = "Mend what was measured, like \"pH 6.9\" or \"EC 1.1 mS/cm\".")
  private @Nullable String correct;

  @Option(
      names = "--weeks",
      paramLabel = "N",
      defaultValue = "0",
      description = "Follow the running reservoir so many weeks, 1 to 26.")
  private String weeks = "";

  @Option(
      names = "--explain",
      paramLabel = "PATH",
      description = "Tell how a number of the JSON comes about, like solution.ecMsCm.")
  private @Nullable String explain;

  FeedCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  Work options(CallReader call, Optional<HouseholdFile.Good> file) {
    Optional<Double> litres =
        Optional.ofNullable(mix).map(text -> call.number("--mix", text, 0.5, 10_000));
    Optional<Integer> factor =
        Optional.ofNullable(stock).map(text -> call.whole("--stock", text, 2, 400));
    int followed = call.whole("--weeks", weeks, 0, 26);
    return good ->
        feed(
            good.household(),
            new MixFeed.Wish(
                litres,
                factor,
                Optional.ofNullable(reading),
                Optional.ofNullable(correct),
                followed,
                Optional.ofNullable(explain)));
  }

  private ExitStatus feed(Household household, MixFeed.Wish wish) {
    try {
      FeedReport report = MixFeed.of(household, wish);
      return tell(
          new Report(
              () -> FeedText.of(report), () -> FeedJson.of(report), () -> FeedFiles.of(report)));
    } catch (FeedFault e) {
      return refuse(ExitStatus.WRONG_INPUT, e.sentences());
    } catch (UnsafeDose e) {
      return refuse(
          ExitStatus.NO_ANSWER, List.of(Optional.ofNullable(e.getMessage()).orElse("Refused")));
    }
  }
}
