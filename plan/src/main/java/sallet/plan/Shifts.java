package sallet.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * Small changes to whole plants: one near a bowl that loses is sown or moved a little sooner or
 * later, ends sooner or later, gives way to another kind, goes or comes. The plan with fractions
 * likes a third of a large plant; a whole small one is near to it.
 */
final class Shifts {
  /** Farthest a sowing is shifted, in task days. */
  private static final int SOWING_REACH = 4;

  /** Farthest an end is shifted, in bowls. */
  private static final int END_REACH = 3;

  /** Bowls before and after a loss whose plants may change. */
  private static final int BOWL_REACH = 2;

  private static final double GOES = 0.15;
  private static final double COMES = 0.15;
  private static final double OTHER_KIND = 0.2;

  private final Instance instance;
  private final RandomGenerator random;
  private final List<Course> all;
  private final Map<List<Integer>, List<Course>> bySowing = new HashMap<>();

  Shifts(Instance instance, List<Course> courses, RandomGenerator random) {
    this.instance = instance;
    this.random = random;
    this.all = courses;
    for (Course c : courses) {
      bySowing
          .computeIfAbsent(key(c.standing, c.cropIndex, c.sowSlot), k -> new ArrayList<>())
          .add(c);
    }
  }

  private static List<Integer> key(int standing, int crop, int sowSlot) {
    return List.of(standing, crop, sowSlot);
  }

  /** Changed plants; empty when the change drawn does not fit. */
  Optional<Map<Life.Skeleton, Integer>> of(Map<Life.Skeleton, Integer> counts, int bowl) {
    List<Life.Skeleton> near = near(counts, bowl);
    Map<Life.Skeleton, Integer> changed = new LinkedHashMap<>(counts);
    double draw = random.nextDouble();
    Optional<Life.Skeleton> old =
        near.isEmpty() || draw < COMES
            ? Optional.empty()
            : Optional.of(near.get(random.nextInt(near.size())));
    old.ifPresent(s -> changed.computeIfPresent(s, (k, n) -> n > 1 ? n - 1 : null));
    if (old.isPresent() && draw > 1 - GOES) {
      return Optional.of(changed);
    }
    Optional<Life.Skeleton> fresh = old.isPresent() ? varied(old.get()) : anyAt(bowl);
    FreePlaces free = new FreePlaces(instance);
    changed.forEach(free::take);
    if (fresh.isEmpty() || fresh.equals(old) || !free.fits(fresh.get())) {
      return Optional.empty();
    }
    changed.merge(fresh.get(), 1, Integer::sum);
    return Optional.of(changed);
  }

  private static List<Life.Skeleton> near(Map<Life.Skeleton, Integer> counts, int bowl) {
    List<Life.Skeleton> near = new ArrayList<>();
    counts.forEach(
        (s, n) -> {
          int[] bowls = s.course().bowls;
          if (bowls[s.end()] >= bowl - BOWL_REACH && bowls[0] <= bowl + BOWL_REACH) {
            near.addAll(Collections.nCopies(n, s));
          }
        });
    return near;
  }

  /** A life a little different from one. */
  private Optional<Life.Skeleton> varied(Life.Skeleton s) {
    Course c = s.course();
    boolean sown = c.standing == Course.NEW;
    int crop =
        sown && random.nextDouble() < OTHER_KIND ? random.nextInt(instance.sowable()) : c.cropIndex;
    int slot = sown ? c.sowSlot + random.nextInt(-SOWING_REACH, SOWING_REACH + 1) : c.sowSlot;
    List<Course> choices = bySowing.getOrDefault(key(c.standing, crop, slot), List.of());
    if (choices.isEmpty()) {
      return Optional.empty();
    }
    Course other = choices.get(random.nextInt(choices.size()));
    int bowl = c.bowls[s.end()] + random.nextInt(-END_REACH, END_REACH + 1);
    return Optional.of(endingAt(other, bowl));
  }

  /** Any life that can serve a bowl. */
  private Optional<Life.Skeleton> anyAt(int bowl) {
    List<Course> serving =
        all.stream()
            .filter(c -> c.bowls[0] <= bowl && c.bowls[c.bowls.length - 1] >= bowl)
            .toList();
    return serving.isEmpty()
        ? Optional.empty()
        : Optional.of(
            endingAt(
                serving.get(random.nextInt(serving.size())), bowl + random.nextInt(END_REACH + 1)));
  }

  private static Life.Skeleton endingAt(Course course, int bowl) {
    int end = 0;
    while (end + 1 < course.bowls.length && course.bowls[end + 1] <= bowl) {
      end++;
    }
    return new Life.Skeleton(course, end, true);
  }
}
