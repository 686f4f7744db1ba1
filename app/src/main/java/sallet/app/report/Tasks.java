package sallet.app.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import sallet.plan.Sowing;
import sallet.plan.Sowing.Course;
import sallet.plan.Sowing.Pick;
import sallet.plan.SowingPlan;

/**
 * The hand work of a plan.
 *
 * <p>The tasks of a day stand in an order that can be carried out as listed: first plants that
 * leave their pots are lifted or cleared (a last pick from a plant that is cleared comes before
 * it), then seedlings move into the free pots, then others into the free nursery places, then seeds
 * go into the free cells, and last the outer leaves are picked for the bowl. So every move and
 * sowing comes before the picks from standing plants.
 */
public final class Tasks {
  private static final int LAST_PICK = 0;
  private static final int LEAVE_POT = 1;
  private static final int FILL_POT = 2;
  private static final int FILL_NURSERY = 3;
  private static final int FILL_CELLS = 4;
  private static final int PICK = 5;

  private final Map<LocalDate, Map<String, String>> cropMovingIn = new HashMap<>();
  private final List<Step> steps = new ArrayList<>();

  private record Step(int order, Task task) {}

  private Tasks(SowingPlan plan) {
    for (Sowing sowing : plan.batches()) {
      for (Course course : sowing.courses()) {
        Map<String, String> day =
            cropMovingIn.computeIfAbsent(course.toBench(), d -> new HashMap<>());
        course.pots().forEach(pot -> day.put(pot, sowing.crop()));
      }
    }
    for (Sowing sowing : plan.sowings()) {
      sow(sowing);
    }
    for (Sowing sowing : plan.batches()) {
      List<Course> needed = sowing.courses().stream().filter(c -> !c.spare(plan.from())).toList();
      moveToNursery(sowing, needed);
      moveToPots(sowing, needed);
      needed.forEach(course -> harvest(sowing, course));
    }
    for (Sowing sowing : plan.standing()) {
      sowing.courses().stream()
          .filter(c -> c.spare(plan.from()))
          .forEach(c -> spare(plan.from(), sowing, c));
    }
    steps.removeIf(step -> step.task().date().isBefore(plan.from()));
  }

  /** All tasks of the plan, in order of date and, within a day, in working order. */
  public static List<Task> of(SowingPlan plan) {
    return new Tasks(plan)
        .steps.stream()
            .sorted(
                Comparator.comparing((Step step) -> step.task().date())
                    .thenComparingInt(Step::order))
            .map(Step::task)
            .toList();
  }

  /** Tasks of {@code days} days from {@code from} on, by date. */
  public static SortedMap<LocalDate, List<Task>> byDay(List<Task> tasks, LocalDate from, int days) {
    SortedMap<LocalDate, List<Task>> byDay = new TreeMap<>();
    LocalDate until = from.plusDays(days);
    for (Task task : tasks) {
      if (!task.date().isBefore(from) && task.date().isBefore(until)) {
        byDay.computeIfAbsent(task.date(), d -> new ArrayList<>()).add(task);
      }
    }
    return byDay;
  }

  /** Time the tasks take together, min. */
  public static int minutes(List<Task> tasks) {
    return tasks.stream().mapToInt(Task::minutes).sum();
  }

  private void sow(Sowing s) {
    int each = Math.max(1, s.seeds() / Math.max(1, s.cells()));
    String text =
        "Sow %s of %s, %s a cell, %s (batch %s)."
            .formatted(
                Words.count(s.seeds(), "seed"),
                Words.spoken(s.crop()),
                each == 1 ? "one" : each,
                Words.count(s.cells(), "cell"),
                s.batch());
    add(
        FILL_CELLS,
        new Task(
            s.date(),
            Task.Event.SOW,
            s.batch(),
            s.crop(),
            s.seeds(),
            Integer.toString(s.cells()),
            0,
            text,
            Minutes.sowing(s.cells())));
  }

  private void moveToNursery(Sowing s, List<Course> courses) {
    Map<LocalDate, Integer> plants = new LinkedHashMap<>();
    courses.stream()
        .filter(Course::throughNursery)
        .forEach(c -> plants.merge(c.toNursery(), c.plants(), Integer::sum));
    plants.forEach(
        (date, count) -> {
          String text =
              "Move the %s of %s from cell to nursery (batch %s)."
                  .formatted(strongest(s, count), Words.spoken(s.crop()), s.batch());
          add(
              FILL_NURSERY,
              new Task(
                  date,
                  Task.Event.MOVE_TO_NURSERY,
                  s.batch(),
                  s.crop(),
                  count,
                  "nursery",
                  0,
                  text,
                  Minutes.moving(count)));
        });
  }

  private static String strongest(Sowing s, int count) {
    String one = s.seeds() > s.cells() ? "clump" : "seedling";
    return count == 1 ? "strongest " + one : count + " strongest " + one + "s";
  }

  private void moveToPots(Sowing s, List<Course> all) {
    Map<LocalDate, List<Course>> moves = new LinkedHashMap<>();
    all.forEach(c -> moves.computeIfAbsent(c.toBench(), d -> new ArrayList<>()).add(c));
    moves.forEach(
        (date, courses) -> {
          int count = courses.stream().mapToInt(Course::plants).sum();
          List<String> pots = courses.stream().flatMap(c -> c.pots().stream()).toList();
          String text =
              "Move %s of %s from the %s into %s (batch %s)."
                  .formatted(
                      Words.count(count, s.seeds() > s.cells() ? "clump" : "seedling"),
                      Words.spoken(s.crop()),
                      courses.get(0).throughNursery() ? "nursery" : "cells",
                      Words.list(pots),
                      s.batch());
          add(
              FILL_POT,
              new Task(
                  date,
                  Task.Event.MOVE_TO_POT,
                  s.batch(),
                  s.crop(),
                  count,
                  String.join("+", pots),
                  0,
                  text,
                  Minutes.moving(count)));
        });
  }

  private void harvest(Sowing s, Course course) {
    double lifted = 0;
    for (Pick pick : course.picks()) {
      if (course.lifted() && pick.date().equals(course.end())) {
        lifted += pick.gramsPerPlant();
      } else {
        pick(s, course, pick);
      }
    }
    leave(s, course, lifted);
  }

  private void pick(Sowing s, Course c, Pick pick) {
    double grams = pick.gramsPerPlant() * c.plants();
    String amount =
        c.plants() == 1
            ? "about " + Words.grams(grams)
            : "about %s each, %s in all"
                .formatted(Words.grams(pick.gramsPerPlant()), Words.grams(grams));
    String text =
        "Pick outer leaves from %s (%s): %s, no more than %s of the leaf."
            .formatted(
                Words.list(c.pots()), Words.spoken(s.crop()), amount, Words.percent(pick.share()));
    add(
        pick.date().equals(c.end()) ? LAST_PICK : PICK,
        new Task(
            pick.date(),
            Task.Event.PICK,
            s.batch(),
            s.crop(),
            c.plants(),
            String.join("+", c.pots()),
            grams,
            text,
            Minutes.picking(c.plants())));
  }

  private void leave(Sowing s, Course c, double gramsPerPlant) {
    if (c.outlivesPlan()) {
      return;
    }
    double grams = gramsPerPlant * c.plants();
    String pots = Words.list(c.pots());
    String start =
        c.lifted()
            ? "Lift %s (%s, about %s)".formatted(pots, Words.spoken(s.crop()), Words.grams(grams))
            : "Clear %s (%s, no longer needed%s)"
                .formatted(pots, Words.spoken(s.crop()), thrownAway(c));
    add(
        LEAVE_POT,
        new Task(
            c.end(),
            c.lifted() ? Task.Event.LIFT : Task.Event.CLEAR,
            s.batch(),
            s.crop(),
            c.plants(),
            String.join("+", c.pots()),
            grams,
            start + next(c),
            Minutes.lifting(c.plants())));
  }

  /**
   * Plants no bowl needs: on the bench they stand on as a reserve until another plant moves into
   * their pot; seedlings are thrown away.
   */
  private void spare(LocalDate firstDay, Sowing s, Course c) {
    if (c.pots().isEmpty()) {
      String text =
          "Throw away %s of %s that no pot is planned for (batch %s)."
              .formatted(Words.count(c.plants(), "seedling"), Words.spoken(s.crop()), s.batch());
      clear(firstDay, s, c.plants(), "", text);
    }
    for (String pot : c.pots()) {
      Optional<LocalDate> wanted =
          cropMovingIn.entrySet().stream()
              .filter(day -> day.getValue().containsKey(pot) && !day.getKey().isBefore(firstDay))
              .map(Map.Entry::getKey)
              .min(Comparator.naturalOrder());
      wanted.ifPresent(
          day ->
              clear(
                  day,
                  s,
                  1,
                  pot,
                  "Clear %s (%s, a reserve no bowl needed; eat what you can) for %s."
                      .formatted(
                          pot,
                          Words.spoken(s.crop()),
                          Words.spoken(
                              cropMovingIn.getOrDefault(day, Map.of()).getOrDefault(pot, "")))));
    }
  }

  private void clear(LocalDate day, Sowing s, int plants, String place, String text) {
    add(
        LEAVE_POT,
        new Task(
            day,
            Task.Event.CLEAR,
            s.batch(),
            s.crop(),
            plants,
            place,
            0,
            text,
            Minutes.lifting(plants)));
  }

  private static String thrownAway(Course c) {
    double grams = c.clearedGrams() * c.plants();
    return grams < 0.5
        ? ""
        : ", about " + Words.grams(grams) + " are left: eat what you can, compost the rest";
  }

  /** What goes into the pots on the same day. */
  private String next(Course c) {
    Map<String, String> movingIn = cropMovingIn.getOrDefault(c.end(), Map.of());
    Map<String, List<String>> potsOfCrop = new LinkedHashMap<>();
    for (String pot : c.pots()) {
      String crop = movingIn.get(pot);
      if (crop != null) {
        potsOfCrop.computeIfAbsent(crop, k -> new ArrayList<>()).add(pot);
      }
    }
    if (potsOfCrop.isEmpty()) {
      return ".";
    }
    List<String> parts = new ArrayList<>();
    potsOfCrop.forEach((crop, pots) -> parts.add(Words.list(pots) + " for " + Words.spoken(crop)));
    return "; free " + Words.list(parts) + " today.";
  }

  private void add(int order, Task task) {
    steps.add(new Step(order, task));
  }
}
