package sallet.water.flood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds when to flood: as seldom as the fastest-drying pot allows, on the timer's own grid.
 *
 * <p>The first flood comes when the light does, each next one at the last switching time before any
 * pot has used what it may; one more half an hour before dark when the last is an hour or more ago,
 * so that the night begins full; at night a flood where the pots would not last until morning.
 */
public final class FloodTimes {
  private static final int DAY = 24 * 60;
  private static final int BEFORE_DARK = 30;
  private static final int LEAST_BEFORE_DARK = 60;

  /** From 30 to 50 % of the easy water. Judgement. */
  private static final double MOST_STRETCH = 5 / 3.0;

  private static final double STRETCH_STEP = 1 / 15.0;

  private static final double ROUNDING_MIN = 1e-6;

  private final List<PotDay> pots;
  private final int on;
  private final int off;
  private final Timer timer;
  private final int leastGap;

  private FloodTimes(List<PotDay> pots, int on, int off, Timer timer, int leastGap) {
    this.pots = pots;
    this.on = on;
    this.off = off;
    this.timer = timer;
    this.leastGap = leastGap;
  }

  /**
   * When it is light on the bench.
   *
   * @param onMinute minute of the day the light begins
   * @param hours hours of light, 0 to 24
   */
  public record Light(int onMinute, double hours) {}

  /**
   * One flood.
   *
   * @param floodMinutes pump time wanted: filling and soaking
   * @param apartMinutes least time between starts, draining included
   */
  public record Length(double floodMinutes, int apartMinutes) {}

  /**
   * The schedule for pots at their thirstiest day to come. When the timer has too few starts, more
   * may go between floods, step by step, and at last floods come when the pots last longest, be it
   * light or dark. Pots that dry out faster than the timer can flood even so are named, and do not
   * set the pace unless all of them do. None is named exactly when every pot lasts from one flood
   * to the next that the timer can do, at any minute, and some schedule serves them all: so
   * thirstier pots are never served better.
   */
  public static FloodSchedule of(List<PotDay> days, Light light, Timer timer, Length length) {
    int gap = timer.onMinutes(Math.max(length.apartMinutes(), timer.gridMinutes()));
    int onMinutes = timer.onMinutes(length.floodMinutes());
    List<PotDay> fast =
        days.stream().filter(p -> p.stretched(MOST_STRETCH).shortestMinutes() < gap).toList();
    List<PotDay> pots = fast.size() == days.size() ? days : without(days, fast);
    FloodSchedule found;
    double stretch = 1;
    do {
      found = served(pots, stretch, light, timer, gap, onMinutes);
      stretch += STRETCH_STEP;
    } while (!fits(found, pots, timer) && stretch < MOST_STRETCH + STRETCH_STEP / 2);
    List<Integer> starts = thinned(pots, found, timer.mostStarts());
    if (!fits(found, pots, timer) && found.everyMinutes().isEmpty()) {
      starts = fewest(stretched(pots, found.stretch()), light, timer, gap).orElse(starts);
    }
    FloodSchedule full =
        new FloodSchedule(starts, onMinutes, found.everyMinutes(), found.stretch(), List.of());
    List<String> dry =
        Stream.concat(fast.stream().map(PotDay::pot), dry(pots, full).stream()).distinct().toList();
    return new FloodSchedule(starts, onMinutes, full.everyMinutes(), full.stretch(), dry);
  }

  /**
   * The fewest floods that serve all pots, the first at any time; empty when the timer has too few
   * starts. Each flood comes as late as the pots allow, which no other schedule with the same first
   * one exceeds; then the last ones move forward until they are far enough apart. Holds for pots
   * that last from one flood to the next that the timer can do; others get what floods there are.
   */
  private static Optional<List<Integer>> fewest(
      List<PotDay> pots, Light light, Timer timer, int gap) {
    int grid = timer.gridMinutes();
    FloodTimes times = new FloodTimes(pots, light.onMinute(), light.onMinute() + DAY, timer, gap);
    List<Integer> next =
        IntStream.range(0, DAY / grid).mapToObj(i -> times.next(i * grid)).toList();
    List<Integer> best = List.of();
    for (int i = 0; i < DAY / grid; i++) {
      int first = Math.floorMod(times.onGrid(light.onMinute()) + i * grid, DAY);
      List<Integer> starts = new ArrayList<>();
      for (int at = first; at < first + DAY; at += next.get(at % DAY / grid) - at % DAY) {
        starts.add(at);
      }
      int number = starts.size();
      if (number * gap <= DAY
          && number <= timer.mostStarts()
          && (best.isEmpty() || number < best.size())) {
        best =
            IntStream.range(0, number)
                .map(k -> Math.min(starts.get(k), first + DAY - (number - k) * gap))
                .mapToObj(minute -> minute % DAY)
                .toList();
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  private static List<PotDay> without(List<PotDay> days, List<PotDay> some) {
    return days.stream().filter(pot -> !some.contains(pot)).toList();
  }

  private static boolean fits(FloodSchedule found, List<PotDay> pots, Timer timer) {
    return found.floodsPerDay() <= timer.mostStarts() && dry(pots, found).isEmpty();
  }

  /** Pots that use up what they may before the next flood. */
  private static List<String> dry(List<PotDay> days, FloodSchedule schedule) {
    return days.stream()
        .map(pot -> pot.stretched(schedule.stretch()))
        .filter(pot -> !lasts(pot, schedule))
        .map(PotDay::pot)
        .toList();
  }

  private static boolean lasts(PotDay pot, FloodSchedule schedule) {
    if (schedule.everyMinutes().isPresent()) {
      return pot.shortestMinutes() >= schedule.everyMinutes().getAsInt() - ROUNDING_MIN;
    }
    List<Integer> starts = schedule.startMinutes();
    return starts.stream().allMatch(s -> pot.lastsMinutes(s) >= gapAfter(starts, s) - ROUNDING_MIN);
  }

  private static FloodSchedule served(
      List<PotDay> days, double stretch, Light light, Timer timer, int gap, int onMinutes) {
    List<PotDay> pots = stretched(days, stretch);
    int off = light.onMinute() + (int) Math.round(60 * light.hours());
    FloodTimes times = new FloodTimes(pots, light.onMinute(), off, timer, gap);
    if (timer instanceof Timer.Interval) {
      int every = times.everyMinutes();
      List<Integer> starts =
          IntStream.iterate(light.onMinute() % every, m -> m < DAY, m -> m + every)
              .boxed()
              .toList();
      return new FloodSchedule(starts, onMinutes, OptionalInt.of(every), stretch, List.of());
    }
    return new FloodSchedule(times.starts(), onMinutes, OptionalInt.empty(), stretch, List.of());
  }

  private static List<PotDay> stretched(List<PotDay> days, double stretch) {
    return days.stream().map(pot -> pot.stretched(stretch)).toList();
  }

  private int everyMinutes() {
    double least = DAY;
    for (PotDay pot : pots) {
      least = Math.min(least, pot.shortestMinutes());
    }
    int grid = timer.gridMinutes();
    return Math.max(leastGap, (int) Math.floor(least / grid + 1e-9) * grid);
  }

  private List<Integer> starts() {
    int first = onGrid(on);
    List<Integer> starts = new ArrayList<>(List.of(first));
    int morning = first + DAY;
    int next = next(first);
    while (next < off && next <= morning - leastGap) {
      starts.add(next);
      next = next(next);
    }
    int last = starts.get(starts.size() - 1);
    int evening = onGrid(off - BEFORE_DARK);
    if (off < on + DAY && evening >= last + Math.max(LEAST_BEFORE_DARK, leastGap)) {
      starts.add(evening);
      last = evening;
    }
    for (int night = next(last); night < morning; night = next(last)) {
      int early = Math.min(night, onGrid(morning - leastGap));
      if (early < last + leastGap) {
        break;
      }
      starts.add(early);
      last = early;
    }
    return starts.stream().map(m -> Math.floorMod(m, DAY)).distinct().toList();
  }

  /** The last switching time before the first pot has used what it may. */
  private int next(int start) {
    double least = 2 * DAY;
    for (PotDay pot : pots) {
      least = Math.min(least, pot.lastsMinutes(start));
    }
    return Math.max(start + leastGap, onGrid(start + least));
  }

  /** Switching times are counted from midnight. */
  private int onGrid(double minute) {
    int grid = timer.gridMinutes();
    return (int) Math.floor(minute / grid + 1e-9) * grid;
  }

  /** The best so many starts: those without which the pots suffer least are left out. */
  private static List<Integer> thinned(List<PotDay> days, FloodSchedule full, int most) {
    List<Integer> starts = new ArrayList<>(full.startMinutes());
    while (full.everyMinutes().isEmpty() && starts.size() > most) {
      starts.remove(leastMissed(days, starts));
    }
    return starts;
  }

  private static int leastMissed(List<PotDay> pots, List<Integer> starts) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < starts.size(); i++) {
      List<Integer> without = new ArrayList<>(starts);
      without.remove(i);
      int before = without.get(Math.floorMod(i - 1, without.size()));
      double gap = gapAfter(without, before);
      double strain =
          pots.stream().mapToDouble(pot -> gap / pot.lastsMinutes(before)).max().orElse(0);
      if (strain < least) {
        least = strain;
        best = i;
      }
    }
    return best;
  }

  private static int gapAfter(List<Integer> starts, int start) {
    int next = starts.stream().filter(s -> s > start).min(Integer::compare).orElse(starts.get(0));
    int gap = Math.floorMod(next - start, DAY);
    return gap == 0 ? DAY : gap;
  }
}
