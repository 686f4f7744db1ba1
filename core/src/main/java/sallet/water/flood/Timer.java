package sallet.water.flood;

/** What a timer can do. */
public sealed interface Timer {
  /** Minutes between the times at which it can switch. */
  int gridMinutes();

  /** Floods a day it has room for. */
  int mostStarts();

  /** Whole steps of the timer that last at least so many minutes. */
  default int onMinutes(double minutes) {
    return (int) Math.ceil(minutes / gridMinutes() - 1e-9) * gridMinutes();
  }

  /**
   * A dial with pins or segments all round, each on or off.
   *
   * @param gridMinutes minutes of one pin, 15 as a rule
   */
  record Segments(int gridMinutes) implements Timer {
    @Override
    public int mostStarts() {
      return 24 * 60 / (2 * gridMinutes);
    }
  }

  /**
   * A digital timer set to the minute.
   *
   * @param mostStarts pairs of on and off it remembers for a day
   */
  record Minutes(int mostStarts) implements Timer {
    @Override
    public int gridMinutes() {
      return 1;
    }
  }

  /**
   * A timer that repeats: on for a while, then off for a while, day and night alike.
   *
   * @param gridMinutes steps in which the pause can be set
   */
  record Interval(int gridMinutes) implements Timer {
    @Override
    public int mostStarts() {
      return 24 * 60;
    }
  }
}
