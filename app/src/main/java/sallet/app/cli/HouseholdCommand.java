package sallet.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sallet.app.file.Fault;
import sallet.app.file.HouseholdFile;
import sallet.app.file.HouseholdReader;
import sallet.app.file.JournalCsv;
import sallet.app.file.JournalFile;
import sallet.app.use.MakePlan;
import sallet.crop.Catalogue;
import sallet.household.Household;
import sallet.learn.Remark;
import sallet.learn.Standing;
import sallet.plan.NoPlan;
import sallet.water.WaterFault;

/**
 * A command about a household: it reads the file and the options, tells the faults of both in one
 * go, and works when there are none.
 */
abstract class HouseholdCommand implements Callable<Integer> {
  /** Place in the help of the options all commands have: after their own. */
  private static final int LAST = 100;

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "The household file (YAML).")
  private String file = "";

  @Option(names = "--json", order = LAST, description = "Print JSON instead of text, faults too.")
  private boolean json;

  @Option(
      names = "--out",
      order = LAST,
      paramLabel = "DIR",
      description = "Also write the answer's files into this folder.")
  private @Nullable String out;

  HouseholdCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** What to do when neither file nor options have a fault. */
  @FunctionalInterface
  interface Work {
    /** Works and tells the report or why there is none. */
    ExitStatus on(HouseholdFile.Good file);
  }

  /**
   * Reads the options; each that is wrong becomes a fault of the call.
   *
   * @param file the household; empty when its file has faults, so that options which speak of it
   *     cannot be judged
   */
  abstract Work options(CallReader call, Optional<HouseholdFile.Good> file);

  @Override
  public final Integer call() {
    CallReader call = new CallReader();
    HouseholdFile read = read();
    Optional<HouseholdFile.Good> good =
        read instanceof HouseholdFile.Good g ? Optional.of(g) : Optional.empty();
    Work work = options(call, good);
    if (out != null && !canWriteInto(out)) {
      call.fault("--out", "\"" + out + "\" is no folder that can be written into; name another");
    }
    List<Fault> faults = new ArrayList<>(call.faults());
    if (read instanceof HouseholdFile.Faulty faulty) {
      faults.addAll(faulty.faults());
    }
    return good.filter(g -> faults.isEmpty())
        .map(work::on)
        .orElseGet(() -> answer().refuse(ExitStatus.WRONG_INPUT, file, faults))
        .code();
  }

  /** Prints the report in the form asked for and writes its files. */
  final ExitStatus tell(Report report) {
    if (out != null) {
      try {
        Map<String, String> files = report.files().get();
        for (Map.Entry<String, String> one : files.entrySet()) {
          Files.writeString(Path.of(out, one.getKey()), one.getValue());
        }
        progress("Wrote " + String.join(", ", files.keySet()) + " into " + out);
      } catch (IOException e) {
        String sentence = "\"" + out + "\" cannot be written into; check its rights and free space";
        return answer()
            .refuse(ExitStatus.WRONG_INPUT, "", List.of(new Fault("--out", 0, sentence)));
      }
    }
    terminal.out().print(json ? report.json().get() : report.text().get());
    terminal.out().flush();
    return ExitStatus.DONE;
  }

  /** Tells why there is no report. */
  final ExitStatus refuse(ExitStatus status, List<String> sentences) {
    return answer().refuse(status, "", sentences.stream().map(s -> new Fault("", 0, s)).toList());
  }

  /** Tells that pump, pots, flood and reservoir do not go together. */
  final ExitStatus refuse(WaterFault wrong) {
    List<Fault> faults =
        wrong.lines().stream().map(l -> new Fault(l.path(), 0, l.sentence())).toList();
    return answer().refuse(ExitStatus.WRONG_INPUT, file, faults);
  }

  /** Tells that there is no plan. */
  final ExitStatus refuse(NoPlan none) {
    return refuse(
        ExitStatus.NO_ANSWER,
        List.of(Optional.ofNullable(none.getMessage()).orElse("there is no plan")));
  }

  /** Tells the faults of another file the command reads. */
  final ExitStatus refuse(String otherFile, List<Fault> faults) {
    return answer().refuse(ExitStatus.WRONG_INPUT, otherFile, faults);
  }

  /**
   * Works with what a journal comes to on a day; tells its faults and what contradicts itself
   * instead when it has any.
   */
  final ExitStatus withStock(
      String journal,
      HouseholdFile.Good file,
      LocalDate day,
      Function<MakePlan.Stock, ExitStatus> work) {
    JournalFile read = JournalCsv.read(journal, file.household(), file.catalogue());
    if (!(read instanceof JournalFile.Good rows)) {
      return refuse(journal, ((JournalFile.Faulty) read).faults());
    }
    rows.warnings().forEach(w -> progress("Line " + w.line() + ": " + w.sentence()));
    Standing standing = Standing.of(rows.journal(), file.catalogue(), file.household(), day);
    return standing.contradicts()
        ? contradicted(journal, standing.remarks())
        : work.apply(new MakePlan.Stock(standing, rows.journal()));
  }

  /** Tells which rows of a journal contradict each other or the household. */
  final ExitStatus contradicted(String journal, List<Remark> remarks) {
    return refuse(
        journal,
        remarks.stream()
            .filter(Remark::contradiction)
            .map(r -> new Fault("", r.line(), r.sentence()))
            .toList());
  }

  /** One line beside the answer. */
  final void progress(String line) {
    terminal.err().println(line);
  }

  /**
   * Today where the household lives.
   *
   * @param option the option that sets another day
   */
  final LocalDate today(Household household, String option) {
    LocalDate today = LocalDate.now(terminal.clock().withZone(household.place().timeZone()));
    progress("Today is " + today + " by the clock; " + option + " sets another day.");
    return today;
  }

  private Answer answer() {
    return new Answer(terminal, json);
  }

  private HouseholdFile read() {
    try {
      return new HouseholdReader(Catalogue.builtIn()).read(Path.of(file));
    } catch (InvalidPathException e) {
      return new HouseholdFile.Faulty(
          List.of(new Fault("", 0, "this is not a file name; check it for odd signs")));
    }
  }

  private static boolean canWriteInto(String folder) {
    try {
      return Files.isWritable(Files.createDirectories(Path.of(folder)));
    } catch (IOException | InvalidPathException e) {
      return false;
    }
  }
}
