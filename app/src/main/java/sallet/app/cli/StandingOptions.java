package sallet.app.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import sallet.app.use.TellWater;

/** Options of commands that must know what stands on the bench. */
final class StandingOptions {
  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "Today, like 2026-11-28. Default: the clock's date.")
  private @Nullable String today;

  @Option(
      names = "--since",
      paramLabel = "DATE",
      description =
          "First day of the sowing plan whose plants stand on the bench. Default: 12 weeks ago.")
  private @Nullable String since;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "6",
      description = "Time to think about that plan, 1 to 3600 s. Default: ${DEFAULT-VALUE}.")
  private String seconds = "";

  @Option(
      names = "--effort",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "Search N times instead of by the clock, 1 to 10000: the same file and day then give the"
              + " same answer.")
  private String effort = "";

  /** The options as read. */
  record Read(Optional<LocalDate> today, Optional<LocalDate> since, double seconds, int dives) {
    TellWater.Wish wish(Supplier<LocalDate> clock) {
      LocalDate day = today.orElseGet(clock);
      LocalDate first = since.orElse(day.minusWeeks(TellWater.RUN_UP_WEEKS));
      return new TellWater.Wish(day, first.isAfter(day) ? day : first, seconds, dives);
    }
  }

  Read read(CallReader call) {
    Optional<LocalDate> day = Optional.ofNullable(today).flatMap(t -> call.date("--today", t));
    Optional<LocalDate> first = Optional.ofNullable(since).flatMap(t -> call.date("--since", t));
    if (day.isPresent() && first.filter(day.get()::isBefore).isPresent()) {
      call.fault("--since", first.get() + " is after today; name the day sowing began");
    }
    if (day.isPresent() && first.filter(f -> f.isBefore(day.get().minusWeeks(40))).isPresent()) {
      call.fault("--since", first.get() + " is more than 40 weeks ago; name a later day");
    }
    return new Read(
        day,
        first,
        call.number("--seconds", seconds, 1, 3600),
        call.whole("--effort", effort, 0, 10_000));
  }
}
