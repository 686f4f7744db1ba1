package sallet.plan.check;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.Stay;
import sallet.household.Nursery;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;
import sallet.plan.SowingPlan.PotGroup;

/**
 * Grows each plant again and compares masses, grams and the last day. Lives whose dates are out of
 * order are left to the checks of dates.
 */
final class LifeCheck implements Check {
  /** Days after the plan's first on which plants past their time may still be eaten. */
  static final int GRACE_DAYS = 6;

  @Override
  public void examine(Subject subject, List<Fault> faults) {
    for (Sowing sowing : subject.plan().sowings()) {
      Optional<Crop> crop = subject.crop(sowing.crop());
      for (int i = 0; i < sowing.courses().size(); i++) {
        Course course = sowing.courses().get(i);
        if (crop.isPresent() && canGrow(subject, sowing, course)) {
          sown(subject, sowing, course, crop.get(), MoveCheck.where(sowing, i), faults);
        }
      }
    }
    subject.standing().forEach(standing -> standing(subject, standing, faults));
  }

  private static void standing(Subject subject, StandingCourse standing, List<Fault> faults) {
    Course course = standing.course();
    LocalDate from = subject.calendar().from();
    Optional<Crop> crop = subject.crop(standing.plants().crop());
    boolean gone = standing.clearedOn(from);
    if (crop.isEmpty() || !inOrder(subject, course, from)) {
      return;
    }
    if (gone && !standing.upOn(from)) {
      cleared(0, course, standing.where(), faults);
      return;
    }
    if (!gone && course.toNursery().isBefore(standing.plants().emergence())) {
      return;
    }
    Life.Start start = Life.Start.of(standing.plants(), crop.get(), from);
    List<Stay> stays = standing.stays(subject);
    if (!gone) {
      LocalDate grace = standing.plants().toBench().isPresent() ? from.plusDays(GRACE_DAYS) : from;
      lastDay(crop.get(), start.emergence(), course, stays, grace, standing.where(), faults);
    }
    examine(subject, start, course, crop.get(), stays, standing.where(), faults);
  }

  /** Whether the days to come are in order. */
  private static boolean inOrder(Subject subject, Course course, LocalDate first) {
    return course.group() >= 0
        && course.group() < subject.plan().groups().size()
        && !course.toBench().isBefore(course.toNursery())
        && !course.end().isBefore(course.toBench())
        && !course.end().isAfter(subject.calendar().last())
        && !course.end().isBefore(first)
        && course.picks().stream().allMatch(pick -> pick.share() >= 0 && pick.share() <= 1)
        && course.picks().stream()
            .map(Pick::date)
            .allMatch(day -> !day.isBefore(first) && !day.isAfter(course.end()));
  }

  private static boolean canGrow(Subject subject, Sowing sowing, Course course) {
    return inOrder(subject, course, sowing.emergence())
        && subject.calendar().holds(sowing.date())
        && !sowing.emergence().isBefore(sowing.date())
        && !course.toNursery().isBefore(sowing.emergence());
  }

  private static void sown(
      Subject subject, Sowing sowing, Course course, Crop crop, String where, List<Fault> faults) {
    PotGroup group = subject.plan().groups().get(course.group());
    List<Stay> stays = stays(subject, group, sowing.date(), course.toNursery(), course.toBench());
    lastDay(crop, sowing.emergence(), course, stays, LocalDate.MIN, where, faults);
    Life.Start start = Life.Start.atEmergence(crop, sowing.emergence(), subject.vigour(crop));
    examine(subject, start, course, crop, stays, where, faults);
  }

  private static void examine(
      Subject subject,
      Life.Start start,
      Course course,
      Crop crop,
      List<Stay> stays,
      String where,
      List<Fault> faults) {
    Map<LocalDate, Double> shares = new HashMap<>();
    course.picks().forEach(pick -> shares.merge(pick.date(), pick.share(), Double::sum));
    Life life = Life.grow(crop, start, stays, course.end(), shares);
    masses(start.emergence(), course, crop.harvest().orElseThrow(), life, where, faults);
    grams(course, life, subject.calendar().last(), where, faults);
  }

  /** Cell, nursery place and pot of one plant. */
  static List<Stay> stays(
      Subject subject, PotGroup group, LocalDate sown, LocalDate toNursery, LocalDate toBench) {
    Nursery nursery = subject.household().nursery();
    return List.of(
        new Stay(sown, subject.surroundings().nursery(), nursery.cellAreaCm2()),
        new Stay(toNursery, subject.surroundings().nursery(), nursery.placeAreaCm2()),
        new Stay(toBench, subject.surroundings().bench(group), group.siteCm2()));
  }

  /**
   * @param grace a day until which the plant may stand in any case
   */
  private static void lastDay(
      Crop crop,
      LocalDate emergence,
      Course course,
      List<Stay> stays,
      LocalDate grace,
      String where,
      List<Fault> faults) {
    LocalDate last = Life.lastBenchDay(crop, emergence, stays, course.end());
    if (course.end().isAfter(last) && course.end().isAfter(grace)) {
      faults.add(
          new Fault(Rule.LAST_DAY, where, "end", "at most " + last, course.end().toString()));
    }
  }

  private static void masses(
      LocalDate emergence,
      Course course,
      HarvestRule rule,
      Life life,
      String where,
      List<Fault> faults) {
    for (Pick pick : PickCheck.leafPicks(course)) {
      double standing = life.standingG(pick.date());
      if (!(standing >= HarvestRule.PICK_FROM_G * (1 - Close.RELATIVE))) {
        faults.add(
            Fault.below(
                Rule.PICK_MASS,
                PickCheck.where(where, pick),
                "standing, g",
                HarvestRule.PICK_FROM_G,
                standing));
      }
      double left = (1 - pick.share()) * life.leaves(pick.date());
      if (!(left >= HarvestRule.FEWEST_LEAVES * (1 - Close.RELATIVE))) {
        faults.add(
            Fault.below(
                Rule.LEAF_FLOOR,
                PickCheck.where(where, pick),
                "leaves left",
                HarvestRule.FEWEST_LEAVES,
                left));
      }
    }
    double atEnd = life.plantG(course.end());
    if (course.lifted()
        && !(atEnd >= rule.liftFromG() * (1 - Close.RELATIVE))
        && !mayBePicked(emergence, course, rule, life)) {
      faults.add(
          Fault.below(Rule.LIFT_MASS, where, "standing at the lift, g", rule.liftFromG(), atEnd));
    }
  }

  private static boolean mayBePicked(
      LocalDate emergence, Course course, HarvestRule rule, Life life) {
    return rule.leafPick()
        && !course.end().isBefore(emergence.plusDays(HarvestRule.FIRST_PICK_DAYS))
        && life.standingG(course.end()) >= HarvestRule.PICK_FROM_G * (1 - Close.RELATIVE);
  }

  private static void grams(
      Course course, Life life, LocalDate lastBowl, String where, List<Fault> faults) {
    for (Pick pick : course.picks()) {
      double grams = life.pickGrams(pick.date(), pick.share());
      if (!Close.same(grams, pick.gramsPerPlant())) {
        faults.add(
            Fault.number(
                Rule.PICK_GRAMS,
                PickCheck.where(where, pick),
                "edible grams a plant",
                grams,
                pick.gramsPerPlant()));
      }
    }
    if (course.outlivesPlan() && course.end().equals(lastBowl)) {
      return;
    }
    cleared(course.lifted() ? 0 : life.leftGrams(), course, where, faults);
  }

  private static void cleared(double cleared, Course course, String where, List<Fault> faults) {
    if (!Close.same(cleared, course.clearedGrams())) {
      faults.add(
          Fault.number(
              Rule.CLEARED_GRAMS,
              where,
              "edible grams a plant cleared away",
              cleared,
              course.clearedGrams()));
    }
  }
}
