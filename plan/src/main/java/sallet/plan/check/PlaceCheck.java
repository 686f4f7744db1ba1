package sallet.plan.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import sallet.household.Nursery;
import sallet.plan.Present;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;

/**
 * Places in use. A place is taken from the day a plant comes until the day it goes, that day not
 * counted: on such a day the old plant goes first.
 */
final class PlaceCheck implements Check {
  @Override
  public void examine(Subject subject, List<Fault> faults) {
    List<Sowing> sowings = subject.plan().batches();
    Nursery nursery = subject.household().nursery();
    fullest(subject, Rule.CELLS, nursery.cells(), day -> cellsInUse(subject, day), faults);
    fullest(subject, Rule.PLACES, nursery.places(), day -> placesInUse(sowings, day), faults);
    pots(sowings, faults);
    held(subject, faults);
  }

  private static void fullest(
      Subject subject, Rule rule, int room, ToIntFunction<LocalDate> inUse, List<Fault> faults) {
    HomeCalendar calendar = subject.calendar();
    calendar
        .from()
        .datesUntil(calendar.last().plusDays(1))
        .max(Comparator.comparingInt(inUse))
        .filter(day -> inUse.applyAsInt(day) > room)
        .ifPresent(
            day ->
                faults.add(Fault.above(rule, "day " + day, "in use", room, inUse.applyAsInt(day))));
  }

  /** All cells of a batch stay in use until its last seedling has left. */
  private static int cellsInUse(Subject subject, LocalDate day) {
    int standing =
        subject.present().plants().stream()
            .filter(plants -> plants.toNursery().isEmpty() && plants.toBench().isEmpty())
            .filter(plants -> inCells(subject, plants.batch(), day))
            .collect(Collectors.toMap(Present.Plants::batch, Present.Plants::cells, Math::max))
            .values()
            .stream()
            .mapToInt(Integer::intValue)
            .sum();
    return standing + newCellsInUse(subject.plan().sowings(), day);
  }

  private static boolean inCells(Subject subject, String batch, LocalDate day) {
    return subject.plan().standing().stream()
        .filter(sowing -> sowing.batch().equals(batch))
        .flatMap(sowing -> sowing.courses().stream())
        .anyMatch(course -> day.isBefore(course.toNursery()));
  }

  private static int newCellsInUse(List<Sowing> sowings, LocalDate day) {
    return sowings.stream()
        .filter(sowing -> !day.isBefore(sowing.date()))
        .filter(
            sowing ->
                sowing.courses().stream().anyMatch(course -> day.isBefore(course.toNursery())))
        .mapToInt(Sowing::cells)
        .sum();
  }

  private static int placesInUse(List<Sowing> sowings, LocalDate day) {
    return sowings.stream()
        .flatMap(sowing -> sowing.courses().stream())
        .filter(course -> !day.isBefore(course.toNursery()) && day.isBefore(course.toBench()))
        .mapToInt(Course::plants)
        .sum();
  }

  /** Pots with plants that cannot be planned with stay as they are. */
  private static void held(Subject subject, List<Fault> faults) {
    List<String> held = subject.heldPots();
    for (Sowing batch : subject.plan().batches()) {
      for (int i = 0; i < batch.courses().size(); i++) {
        for (String pot : batch.courses().get(i).pots()) {
          if (held.contains(pot)) {
            faults.add(
                new Fault(
                    Rule.POT_TAKEN, MoveCheck.where(batch, i), "pot", "one that is free", pot));
          }
        }
      }
    }
  }

  private record PotStay(String where, Course course) {}

  private static void pots(List<Sowing> sowings, List<Fault> faults) {
    Map<String, List<PotStay>> byPot = new TreeMap<>();
    for (Sowing sowing : sowings) {
      for (int i = 0; i < sowing.courses().size(); i++) {
        PotStay stay = new PotStay(MoveCheck.where(sowing, i), sowing.courses().get(i));
        for (String pot : stay.course().pots()) {
          byPot.computeIfAbsent(pot, name -> new ArrayList<>()).add(stay);
        }
      }
    }
    byPot.forEach((pot, stays) -> oneAtATime(pot, stays, faults));
  }

  private static void oneAtATime(String pot, List<PotStay> stays, List<Fault> faults) {
    stays.sort(Comparator.comparing(stay -> stay.course().toBench()));
    LocalDate free = LocalDate.MIN;
    for (PotStay stay : stays) {
      if (stay.course().toBench().isBefore(free)) {
        faults.add(
            new Fault(
                Rule.POT_TAKEN,
                stay.where() + ", pot " + pot,
                "move to the bench",
                "when the pot is free, from " + free,
                stay.course().toBench().toString()));
      }
      free = free.isAfter(stay.course().end()) ? free : stay.course().end();
    }
  }
}
