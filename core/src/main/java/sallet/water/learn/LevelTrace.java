package sallet.water.learn;

import java.util.ArrayList;
import java.util.List;

/** A logger's trace of the level, with the floods that borrow from it. */
public final class LevelTrace {
  /** A fall of at least this share of a flood within a quarter of an hour begins a flood. */
  private static final double FLOOD_SHARE = 0.5;

  private static final double FALLS_MIN = 15;
  private static final double RETURNS_MIN = 60;

  private LevelTrace() {}

  /**
   * A point of the trace.
   *
   * @param minute minutes since it began
   * @param litres level, L
   */
  public record Point(double minute, double litres) {}

  /**
   * The points outside floods: a flood begins with a fall of half its volume within 15 minutes and
   * ends when most of that is back, within an hour. A fall that does not come back is a loss and
   * stays.
   *
   * @param floodL volume of a flood, L
   */
  public static List<Point> settled(List<Point> trace, double floodL) {
    List<Point> settled = new ArrayList<>();
    int i = 0;
    while (i < trace.size()) {
      int end = floodEnd(trace, i, floodL);
      settled.add(trace.get(i));
      i = Math.max(end, i + 1);
    }
    return settled;
  }

  /** Index of the first point after a flood that begins right after a point; else that point. */
  private static int floodEnd(List<Point> trace, int start, double floodL) {
    Point before = trace.get(start);
    boolean fell = false;
    for (int j = start + 1; j < trace.size(); j++) {
      Point p = trace.get(j);
      double minutes = p.minute() - before.minute();
      double fall = before.litres() - p.litres();
      boolean late = minutes > RETURNS_MIN + FALLS_MIN;
      if (late || (!fell && minutes > FALLS_MIN)) {
        return start;
      }
      fell |= fall >= FLOOD_SHARE * floodL;
      if (fell && fall < (1 - FLOOD_SHARE) * floodL / 2) {
        return j;
      }
    }
    return start;
  }

  /** Loss over the whole trace, floods left out, L. */
  public static double lossL(List<Point> trace, double floodL) {
    List<Point> settled = settled(trace, floodL);
    return settled.isEmpty()
        ? 0
        : settled.get(0).litres() - settled.get(settled.size() - 1).litres();
  }
}
