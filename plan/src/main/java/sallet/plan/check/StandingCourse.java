package sallet.plan.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sallet.crop.Stay;
import sallet.household.Nursery;
import sallet.plan.Present;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.SowingPlan.PotGroup;

/**
 * What a plan does with some of the plants that stand already.
 *
 * @param where part of the plan
 * @param course what becomes of them
 * @param group which of the groups that stand they are of
 * @param plants what they are now
 */
record StandingCourse(String where, Course course, int group, Present.Plants plants) {

  /** The plan's courses with the plants they are of; courses of no plants are left out. */
  static List<StandingCourse> of(List<Sowing> standing, Present present) {
    List<StandingCourse> all = new ArrayList<>();
    for (Sowing batch : standing) {
      List<Group> groups =
          IntStream.range(0, present.plants().size())
              .filter(g -> present.plants().get(g).batch().equals(batch.batch()))
              .mapToObj(g -> new Group(g, present.plants().get(g)))
              .toList();
      for (int i = 0; i < batch.courses().size(); i++) {
        String where = MoveCheck.where(batch, i);
        Course course = batch.courses().get(i);
        groups.stream()
            .filter(g -> g.takes(course))
            .findFirst()
            .ifPresent(g -> all.add(g.take(course, where)));
      }
    }
    return all;
  }

  /** Plants that stand, taken by one course after the other. */
  private static final class Group {
    final int index;
    final Present.Plants plants;
    int left;

    Group(int index, Present.Plants plants) {
      this.index = index;
      this.plants = plants;
      this.left = plants.count();
    }

    boolean takes(Course course) {
      return course.plants() >= 1
          && course.plants() <= left
          && (plants.toBench().isEmpty() || plants.pots().containsAll(course.pots()));
    }

    StandingCourse take(Course course, String where) {
      left -= course.plants();
      return new StandingCourse(where, course, index, plants);
    }
  }

  /** Whether the plants are cleared away at once, without a pick. */
  boolean clearedOn(LocalDate day) {
    return !course.lifted() && course.picks().isEmpty() && course.end().equals(day);
  }

  /** Whether they have come up by a day. */
  boolean upOn(LocalDate day) {
    return !plants.emergence().isAfter(day);
  }

  /** Where they have stood, and will if they go on. */
  List<Stay> stays(Subject subject) {
    PotGroup group = subject.plan().groups().get(course.group());
    if (!clearedOn(subject.calendar().from())) {
      return LifeCheck.stays(subject, group, plants.sown(), course.toNursery(), course.toBench());
    }
    Nursery nursery = subject.household().nursery();
    List<Stay> stays = new ArrayList<>();
    stays.add(new Stay(plants.sown(), subject.surroundings().nursery(), nursery.cellAreaCm2()));
    plants
        .toNursery()
        .map(day -> new Stay(day, subject.surroundings().nursery(), nursery.placeAreaCm2()))
        .ifPresent(stays::add);
    plants
        .toBench()
        .map(day -> new Stay(day, subject.surroundings().bench(group), group.siteCm2()))
        .ifPresent(stays::add);
    return stays;
  }
}
