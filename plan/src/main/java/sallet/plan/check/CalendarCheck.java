package sallet.plan.check;

import java.time.LocalDate;
import java.util.List;
import sallet.plan.BowlWeek;

/** The plan's days and what is wanted on them. */
final class CalendarCheck implements Check {
  @Override
  public void examine(Subject subject, List<Fault> faults) {
    bowlDays(subject, faults);
    taskDays(subject, faults);
    for (BowlWeek week : subject.plan().weeks()) {
      double demand = subject.calendar().demandGrams(week.bowlDay());
      if (!Close.sameSum(demand, week.demandGrams())) {
        faults.add(
            Fault.number(
                Rule.DEMAND, "week " + week.bowlDay(), "demand, g", demand, week.demandGrams()));
      }
    }
  }

  private static void bowlDays(Subject subject, List<Fault> faults) {
    List<LocalDate> expected = subject.calendar().bowlDays();
    List<LocalDate> found = subject.plan().weeks().stream().map(BowlWeek::bowlDay).toList();
    for (int i = 0; i < expected.size(); i++) {
      if (!expected.get(i).equals(found.get(i))) {
        faults.add(
            new Fault(
                Rule.BOWL_DAYS,
                "week " + (i + 1),
                "bowl day",
                expected.get(i).toString(),
                found.get(i).toString()));
      }
    }
  }

  private static void taskDays(Subject subject, List<Fault> faults) {
    List<LocalDate> expected = subject.calendar().taskDays();
    List<LocalDate> found = subject.plan().taskDays();
    if (expected.equals(found)) {
      return;
    }
    List<LocalDate> missing = expected.stream().filter(day -> !found.contains(day)).toList();
    List<LocalDate> extra = found.stream().filter(day -> !expected.contains(day)).toList();
    faults.add(
        new Fault(
            Rule.TASK_DAYS,
            "plan",
            "task days",
            expected.size() + " days in order",
            found.size() + " days; missing " + missing + ", too many " + extra));
  }
}
