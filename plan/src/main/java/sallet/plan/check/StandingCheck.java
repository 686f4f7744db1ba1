package sallet.plan.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sallet.plan.Present;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;

/** What becomes of the plants that stand already: all of them, from where they are. */
final class StandingCheck implements Check {
  /** Days from one pick of a standing plant to the next. */
  static final int REST_DAYS = 5;

  @Override
  public void examine(Subject subject, List<Fault> faults) {
    counted(subject, faults);
    for (Sowing batch : subject.plan().standing()) {
      batch(subject, batch, faults);
    }
    for (StandingCourse standing : subject.standing()) {
      stays(standing, faults);
      if (!standing.clearedOn(subject.calendar().from())) {
        moves(subject, standing, faults);
      }
      rest(standing, faults);
    }
  }

  /** Each plant that stands is in one course, and no other plant is. */
  private static void counted(Subject subject, List<Fault> faults) {
    List<Present.Plants> groups = subject.present().plants();
    for (int g = 0; g < groups.size(); g++) {
      int group = g;
      Present.Plants plants = groups.get(g);
      int told =
          subject.standing().stream()
              .filter(standing -> standing.group() == group)
              .mapToInt(standing -> standing.course().plants())
              .sum();
      if (told != (subject.knows(plants) ? plants.count() : 0)) {
        faults.add(
            Fault.number(
                Rule.STANDING,
                "batch " + plants.batch(),
                "plants that go on or are cleared",
                plants.count(),
                told));
      }
    }
    Set<String> told =
        subject.standing().stream().map(StandingCourse::where).collect(Collectors.toSet());
    for (Sowing batch : subject.plan().standing()) {
      for (int i = 0; i < batch.courses().size(); i++) {
        if (!told.contains(MoveCheck.where(batch, i))) {
          faults.add(
              new Fault(
                  Rule.STANDING,
                  MoveCheck.where(batch, i),
                  "plants",
                  "plants that stand, in their pots",
                  batch.courses().get(i).plants() + " in " + batch.courses().get(i).pots()));
        }
      }
    }
  }

  private static void batch(Subject subject, Sowing batch, List<Fault> faults) {
    Optional<Present.Plants> first =
        subject.present().plants().stream()
            .filter(plants -> plants.batch().equals(batch.batch()))
            .findFirst();
    String told = name(batch.crop(), batch.date(), batch.emergence()) + batch.cells() + " sown now";
    String known =
        first.map(p -> name(p.crop(), p.sown(), p.emergence()) + "0 sown now").orElse("none");
    if (!told.equals(known) || batch.seeds() != 0) {
      faults.add(new Fault(Rule.STANDING, BatchCheck.where(batch), "batch", known, told));
    }
  }

  private static String name(String crop, LocalDate sown, LocalDate emergence) {
    return crop + " of " + sown + ", up on " + emergence + ", ";
  }

  /** Days that are over do not change, and nothing in a pot changes pots. */
  private static void stays(StandingCourse standing, List<Fault> faults) {
    Course course = standing.course();
    Present.Plants plants = standing.plants();
    boolean sameDays =
        plants.toNursery().map(course.toNursery()::equals).orElse(true)
            && plants.toBench().map(course.toBench()::equals).orElse(true);
    boolean samePots = plants.toBench().isEmpty() || course.pots().size() == course.plants();
    if (!sameDays || !samePots) {
      faults.add(
          new Fault(
              Rule.STAYS,
              standing.where(),
              "place",
              plants.pots() + " since " + plants.toNursery() + ", " + plants.toBench(),
              course.pots() + " since " + course.toNursery() + ", " + course.toBench()));
    }
  }

  private static void moves(Subject subject, StandingCourse standing, List<Fault> faults) {
    Course course = standing.course();
    LocalDate up = standing.plants().emergence();
    if (standing.plants().toNursery().isEmpty()) {
      MoveCheck.toNursery(subject, standing.plants().sown(), up, course, standing.where(), faults);
    }
    boolean late =
        standing.plants().toNursery().isPresent()
            && ChronoUnit.DAYS.between(up, course.toBench()) > MoveCheck.OLDEST_TO_BENCH
            && subject.calendar().taskDays().stream()
                .findFirst()
                .filter(course.toBench()::equals)
                .isPresent();
    if (standing.plants().toBench().isEmpty() && !late) {
      MoveCheck.toBench(subject, up, course, standing.where(), faults);
    }
    MoveCheck.end(subject, course, standing.where(), faults);
    MoveCheck.pots(subject, course, standing.where(), faults);
  }

  private static void rest(StandingCourse standing, List<Fault> faults) {
    LocalDate over =
        standing.plants().lastPick().map(day -> day.plusDays(REST_DAYS)).orElse(LocalDate.MIN);
    standing.course().picks().stream()
        .filter(pick -> pick.date().isBefore(over))
        .forEach(
            pick ->
                faults.add(
                    new Fault(
                        Rule.REST,
                        PickCheck.where(standing.where(), pick),
                        "date",
                        "from " + over + " on",
                        pick.date().toString())));
  }
}
