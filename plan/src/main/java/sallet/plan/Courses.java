package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sallet.crop.Crop;
import sallet.crop.PlantState;

/**
 * All courses a household could start: every crop, sowing day, day of moving on and pot group. A
 * seedling that came up while everybody was away may go from its cell straight to its pot.
 */
final class Courses {
  /** Days after emergence from which a seedling may move to its pot, one course each. Judgement. */
  private static final int[] BENCH_AGES = {14, 21};

  /** Days after emergence after which a seedling is too old to move. Judgement. */
  private static final int OLDEST_SEEDLING = 40;

  /** Task days among which the move of a standing seedling is chosen. Judgement. */
  private static final int NEXT_MOVES = 4;

  private Courses() {}

  static List<Course> all(Instance instance) {
    List<Course> courses = new ArrayList<>();
    for (int s = 0; s < instance.standing().size(); s++) {
      addStanding(courses, s, instance);
    }
    for (int k = 0; k < instance.sowable(); k++) {
      for (int s = 0; s < instance.calendar().slots().size(); s++) {
        addSowing(courses, k, s, instance);
      }
    }
    return courses;
  }

  private static void addSowing(List<Course> courses, int k, int sowSlot, Instance instance) {
    Crop crop = instance.crops().get(k);
    Optional<LocalDate> emergence =
        Question.emergence(crop, instance.calendar().slot(sowSlot), instance.at().cellMeanC());
    if (emergence.isEmpty()) {
      return;
    }
    LocalDate up = emergence.get();
    int nurserySlot = instance.calendar().slotFrom(up.plusDays(1));
    double cells = Weights.cellsPerPlant(crop.harvest().orElseThrow(), instance.at().cells());
    for (int benchSlot : benchSlots(up, nurserySlot, instance.calendar())) {
      for (int g = 0; g < instance.at().groups().size(); g++) {
        add(
            courses,
            Course.sown(
                new Course.Steps(Course.NEW, k, g, sowSlot, nurserySlot, benchSlot, up),
                cells,
                instance));
      }
    }
  }

  private static void addStanding(List<Course> courses, int s, Instance instance) {
    StandingPlants plants = instance.standing().get(s);
    TaskCalendar calendar = instance.calendar();
    LocalDate up = plants.emergence();
    if (plants.toBench().isPresent()) {
      add(
          courses,
          Course.standing(
              new Course.Steps(s, plants.crop(), plants.group(), 0, 0, 0, up), instance));
      return;
    }
    boolean inCells = plants.toNursery().isEmpty();
    int nurserySlot = inCells ? calendar.slotFrom(up.plusDays(1)) : 0;
    List<Integer> benchSlots =
        inCells ? benchSlots(up, nurserySlot, calendar) : nextBenchSlots(up, calendar);
    for (int benchSlot : benchSlots) {
      for (int g = 0; g < instance.at().groups().size(); g++) {
        add(
            courses,
            Course.standing(
                new Course.Steps(s, plants.crop(), g, 0, nurserySlot, benchSlot, up), instance));
      }
    }
  }

  private static void add(List<Course> courses, Course course) {
    if (course.bowls.length > 0) {
      courses.add(course);
    }
  }

  /** Slots on which a seedling of the right age moves from its nursery place to its pot. */
  private static List<Integer> benchSlots(LocalDate up, int nurserySlot, TaskCalendar calendar) {
    List<Integer> slots = new ArrayList<>();
    if (nurserySlot < 0) {
      return slots;
    }
    for (int age : BENCH_AGES) {
      int slot = calendar.slotFrom(up.plusDays(age));
      if (slot >= nurserySlot
          && !slots.contains(slot)
          && !calendar.slot(slot).isAfter(up.plusDays(OLDEST_SEEDLING))) {
        slots.add(slot);
      }
    }
    return slots;
  }

  /** The next slots on which a seedling that stands in the nursery may move; one if it is late. */
  private static List<Integer> nextBenchSlots(LocalDate up, TaskCalendar calendar) {
    int first = calendar.slotFrom(up.plusDays(BENCH_AGES[0]));
    List<Integer> slots = new ArrayList<>();
    for (int slot = first; slot >= 0 && slot < calendar.slots().size(); slot++) {
      boolean late = calendar.slot(slot).isAfter(up.plusDays(OLDEST_SEEDLING));
      if (slots.size() < NEXT_MOVES && (slot == first || !late)) {
        slots.add(slot);
      }
    }
    return slots;
  }

  /** The first bowl any sowing can serve, or the number of bowls when there is none. */
  static int firstBowl(List<Course> courses, int bowls) {
    int first = bowls;
    for (Course c : courses) {
      if (c.bowls[0] < first) {
        first = Math.min(first, firstBowl(c).orElse(bowls));
      }
    }
    return first;
  }

  private static Optional<Integer> firstBowl(Course c) {
    PlantState state = c.atFirstBowl();
    for (int t = 0; t < c.bowls.length; t++) {
      double fresh = c.freshG(state, t);
      if (c.mayLift(t, fresh)) {
        return Optional.of(c.bowls[t]);
      }
      if (t + 1 < c.bowls.length) {
        state = c.grow(state, c.bowlDay[t] + 1, c.bowlDay[t + 1] + 1);
      }
    }
    return Optional.empty();
  }
}
