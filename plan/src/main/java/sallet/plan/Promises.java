package sallet.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import sallet.plan.linear.LinearProgramme;

/**
 * Sowings the last plan promised for the coming days. Each plant sown more or fewer than promised
 * costs points, so that a new plan changes them only for something.
 *
 * <pre>
 * promise k,i   plants of the crop sown in the slot - more + fewer = promised
 * </pre>
 */
final class Promises {
  /** Days for which sowings and moves were promised. Judgement. */
  private static final int SOWING_DAYS = 14;

  /** Days for which it was promised which plants end. Judgement. */
  private static final int ENDING_DAYS = 7;

  private final Instance instance;
  private final Map<Batch, Integer> plants = new LinkedHashMap<>();
  private final Map<Life.Skeleton, Integer> kept;

  /** A crop and the slot it is sown in. */
  record Batch(int crop, int slot) {
    static Batch of(Course c) {
      return new Batch(c.cropIndex, c.sowSlot);
    }
  }

  /**
   * @param courses all there are to choose from
   */
  Promises(Instance instance, List<Course> courses) {
    this.instance = instance;
    this.kept = kept(courses);
    if (instance.promises().isEmpty()) {
      return;
    }
    LocalDate until = instance.calendar().from().plusDays(SOWING_DAYS);
    for (int k = 0; k < instance.sowable(); k++) {
      for (int i = 0; i < instance.calendar().slots().size(); i++) {
        if (instance.calendar().slot(i).isBefore(until)) {
          plants.put(new Batch(k, i), promised(k, instance.calendar().slot(i)));
        }
      }
    }
  }

  private int promised(int crop, LocalDate day) {
    String name = instance.crops().get(crop).name();
    return instance.promises().stream()
        .filter(p -> p.batch().isEmpty() && p.crop().equals(name) && p.sown().equals(day))
        .mapToInt(Present.Promise::count)
        .sum();
  }

  /** Makes the rows; returns their numbers. */
  Map<Batch, Integer> rows(LinearProgramme programme) {
    Map<Batch, Integer> rows = new HashMap<>();
    plants.forEach(
        (batch, promised) -> {
          int row = programme.row(promised, promised);
          programme.set(row, programme.column(instance.changePoints()), -1);
          programme.set(row, programme.column(instance.changePoints()), 1);
          rows.put(batch, row);
        });
    return rows;
  }

  /** Plants sown more or fewer than promised, and standing plants moved or ended otherwise. */
  int changes(Map<Life.Skeleton, Integer> counts) {
    Map<Batch, Integer> open = new HashMap<>(plants);
    counts.forEach(
        (s, n) -> {
          if (s.course().standing == Course.NEW) {
            open.computeIfPresent(Batch.of(s.course()), (batch, left) -> left - n);
          }
        });
    int sown = open.values().stream().mapToInt(Math::abs).sum();
    Map<Going, Integer> promised = going(kept);
    Map<Going, Integer> now = going(counts);
    int dropped = more(promised, now);
    return sown + (unchanged() ? Math.max(dropped, more(now, promised)) : dropped);
  }

  /** Whether nothing was recorded since the last plan, so that all it meant to do is to stay. */
  private boolean unchanged() {
    return !instance.promises().isEmpty() && instance.changePoints() == Weights.FIRM_CHANGE;
  }

  /** Plants of one that the other lacks. */
  private static int more(Map<Going, Integer> one, Map<Going, Integer> other) {
    return one.entrySet().stream()
        .mapToInt(e -> Math.max(0, e.getValue() - other.getOrDefault(e.getKey(), 0)))
        .sum();
  }

  /**
   * What is to become of plants that stand already. Seedlings of a batch are alike to the grower,
   * plants in pots are not.
   *
   * @param plants the very plants, or -1 for seedlings
   */
  private record Going(
      String batch, int plants, int group, int benchSlot, int endSlot, boolean lifted) {}

  /** Plants that stand already and are to be moved or ended in the coming days. */
  private Map<Going, Integer> going(Map<Life.Skeleton, Integer> counts) {
    Map<Going, Integer> going = new HashMap<>();
    counts.forEach(
        (s, n) -> {
          if (near(s)) {
            Course c = s.course();
            StandingPlants plants = instance.standing().get(c.standing);
            going.merge(
                new Going(
                    plants.batch(),
                    plants.toBench().isPresent() ? c.standing : -1,
                    c.group,
                    c.benchSlot,
                    s.endSlot(),
                    s.lifted()),
                n,
                Integer::sum);
          }
        });
    return going;
  }

  /** Whether plants that stand already are to be moved or ended in the coming days. */
  private boolean near(Life.Skeleton s) {
    TaskCalendar calendar = instance.calendar();
    Course c = s.course();
    return c.standing != Course.NEW
        && (calendar.slot(s.endSlot()).isBefore(calendar.from().plusDays(ENDING_DAYS))
            || (instance.standing().get(c.standing).toBench().isEmpty()
                && calendar.slot(c.benchSlot).isBefore(calendar.from().plusDays(SOWING_DAYS))));
  }

  /**
   * Edible grams the last plan meant each of these plants to give at the next bowl; empty when
   * something was recorded since, for then the picks are chosen anew.
   */
  OptionalDouble nextPick(Life.Skeleton s) {
    Course c = s.course();
    if (!unchanged() || c.standing == Course.NEW || c.bowls[0] != 0) {
      return OptionalDouble.empty();
    }
    List<Present.Promise> own =
        instance.promises().stream()
            .filter(p -> isOneOf(instance.standing().get(c.standing), p))
            .toList();
    List<Present.Promise> same =
        own.stream().filter(p -> skeleton(p, c).filter(s::equals).isPresent()).toList();
    LocalDate bowl = instance.calendar().bowl(0);
    return (same.isEmpty() ? own : same)
        .stream()
            .flatMapToDouble(
                p ->
                    DoubleStream.generate(() -> p.picks().getOrDefault(bowl, 0.0)).limit(p.count()))
            .average();
  }

  /** The last plan's plants as far as they still can live like that. */
  Map<Life.Skeleton, Integer> kept() {
    return kept;
  }

  private Map<Life.Skeleton, Integer> kept(List<Course> courses) {
    Map<Life.Skeleton, Integer> counts = new LinkedHashMap<>();
    FreePlaces free = new FreePlaces(instance);
    for (Present.Promise p : instance.promises()) {
      int left = p.count();
      for (Life.Skeleton s : like(p, courses, free)) {
        for (; left > 0 && free.fits(s); left--) {
          free.take(s, 1);
          counts.merge(s, 1, Integer::sum);
        }
      }
    }
    return counts;
  }

  /** Lives as promised, first those of a group that still has all of these plants. */
  private List<Life.Skeleton> like(Present.Promise p, List<Course> courses, FreePlaces free) {
    return courses.stream()
        .flatMap(c -> skeleton(p, c).stream())
        .sorted(Comparator.comparing(s -> !hasAll(s.course(), p.count(), free)))
        .toList();
  }

  private static boolean hasAll(Course c, int plants, FreePlaces free) {
    return c.standing == Course.NEW || free.standing(c.standing) >= plants;
  }

  private Optional<Life.Skeleton> skeleton(Present.Promise p, Course c) {
    TaskCalendar calendar = instance.calendar();
    if (!c.crop.name().equals(p.crop()) || c.group != instance.at().groupOf(p.pot())) {
      return Optional.empty();
    }
    boolean samePlants =
        c.standing == Course.NEW
            ? p.batch().isEmpty() && calendar.slot(c.sowSlot).equals(p.sown())
            : isOneOf(instance.standing().get(c.standing), p);
    LocalDate toBench =
        c.standing == Course.NEW
            ? calendar.slot(c.benchSlot)
            : instance.standing().get(c.standing).toBench().orElse(calendar.slot(c.benchSlot));
    if (!samePlants || !toBench.equals(p.toBench())) {
      return Optional.empty();
    }
    List<Integer> ends = new ArrayList<>();
    for (int t = 0; t < c.bowls.length; t++) {
      if (!calendar.bowl(c.bowls[t]).isAfter(p.end())) {
        ends.add(t);
      }
    }
    return ends.isEmpty()
        ? Optional.empty()
        : Optional.of(new Life.Skeleton(c, ends.get(ends.size() - 1), p.lifted()));
  }

  private static boolean isOneOf(StandingPlants plants, Present.Promise p) {
    return plants.batch().equals(p.batch())
        && (plants.pots().isEmpty() || plants.pots().contains(p.pot()));
  }
}
