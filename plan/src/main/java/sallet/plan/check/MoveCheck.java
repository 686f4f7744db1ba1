package sallet.plan.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;

/** When plants move and which pots they move to. */
final class MoveCheck implements Check {
  /** Days after emergence on which a plant may first go to its pot. */
  static final int YOUNGEST_TO_BENCH = 14;

  /** Days after emergence on which a plant may last go to its pot. */
  static final int OLDEST_TO_BENCH = 40;

  @Override
  public void examine(Subject subject, List<Fault> faults) {
    for (Sowing sowing : subject.plan().sowings()) {
      for (int i = 0; i < sowing.courses().size(); i++) {
        Course course = sowing.courses().get(i);
        String where = where(sowing, i);
        toNursery(subject, sowing.date(), sowing.emergence(), course, where, faults);
        toBench(subject, sowing.emergence(), course, where, faults);
        end(subject, course, where, faults);
        pots(subject, course, where, faults);
      }
    }
  }

  static String where(Sowing sowing, int course) {
    return BatchCheck.where(sowing) + ", course " + (course + 1);
  }

  static void toNursery(
      Subject subject,
      LocalDate sown,
      LocalDate emergence,
      Course course,
      String where,
      List<Fault> faults) {
    LocalDate day = course.toNursery();
    if (!subject.calendar().isTaskDay(day) || day.isBefore(emergence) || !day.isAfter(sown)) {
      faults.add(
          new Fault(
              Rule.TO_NURSERY,
              where,
              "move to the nursery",
              "a task day from " + emergence + " on",
              day.toString()));
    }
  }

  static void toBench(
      Subject subject, LocalDate emergence, Course course, String where, List<Fault> faults) {
    LocalDate day = course.toBench();
    long age = ChronoUnit.DAYS.between(emergence, day);
    if (!subject.calendar().isTaskDay(day)
        || age < YOUNGEST_TO_BENCH
        || age > OLDEST_TO_BENCH
        || day.isBefore(course.toNursery())) {
      faults.add(
          new Fault(
              Rule.TO_BENCH,
              where,
              "move to the bench",
              "a task day 14 to 40 days after emergence, not before the nursery",
              day + ", " + age + " days after"));
    }
  }

  static void end(Subject subject, Course course, String where, List<Fault> faults) {
    HomeCalendar calendar = subject.calendar();
    LocalDate end = course.end();
    if (!end.isAfter(course.toBench()) || end.isAfter(calendar.last())) {
      faults.add(
          new Fault(
              Rule.END,
              where,
              "end",
              "after " + course.toBench() + ", at most " + calendar.last(),
              end.toString()));
    }
    if (!course.lifted() && !calendar.isTaskDay(end) && !end.equals(calendar.last())) {
      faults.add(
          new Fault(
              Rule.CLEARING, where, "clearing", "a task day or the last day", end.toString()));
    }
  }

  static void pots(Subject subject, Course course, String where, List<Fault> faults) {
    List<String> pots = course.pots();
    if (pots.size() != course.plants() || new HashSet<>(pots).size() != pots.size()) {
      faults.add(
          new Fault(Rule.POT_NAMES, where, "pots", course.plants() + " different ones", "" + pots));
    }
    if (course.group() < 0 || course.group() >= subject.plan().groups().size()) {
      faults.add(
          new Fault(
              Rule.POT_NAMES,
              where,
              "group",
              "0 to " + (subject.plan().groups().size() - 1),
              "" + course.group()));
      return;
    }
    List<String> group = subject.plan().groups().get(course.group()).pots();
    for (String pot : pots) {
      if (!group.contains(pot)) {
        faults.add(new Fault(Rule.POT_NAMES, where, "pot", "one of " + group, pot));
      }
    }
  }
}
