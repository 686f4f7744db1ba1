package sallet.app.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sallet.app.use.TellWater;

/** Options of commands that must know what stands on the bench. */
final class StandingOptions {
  @Mixin private GoingOnOptions goingOn = new GoingOnOptions();

  @Option(
      names = "--since",
      paramLabel = "DATE",
      description =
          "Without --journal: first day of the sowing plan whose plants are taken to stand on the"
              + " bench. Default: 12 weeks ago.")
  private @Nullable String since;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "6",
      description = "Time to think about that plan, 1 to 3600 s. Default: ${DEFAULT-VALUE}.")
  private String seconds = "";

  /** The options as read. */
  record Read(GoingOnOptions.Read goingOn, Optional<LocalDate> since, double seconds) {
    /** What to tell on a day, without a journal. */
    TellWater.Wish wish(LocalDate day) {
      LocalDate first = since.orElse(day.minusWeeks(TellWater.RUN_UP_WEEKS));
      return new TellWater.Wish(
          day,
          first.isAfter(day) ? day : first,
          Optional.empty(),
          goingOn.last(),
          seconds,
          goingOn.dives());
    }
  }

  Read read(CallReader call) {
    GoingOnOptions.Read on = goingOn.read(call);
    Optional<LocalDate> first = Optional.ofNullable(since).flatMap(t -> call.date("--since", t));
    on.today().ifPresent(day -> first.ifPresent(f -> judge(call, day, f)));
    if (on.journal().isPresent() && since != null) {
      call.fault(
          "--since", "stands beside --journal, which tells what stands; give one of the two");
    }
    if (on.journal().isEmpty() && goingOn.namesLastPlan()) {
      call.fault("--last-plan", "needs --journal: without it no plan goes on from today");
    }
    return new Read(on, first, call.number("--seconds", seconds, 1, 3600));
  }

  private static void judge(CallReader call, LocalDate day, LocalDate first) {
    if (day.isBefore(first)) {
      call.fault("--since", first + " is after today; name the day sowing began");
    }
    if (first.isBefore(day.minusWeeks(40))) {
      call.fault("--since", first + " is more than 40 weeks ago; name a later day");
    }
  }
}
