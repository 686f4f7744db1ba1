package sallet.app.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import sallet.app.file.PlanReader;
import sallet.app.use.TellWater;
import sallet.plan.LastPlan;

/** Options of commands that must know what stands on the bench. */
final class StandingOptions {
  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "Today, like 2026-11-28. Default: the clock's date.")
  private @Nullable String today;

  @Option(
      names = "--journal",
      paramLabel = "FILE.csv",
      description =
          "Tell of what stands by this journal, go on with a plan made from there, and learn from"
              + " its readings; docs/journal.md lists the columns.")
  private @Nullable String journal;

  @Option(
      names = "--last-plan",
      paramLabel = "FILE.json",
      description =
          "With --journal: the last plan as printed by plan --json, little of which is changed.")
  private @Nullable String lastPlan;

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

  @Option(
      names = "--effort",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "Search N times instead of by the clock, 1 to 10000: the same file and day then give the"
              + " same answer.")
  private String effort = "";

  /** The options as read. */
  record Read(
      Optional<LocalDate> today,
      Optional<String> journal,
      Optional<LastPlan> last,
      Optional<LocalDate> since,
      double seconds,
      int dives) {
    /** What to tell on a day, without a journal. */
    TellWater.Wish wish(LocalDate day) {
      LocalDate first = since.orElse(day.minusWeeks(TellWater.RUN_UP_WEEKS));
      return new TellWater.Wish(
          day, first.isAfter(day) ? day : first, Optional.empty(), last, seconds, dives);
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
    if (journal != null && since != null) {
      call.fault(
          "--since", "stands beside --journal, which tells what stands; give one of the two");
    }
    if (journal == null && lastPlan != null) {
      call.fault("--last-plan", "needs --journal: without it no plan goes on from today");
    }
    return new Read(
        day,
        Optional.ofNullable(journal),
        Optional.ofNullable(lastPlan).flatMap(name -> lastPlan(call, name)),
        first,
        call.number("--seconds", seconds, 1, 3600),
        call.whole("--effort", effort, 0, 10_000));
  }

  /** The last plan in a file. */
  static Optional<LastPlan> lastPlan(CallReader call, String name) {
    try {
      return Optional.of(PlanReader.read(name));
    } catch (PlanReader.Unreadable e) {
      call.fault("--last-plan", "\"" + name + "\": " + e.getMessage());
      return Optional.empty();
    }
  }
}
