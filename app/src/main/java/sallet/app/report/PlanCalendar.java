package sallet.app.report;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import sallet.household.Household;
import sallet.household.Pot;
import sallet.plan.SowingPlan;

/**
 * The plan's task days as an iCalendar file (RFC 5545): one all-day event for each day with work.
 *
 * <p>The same household has the same event identifier for the same day in every plan, so a new plan
 * replaces the old events when it is imported again. Time stamps come from the plan's first day,
 * not from the clock, so the same plan gives the same file.
 */
public final class PlanCalendar {
  private PlanCalendar() {}

  /** The calendar, lines ended by CRLF. */
  public static String of(SowingPlan plan, Household household) {
    Map<LocalDate, List<Task>> days =
        Tasks.of(plan).stream()
            .collect(Collectors.groupingBy(Task::date, TreeMap::new, Collectors.toList()));
    StringBuilder out = new StringBuilder();
    out.append(ContentLine.of("BEGIN", "VCALENDAR"));
    out.append(ContentLine.of("VERSION", "2.0"));
    out.append(ContentLine.ofText("PRODID", "-//Sallet//Sowing plan//EN"));
    out.append(ContentLine.of("CALSCALE", "GREGORIAN"));
    days.forEach((day, tasks) -> out.append(event(plan, household, day, tasks)));
    return out.append(ContentLine.of("END", "VCALENDAR")).toString();
  }

  private static String event(
      SowingPlan plan, Household household, LocalDate day, List<Task> tasks) {
    String description = tasks.stream().map(Task::text).collect(Collectors.joining("\n"));
    return ContentLine.of("BEGIN", "VEVENT")
        + ContentLine.of("UID", identifier(household, day))
        + ContentLine.of("DTSTAMP", date(plan.from()) + "T000000Z")
        + ContentLine.of("DTSTART;VALUE=DATE", date(day))
        + ContentLine.of("DTEND;VALUE=DATE", date(day.plusDays(1)))
        + ContentLine.ofText("SUMMARY", summary(tasks))
        + ContentLine.ofText("DESCRIPTION", description)
        + ContentLine.of("TRANSP", "TRANSPARENT")
        + ContentLine.of("END", "VEVENT");
  }

  private static String summary(List<Task> tasks) {
    List<String> parts = new ArrayList<>();
    int seeds = count(tasks, Task.Event.SOW);
    int moves = count(tasks, Task.Event.MOVE_TO_NURSERY) + count(tasks, Task.Event.MOVE_TO_POT);
    int clears = count(tasks, Task.Event.CLEAR);
    double grams = tasks.stream().mapToDouble(Task::grams).sum();
    if (seeds > 0) {
      parts.add("sow " + Words.count(seeds, "seed"));
    }
    if (moves > 0) {
      parts.add("move " + Words.count(moves, "plant"));
    }
    if (clears > 0) {
      parts.add("clear " + Words.count(clears, "pot"));
    }
    if (grams >= 0.5) {
      parts.add("pick " + Words.grams(grams));
    }
    return "Salad bench: %s (%d min)".formatted(String.join(", ", parts), Tasks.minutes(tasks));
  }

  /** Seeds or plants of the tasks of a kind. */
  private static int count(List<Task> tasks, Task.Event event) {
    return tasks.stream().filter(t -> t.event() == event).mapToInt(Task::count).sum();
  }

  /** A name-based UUID of place, pots and day (RFC 7986 section 5.3 recommends a UUID). */
  private static String identifier(Household household, LocalDate day) {
    String pots =
        household.bench().pots().stream().map(Pot::name).collect(Collectors.joining("\n"));
    String name =
        "sallet task day\n%s\n%s\n%s\n%s"
            .formatted(
                household.place().latitudeDeg(), household.place().longitudeDeg(), pots, day);
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
  }

  private static String date(LocalDate date) {
    return DateTimeFormatter.BASIC_ISO_DATE.format(date);
  }
}
