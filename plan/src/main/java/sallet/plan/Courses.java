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

  private Courses() {}

  static List<Course> all(List<Crop> crops, Surroundings at, TaskCalendar calendar) {
    List<Course> courses = new ArrayList<>();
    for (int k = 0; k < crops.size(); k++) {
      for (int s = 0; s < calendar.slots().size(); s++) {
        addSowing(courses, k, crops.get(k), s, at, calendar);
      }
    }
    return courses;
  }

  private static void addSowing(
      List<Course> courses, int k, Crop crop, int sowSlot, Surroundings at, TaskCalendar calendar) {
    LocalDate sown = calendar.slot(sowSlot);
    Optional<LocalDate> emergence = Question.emergence(crop, sown, at.cellMeanC());
    if (emergence.isEmpty()) {
      return;
    }
    LocalDate up = emergence.get();
    int nurserySlot = calendar.slotFrom(up.plusDays(1));
    if (nurserySlot < 0) {
      return;
    }
    int before = nurserySlot - 1;
    for (int age : BENCH_AGES) {
      int benchSlot = calendar.slotFrom(up.plusDays(age));
      if (benchSlot <= before || calendar.slot(benchSlot).isAfter(up.plusDays(OLDEST_SEEDLING))) {
        continue;
      }
      before = benchSlot;
      for (int g = 0; g < at.groups().size(); g++) {
        Course c = Course.of(k, crop, g, sowSlot, nurserySlot, benchSlot, up, at, calendar);
        if (c.bowls.length > 0) {
          courses.add(c);
        }
      }
    }
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
      if (fresh >= c.rule.liftFromG() || c.mayPick(t, fresh)) {
        return Optional.of(c.bowls[t]);
      }
      if (t + 1 < c.bowls.length) {
        state = c.grow(state, c.bowlDay[t] + 1, c.bowlDay[t + 1] + 1);
      }
    }
    return Optional.empty();
  }
}
