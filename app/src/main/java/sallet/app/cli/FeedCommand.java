package sallet.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
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
import sallet.app.report.FeedJson;
import sallet.app.report.FeedPage;
import sallet.app.report.FeedText;
import sallet.app.use.MixFeed;
import sallet.crop.Catalogue;
import sallet.feed.FeedFault;
import sallet.feed.UnsafeDose;
import sallet.feed.home.FeedSheet;

/** {@code sallet feed}: what to weigh, what it makes, and what to add to a running reservoir. */
@Command(
    name = "feed",
    header = "Mix, measure and mend the nutrient solution.",
    description =
        "%nReads the feed section of a household file and prints a recipe to follow at the sink.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class FeedCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "The household file (YAML).")
  private String file = "";

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

  @Option(names = "--json", description = "Print JSON instead of text, faults too.")
  private boolean json;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Also write a page to print and JSON into this folder.")
  private @Nullable String out;

  FeedCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Answer answer = new Answer(terminal, json);
    CallReader call = new CallReader();
    Optional<Double> litres =
        Optional.ofNullable(mix).map(text -> call.number("--mix", text, 0.5, 10_000));
    Optional<Integer> factor =
        Optional.ofNullable(stock).map(text -> call.whole("--stock", text, 2, 400));
    List<Fault> faults = new ArrayList<>(call.faults());
    HouseholdFile read = read();
    if (read instanceof HouseholdFile.Faulty faulty) {
      faults.addAll(faulty.faults());
    }
    if (!faults.isEmpty() || !(read instanceof HouseholdFile.Good good)) {
      return answer.refuse(ExitStatus.WRONG_INPUT, file, faults).code();
    }
    MixFeed.Wish wish =
        new MixFeed.Wish(
            litres, factor, Optional.ofNullable(reading), Optional.ofNullable(correct));
    try {
      return tell(MixFeed.of(good.household(), wish), answer).code();
    } catch (FeedFault e) {
      List<Fault> wrong = e.sentences().stream().map(s -> new Fault("", 0, s)).toList();
      return answer.refuse(ExitStatus.WRONG_INPUT, "", wrong).code();
    } catch (UnsafeDose e) {
      String why = Optional.ofNullable(e.getMessage()).orElse("Refused");
      return answer.refuse(ExitStatus.NO_ANSWER, "", List.of(new Fault("", 0, why))).code();
    }
  }

  private HouseholdFile read() {
    try {
      return new HouseholdReader(Catalogue.builtIn()).read(Path.of(file));
    } catch (InvalidPathException e) {
      return new HouseholdFile.Faulty(
          List.of(new Fault("", 0, "this is not a file name; check it for odd signs")));
    }
  }

  private ExitStatus tell(FeedSheet sheet, Answer answer) {
    if (out != null) {
      try {
        Path folder = Files.createDirectories(Path.of(out));
        Files.writeString(folder.resolve("feed.html"), FeedPage.of(sheet));
        Files.writeString(folder.resolve("feed.json"), FeedJson.of(sheet));
        terminal.err().println("Wrote the page and JSON to " + out);
      } catch (IOException | InvalidPathException e) {
        String sentence = "\"" + out + "\" cannot be written into; check its rights and free space";
        return answer.refuse(ExitStatus.WRONG_INPUT, "", List.of(new Fault("--out", 0, sentence)));
      }
    }
    terminal.out().print(json ? FeedJson.of(sheet) : FeedText.of(sheet));
    terminal.out().flush();
    return ExitStatus.DONE;
  }
}
