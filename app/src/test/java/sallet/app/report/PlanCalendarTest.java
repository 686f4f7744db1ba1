package sallet.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;

/** The calendar as a general-purpose iCalendar library reads it. */
class PlanCalendarTest {
  private static final String HOSTILE = "A6;\r\nEND:VEVENT, \"x\"\\";

  private static Calendar read(String text) throws ParserException, IOException {
    return new CalendarBuilder().build(new StringReader(text));
  }

  private static List<VEvent> events(Calendar calendar) {
    return calendar.getComponents("VEVENT");
  }

  private static String property(VEvent event, String name) {
    return event.getRequiredProperty(name).getValue();
  }

  @Test
  void anotherProgramFindsNothingWrong() throws ParserException, IOException {
    Calendar calendar = read(PlanCalendar.of(PorchPlan.plan(), PorchPlan.household()));

    assertThat(calendar.validate().getEntries()).isEmpty();
  }

  @Test
  void thereIsOneAllDayEventForEachDayWithWork() throws ParserException, IOException {
    List<LocalDate> days =
        Tasks.of(PorchPlan.plan()).stream().map(Task::date).distinct().sorted().toList();

    List<VEvent> events = events(read(PlanCalendar.of(PorchPlan.plan(), PorchPlan.household())));

    assertThat(
            events.stream()
                .map(e -> property(e, "DTSTART"))
                .map(date -> LocalDate.parse(date, DateTimeFormatter.BASIC_ISO_DATE)))
        .containsExactlyElementsOf(days);
  }

  @Test
  void anEventTellsTheDaysTasks() throws ParserException, IOException {
    VEvent first = events(read(PlanCalendar.of(PorchPlan.plan(), PorchPlan.household()))).get(0);

    assertThat(property(first, "SUMMARY")).isEqualTo("Salad bench: sow 14 seeds (12 min)");
    assertThat(property(first, "DESCRIPTION"))
        .isEqualTo(
            """
            Sow 6 seeds of mizuna, one a cell, 6 cells (batch B01).
            Sow 4 seeds of green loose-leaf lettuce, one a cell, 4 cells (batch B02).
            Sow 4 seeds of Swiss chard, one a cell, 4 cells (batch B03).\
            """);
    assertThat(property(first, "DTSTAMP")).isEqualTo("20261128T000000Z");
  }

  @Test
  void aHostilePotNameStaysWithinItsText() throws ParserException, IOException {
    List<VEvent> plain = events(read(PlanCalendar.of(PorchPlan.plan(), PorchPlan.household())));

    List<VEvent> hostile =
        events(read(PlanCalendar.of(PorchPlan.plan(HOSTILE), PorchPlan.household(HOSTILE))));

    assertThat(hostile).hasSameSizeAs(plain);
    assertThat(hostile)
        .anyMatch(e -> property(e, "DESCRIPTION").contains("A6;\nEND:VEVENT, \"x\"\\"));
  }

  @Test
  void identifiersStayTheSameFromPlanToPlanAndDifferFromDayToDayAndHomeToHome()
      throws ParserException, IOException {
    List<String> first = identifiers("A6");

    assertThat(first).doesNotHaveDuplicates().isEqualTo(identifiers("A6"));
    assertThat(first).doesNotContainAnyElementsOf(identifiers("other"));
  }

  private static List<String> identifiers(String pot) throws ParserException, IOException {
    return events(read(PlanCalendar.of(PorchPlan.plan(pot), PorchPlan.household(pot)))).stream()
        .map(e -> property(e, "UID"))
        .toList();
  }

  /** RFC 5545 section 3.1: CRLF ends every line, none has more than 75 octets. */
  @Test
  void linesAreShortAndEndWithCrLf() {
    String text = PlanCalendar.of(PorchPlan.plan(), PorchPlan.household());

    assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
    assertThat(text).endsWith("END:VCALENDAR\r\n");
    assertThat(text.split("\r\n"))
        .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
  }
}
