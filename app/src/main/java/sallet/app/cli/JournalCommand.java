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
import sallet.app.file.JournalCsv;
import sallet.app.file.JournalFile;
import sallet.app.report.journal.JournalJson;
import sallet.app.report.journal.JournalReport;
import sallet.app.report.journal.JournalText;
import sallet.app.use.TellStanding;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.learn.Remark;

/** {@code sallet journal}: what stands now, and what the journal has taught. */
@Command(
    name = "journal",
    header = "Tell what stands now and what your own rows have taught.",
    description = "%nReads a household file and its journal; docs/journal.md lists the columns.",
    sortOptions = false,
    mixinStandardHelpOptions = true)
final class JournalCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "The household file (YAML).")
  private String file = "";

  @Option(
      names = "--journal",
      paramLabel = "FILE.csv",
      required = true,
      description = "The journal (comma-separated values).")
  private String journal = "";

  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "The day to tell of, like 2026-11-28. Default: the clock's date.")
  private @Nullable String today;

  @Option(names = "--json", description = "Print JSON instead of text, faults too.")
  private boolean json;

  JournalCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Answer answer = new Answer(terminal, json);
    CallReader call = new CallReader();
    Optional<LocalDate> given = Optional.ofNullable(today).flatMap(t -> call.date("--today", t));
    HouseholdFile read = read();
    List<Fault> faults = new ArrayList<>(call.faults());
    if (read instanceof HouseholdFile.Faulty faulty) {
      faults.addAll(faulty.faults());
    }
    if (!faults.isEmpty() || !(read instanceof HouseholdFile.Good good)) {
      return answer.refuse(ExitStatus.WRONG_INPUT, file, faults).code();
    }
    JournalFile rows = JournalCsv.read(journal, good.household(), good.catalogue());
    if (!(rows instanceof JournalFile.Good known)) {
      return answer
          .refuse(ExitStatus.WRONG_INPUT, journal, ((JournalFile.Faulty) rows).faults())
          .code();
    }
    LocalDate day = given.orElseGet(() -> clockDate(good.household()));
    return tell(good, known, day, answer).code();
  }

  private HouseholdFile read() {
    try {
      return new HouseholdReader(Catalogue.builtIn()).read(Path.of(file));
    } catch (InvalidPathException e) {
      return new HouseholdFile.Faulty(
          List.of(new Fault("", 0, "this is not a file name; check it for odd signs")));
    }
  }

  private ExitStatus tell(
      HouseholdFile.Good house, JournalFile.Good rows, LocalDate day, Answer answer) {
    List<Remark> passedOver =
        rows.warnings().stream()
            .map(fault -> new Remark(fault.line(), false, fault.sentence()))
            .toList();
    JournalReport report =
        TellStanding.of(house.household(), house.catalogue(), rows.journal(), day, passedOver);
    if (report.standing().contradicts()) {
      List<Fault> contradictions =
          report.remarks().stream()
              .filter(Remark::contradiction)
              .map(remark -> new Fault("", remark.line(), remark.sentence()))
              .toList();
      return answer.refuse(ExitStatus.WRONG_INPUT, journal, contradictions);
    }
    terminal.out().print(json ? JournalJson.of(report) : JournalText.of(report));
    terminal.out().flush();
    return ExitStatus.DONE;
  }

  private LocalDate clockDate(Household household) {
    LocalDate date = LocalDate.now(terminal.clock().withZone(household.place().timeZone()));
    terminal.err().println("Today is " + date + " by the clock; --today sets another day.");
    return date;
  }
}
