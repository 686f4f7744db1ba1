package sallet.plan.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;

/** When and how much is picked from each plant; its grams are the matter of {@link LifeCheck}. */
final class PickCheck implements Check {
  /** Least number of days between two picks of one plant. */
  private static final int INTERVAL_DAYS = 7;

  private static final double SHARE_TOLERANCE = 1e-6;

  @Override
  public void examine(Subject subject, List<Fault> faults) {
    for (Sowing sowing : subject.plan().batches()) {
      Optional<HarvestRule> rule = subject.catalogue().find(sowing.crop()).flatMap(Crop::harvest);
      for (int i = 0; i < sowing.courses().size(); i++) {
        Course course = sowing.courses().get(i);
        String where = MoveCheck.where(sowing, i);
        for (Pick pick : course.picks()) {
          day(subject, course, pick, where, faults);
        }
        for (Pick pick : leafPicks(course)) {
          leaves(sowing, rule, pick, where, faults);
        }
        interval(course, where, faults);
        lift(course, where, faults);
      }
    }
  }

  /** The picks that leave the plant standing. */
  static List<Pick> leafPicks(Course course) {
    List<Pick> picks = course.picks();
    return course.lifted() && !picks.isEmpty() ? picks.subList(0, picks.size() - 1) : picks;
  }

  static String where(String course, Pick pick) {
    return course + ", pick " + pick.date();
  }

  private static void day(
      Subject subject, Course course, Pick pick, String where, List<Fault> faults) {
    if (!subject.calendar().isPickDay(pick.date())
        || pick.date().isBefore(course.toBench())
        || pick.date().isAfter(course.end())) {
      faults.add(
          new Fault(
              Rule.PICK_DAY,
              where(where, pick),
              "date",
              "a bowl day with somebody at home from " + course.toBench() + " to " + course.end(),
              pick.date().toString()));
    }
  }

  private static void leaves(
      Sowing sowing, Optional<HarvestRule> rule, Pick pick, String where, List<Fault> faults) {
    if (rule.isPresent() && !rule.get().leafPick()) {
      faults.add(
          new Fault(
              Rule.PICK_KIND, where(where, pick), "way of harvest", "lifted whole", "leaves"));
    }
    int age = (int) ChronoUnit.DAYS.between(sowing.emergence(), pick.date());
    if (age < HarvestRule.FIRST_PICK_DAYS) {
      faults.add(
          Fault.below(
              Rule.PICK_AGE,
              where(where, pick),
              "days after emergence",
              HarvestRule.FIRST_PICK_DAYS,
              age));
    }
    if (!(pick.share() > 0 && pick.share() <= HarvestRule.LARGEST_PICK + SHARE_TOLERANCE)) {
      faults.add(
          new Fault(
              Rule.PICK_SHARE,
              where(where, pick),
              "share",
              "above 0, at most " + HarvestRule.LARGEST_PICK,
              "" + pick.share()));
    }
  }

  private static void interval(Course course, String where, List<Fault> faults) {
    for (int i = 1; i < course.picks().size(); i++) {
      LocalDate before = course.picks().get(i - 1).date();
      Pick pick = course.picks().get(i);
      if (pick.date().isBefore(before.plusDays(INTERVAL_DAYS))) {
        faults.add(
            new Fault(
                Rule.PICK_INTERVAL,
                where(where, pick),
                "date",
                "from " + before.plusDays(INTERVAL_DAYS) + " on",
                pick.date().toString()));
      }
    }
  }

  private static void lift(Course course, String where, List<Fault> faults) {
    if (!course.lifted()) {
      return;
    }
    List<Pick> picks = course.picks();
    if (picks.isEmpty()) {
      faults.add(new Fault(Rule.LIFT, where, "last pick", "the lift on " + course.end(), "none"));
      return;
    }
    Pick last = picks.get(picks.size() - 1);
    if (!last.date().equals(course.end()) || last.share() != 1) {
      faults.add(
          new Fault(
              Rule.LIFT,
              where,
              "last pick",
              "all of it on " + course.end(),
              last.share() + " of it on " + last.date()));
    }
  }
}
