package sallet.water.home;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import sallet.household.Watering;
import sallet.water.learn.Interval;
import sallet.water.transpiration.HourlyUse;

/** The rows of the reservoir, filling by filling, and what was lost between its levels. */
final class LevelLosses {
  private final List<List<Watering.Level>> fillings;
  private final HourlyUse use;
  private final List<Interval> believed = new ArrayList<>();
  private final List<Doubted> doubted = new ArrayList<>();
  private final List<LocalDate> until = new ArrayList<>();

  private LevelLosses(List<List<Watering.Level>> fillings, HourlyUse use) {
    this.fillings = fillings;
    this.use = use;
  }

  /** A loss that fits nothing, and its days. */
  record Doubted(LocalDate from, LocalDate to, Interval loss) {}

  /**
   * Of some rows.
   *
   * @param use use at factor 1 over all their days
   */
  static LevelLosses of(List<Watering.Level> levels, HourlyUse use) {
    LevelLosses losses = new LevelLosses(fillings(levels), use);
    losses.fillings.forEach(losses::read);
    return losses;
  }

  /** Rows from one fresh solution to the next; the day it is renewed ends and begins one. */
  List<List<Watering.Level>> fillings() {
    return List.copyOf(fillings);
  }

  /** Losses that may be true. */
  List<Interval> believed() {
    return List.copyOf(believed);
  }

  /** Days from the last level that may be true to a later day; 0 when there is none. */
  int daysSince(LocalDate day) {
    return until.isEmpty()
        ? 0
        : (int) Math.max(0, ChronoUnit.DAYS.between(until.get(until.size() - 1), day));
  }

  /** Losses that fit nothing. */
  List<Doubted> doubted() {
    return List.copyOf(doubted);
  }

  private static List<List<Watering.Level>> fillings(List<Watering.Level> levels) {
    List<List<Watering.Level>> fillings = new ArrayList<>();
    List<Watering.Level> now = new ArrayList<>();
    for (Watering.Level level : levels) {
      now.add(level);
      if (level.renewed()) {
        fillings.add(now);
        OptionalDouble fresh =
            level.addedMsCm() > 0 ? OptionalDouble.of(level.addedMsCm()) : OptionalDouble.empty();
        now =
            new ArrayList<>(
                List.of(
                    new Watering.Level(
                        level.date(), OptionalDouble.of(level.addedL()), fresh, 0, 0, false)));
      }
    }
    fillings.add(now);
    return fillings;
  }

  /**
   * Each interval between two readings of the level, what was poured in between with it; one that
   * is too short goes on to the next reading.
   */
  private void read(List<Watering.Level> filling) {
    List<Watering.Level> open = new ArrayList<>();
    double poured = 0;
    boolean goesOn = false;
    for (Watering.Level level : filling) {
      if (level.litres().isPresent() && open.isEmpty()) {
        open.add(level);
        poured = 0;
      } else if (level.litres().isPresent()) {
        Watering.Level start = open.get(0);
        Interval loss =
            new Interval(
                start.litres().orElse(0) + poured,
                level.litres().orElse(0),
                noonToNoonL(start.date(), level.date()),
                ChronoUnit.DAYS.between(start.date(), level.date()),
                goesOn);
        if (!loss.tooShort()) {
          goesOn = take(start.date(), level.date(), loss);
          open.set(0, level);
          poured = 0;
        }
      }
      poured += level.renewed() ? 0 : level.addedL();
    }
  }

  /** Whether it is believed. */
  private boolean take(LocalDate from, LocalDate to, Interval loss) {
    if (loss.believable()) {
      believed.add(loss);
      until.add(to);
    } else {
      doubted.add(new Doubted(from, to, loss));
    }
    return loss.believable();
  }

  /** Half of the first day, the days between and half of the last, L. */
  private double noonToNoonL(LocalDate from, LocalDate to) {
    int first = (int) ChronoUnit.DAYS.between(use.from(), from);
    int last = (int) ChronoUnit.DAYS.between(use.from(), to);
    double litres = (use.dayL(first) + use.dayL(last)) / 2;
    for (int day = first + 1; day < last; day++) {
      litres += use.dayL(day);
    }
    return litres;
  }
}
