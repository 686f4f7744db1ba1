package sallet.plan.check;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import sallet.plan.BowlWeek;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;
import sallet.plan.SowingPlan;

/** Copies of records with one thing changed. */
final class Edit {
  private Edit() {}

  /** A record with one component replaced. */
  @SuppressWarnings("unchecked")
  static <R extends Record> R with(R record, String component, Object value) {
    try {
      RecordComponent[] components = record.getClass().getRecordComponents();
      Class<?>[] types = new Class<?>[components.length];
      Object[] values = new Object[components.length];
      boolean known = false;
      for (int i = 0; i < components.length; i++) {
        boolean replaced = components[i].getName().equals(component);
        known |= replaced;
        types[i] = components[i].getType();
        values[i] = replaced ? value : components[i].getAccessor().invoke(record);
      }
      if (!known) {
        throw new IllegalArgumentException(record.getClass() + " has no " + component);
      }
      return (R) record.getClass().getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A plan with the week of a bowl day changed. */
  static SowingPlan week(SowingPlan plan, LocalDate bowlDay, UnaryOperator<BowlWeek> edit) {
    return with(
        plan, "weeks", replaced(plan.weeks(), week -> week.bowlDay().equals(bowlDay), edit));
  }

  /** A plan with a batch changed. */
  static SowingPlan batch(SowingPlan plan, String batch, UnaryOperator<Sowing> edit) {
    return with(
        plan, "sowings", replaced(plan.sowings(), sown -> sown.batch().equals(batch), edit));
  }

  /** A plan with the first course of a batch changed. */
  static SowingPlan course(SowingPlan plan, String batch, UnaryOperator<Course> edit) {
    return batch(
        plan,
        batch,
        sowing -> {
          List<Course> courses = new ArrayList<>(sowing.courses());
          courses.set(0, edit.apply(courses.get(0)));
          return with(sowing, "courses", courses);
        });
  }

  /** A plan with a pick of the first course of a batch changed. */
  static SowingPlan pick(SowingPlan plan, String batch, LocalDate day, UnaryOperator<Pick> edit) {
    return course(
        plan,
        batch,
        course -> with(course, "picks", replaced(course.picks(), p -> p.date().equals(day), edit)));
  }

  /** A list with the one element that fits changed. */
  static <T> List<T> replaced(List<T> list, Predicate<T> which, UnaryOperator<T> edit) {
    List<T> copy = new ArrayList<>(list);
    int at = copy.indexOf(list.stream().filter(which).findFirst().orElseThrow());
    copy.set(at, edit.apply(copy.get(at)));
    return copy;
  }

  /** A list back to front. */
  static <T> List<T> reversed(List<T> list) {
    List<T> copy = new ArrayList<>(list);
    Collections.reverse(copy);
    return copy;
  }
}
