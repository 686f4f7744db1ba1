package sallet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sallet.household.Absence;
import sallet.household.Eaters;

class TaskCalendarTest {
  private static final Eaters TWO =
      new Eaters(2, 240, 3, List.of(DayOfWeek.SATURDAY, DayOfWeek.WEDNESDAY));
  private static final LocalDate WEDNESDAY = LocalDate.of(2026, 11, 25);

  @Test
  void bowlsFallOnTheLastTaskDayOfEachWeek() {
    TaskCalendar calendar = new TaskCalendar(TWO, List.of(), WEDNESDAY, 3);
    assertThat(calendar.bowl(0)).isEqualTo("2026-11-28");
    assertThat(calendar.bowl(2)).isEqualTo("2026-12-12");
    assertThat(calendar.slots())
        .startsWith(WEDNESDAY, LocalDate.of(2026, 11, 28), LocalDate.of(2026, 12, 2))
        .hasSize(6);
  }

  @Test
  void anAbsenceOfEverybodyTakesTaskDaysAndBowlsAway() {
    Absence away = new Absence(LocalDate.of(2026, 12, 3), LocalDate.of(2026, 12, 14), 2);
    TaskCalendar calendar = new TaskCalendar(TWO, List.of(away), WEDNESDAY, 4);
    assertThat(calendar.slots()).noneMatch(away::covers);
    assertThat(calendar.slotOfBowl(1)).isNegative();
    assertThat(calendar.demandGrams(1)).isZero();
    // Saturday 28 November feeds seven days, five of them at home.
    assertThat(calendar.demandGrams(0)).isCloseTo(240 * 5 / 7.0, within(1e-9));
    assertThat(calendar.demandGrams(3)).isCloseTo(240, within(1e-9));
  }

  @Test
  void whoStaysAtHomeEatsAndWorks() {
    Absence one = new Absence(LocalDate.of(2026, 12, 5), LocalDate.of(2026, 12, 11), 1);
    TaskCalendar calendar = new TaskCalendar(TWO, List.of(one), WEDNESDAY, 3);
    assertThat(calendar.demandGrams(1)).isCloseTo(120, within(1e-9));
    assertThat(calendar.slotOfBowl(1)).isNotNegative();
  }

  @Test
  void aMoveWaitsForTheNextTaskDay() {
    TaskCalendar calendar = new TaskCalendar(TWO, List.of(), WEDNESDAY, 2);
    assertThat(calendar.slot(calendar.slotFrom(LocalDate.of(2026, 11, 26))))
        .isEqualTo("2026-11-28");
    assertThat(calendar.slotFrom(LocalDate.of(2027, 1, 1))).isNegative();
  }
}
