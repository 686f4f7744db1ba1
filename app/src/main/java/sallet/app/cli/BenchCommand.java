package sallet.app.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Mixin;
import sallet.app.file.HouseholdFile;
import sallet.app.use.TellWater;
import sallet.learn.Remark;
import sallet.learn.WaterRows;
import sallet.plan.NoPlan;
import sallet.water.WaterFault;

/** A command that must know what stands on the bench, by a journal or by a plan begun before. */
abstract class BenchCommand extends HouseholdCommand {
  @Mixin private StandingOptions standing = new StandingOptions();

  BenchCommand(Terminal terminal) {
    super(terminal);
  }

  final StandingOptions.Read standing(CallReader call) {
    return standing.read(call);
  }

  /** Works with what stands; tells why not when journal, bench or plan do not allow it. */
  final ExitStatus bench(
      HouseholdFile.Good file,
      StandingOptions.Read read,
      Function<TellWater.Wish, ExitStatus> work) {
    LocalDate day = read.goingOn().today().orElseGet(() -> today(file.household(), "--today"));
    Optional<String> journal = read.goingOn().journal();
    return journal.isEmpty()
        ? told(read.wish(day), work)
        : withStock(
            journal.get(),
            file,
            day,
            stock -> {
              WaterRows rows = WaterRows.of(file.household(), stock.journal(), day);
              if (rows.remarks().stream().anyMatch(Remark::contradiction)) {
                return contradicted(journal.get(), rows.remarks());
              }
              rows.remarks().forEach(r -> progress("Line " + r.line() + ": " + r.sentence()));
              return told(read.wish(day).with(stock), work);
            });
  }

  private ExitStatus told(TellWater.Wish wish, Function<TellWater.Wish, ExitStatus> work) {
    try {
      return work.apply(wish);
    } catch (WaterFault e) {
      return refuse(e);
    } catch (NoPlan e) {
      return refuse(e);
    }
  }
}
