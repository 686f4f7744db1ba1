package sallet.water.flood;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import sallet.water.medium.PotWater;

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
   * The schedule for pots that may lose the stated share of their easy water. When the timer has
   * too few starts the share is raised step by step, at most to {@link PotWater#MOST_DEPLETION};
   * pots that still dry out faster are named and left out.
   *
   * @param days the pots at their thirstiest day to come
   * @param depletion the share {@code days} stand for
   */
  public static FloodSchedule of(
      List<PotDay> days, double depletion, Light light, Timer timer, Length length) {
    int gap = Math.max(length.apartMinutes(), timer.gridMinutes());
    int onMinutes = timer.onMinutes(length.floodMinutes());
    for (double p = depletion; ; p += 0.05) {
      double share = Math.min(Math.max(depletion, PotWater.MOST_DEPLETION), p);
      List<PotDay> pots = days.stream().map(pot -> scaled(pot, share / depletion)).toList();
      FloodSchedule found = served(pots, share, light, timer, gap, onMinutes);
      boolean last = share >= PotWater.MOST_DEPLETION;
      boolean fits = found.floodsPerDay() <= timer.mostStarts();
      if ((found.unserved().isEmpty() && fits) || last) {
        return fits ? found : thinned(pots, found, timer.mostStarts());
      }
    }
  }

  private static PotDay scaled(PotDay pot, double factor) {
    return new PotDay(pot.pot(), pot.allowedMl() * factor, pot.mlPerHour());
  }

  private static FloodSchedule served(
      List<PotDay> pots, double share, Light light, Timer timer, int gap, int onMinutes) {
    List<String> unserved =
        pots.stream().filter(pot -> shortest(pot) < gap).map(PotDay::pot).toList();
    List<PotDay> rest = pots.stream().filter(pot -> !unserved.contains(pot.pot())).toList();
    int off = light.onMinute() + (int) Math.round(60 * light.hours());
    FloodTimes times = new FloodTimes(rest, light.onMinute(), off, timer, gap);
    if (timer instanceof Timer.Interval) {
      int every = times.everyMinutes();
      List<Integer> starts =
          IntStream.iterate(light.onMinute() % every, m -> m < DAY, m -> m + every)
              .boxed()
              .toList();
      return new FloodSchedule(starts, onMinutes, OptionalInt.of(every), share, unserved);
    }
    return new FloodSchedule(times.starts(), onMinutes, OptionalInt.empty(), share, unserved);
  }

  /** Shortest time any start of the day lasts, minutes. */
  private static double shortest(PotDay pot) {
    return IntStream.range(0, 24).mapToDouble(h -> pot.lastsMinutes(60.0 * h)).min().orElse(DAY);
  }

  private int everyMinutes() {
    double least = DAY;
    for (PotDay pot : pots) {
      least = Math.min(least, shortest(pot));
    }
    int grid = timer.gridMinutes();
    return Math.max(leastGap, (int) Math.floor(least / grid + 1e-9) * grid);
  }

  private List<Integer> starts() {
    List<Integer> starts = new ArrayList<>(List.of(on));
    int next = next(on);
    while (next < off && next < on + DAY) {
      starts.add(next);
      next = next(next);
    }
    int last = starts.get(starts.size() - 1);
    int evening = onGrid(off - BEFORE_DARK);
    if (off < on + DAY && evening >= last + Math.max(LEAST_BEFORE_DARK, leastGap)) {
      starts.add(evening);
      last = evening;
    }
    for (int night = next(last); night < on + DAY; night = next(night)) {
      starts.add(night);
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

  /** The best so many starts: those after which most is used, the pots that suffer named. */
  private static FloodSchedule thinned(List<PotDay> pots, FloodSchedule full, int most) {
    List<Integer> starts = new ArrayList<>(full.startMinutes());
    while (starts.size() > most) {
      starts.remove(leastMissed(pots, starts));
    }
    List<String> dry =
        pots.stream()
            .filter(pot -> starts.stream().anyMatch(s -> pot.lastsMinutes(s) < gapAfter(starts, s)))
            .map(PotDay::pot)
            .toList();
    return new FloodSchedule(starts, full.onMinutes(), full.everyMinutes(), full.depletion(), dry);
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
