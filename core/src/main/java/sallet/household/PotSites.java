package sallet.household;

import java.util.ArrayList;
import java.util.List;

/**
 * The area each pot has to itself: the part of the tray nearer to its middle than to any other
 * pot's (its Voronoi cell, cut by the tray's edge). The areas of all pots add up to the tray.
 */
public final class PotSites {
  private PotSites() {}

  /**
   * Site area of each pot in the order of {@code bench.pots()}, cm².
   *
   * @param bench its pots stand on the tray, no two at one spot
   */
  public static List<Double> siteCm2(Bench bench) {
    return bench.pots().stream().map(pot -> areaM2(cell(pot, bench)) * 10_000).toList();
  }

  private record Point(double x, double y) {}

  private static List<Point> cell(Pot pot, Bench bench) {
    List<Point> cell =
        List.of(
            new Point(0, 0),
            new Point(bench.widthM(), 0),
            new Point(bench.widthM(), bench.depthM()),
            new Point(0, bench.depthM()));
    for (Pot other : bench.pots()) {
      if (!other.equals(pot)) {
        cell = nearerTo(pot, other, cell);
      }
    }
    return cell;
  }

  /** The part of a convex polygon on the pot's side of the line midway to the other pot. */
  private static List<Point> nearerTo(Pot pot, Pot other, List<Point> polygon) {
    double nx = other.xM() - pot.xM();
    double ny = other.yM() - pot.yM();
    double limit = nx * (pot.xM() + other.xM()) / 2 + ny * (pot.yM() + other.yM()) / 2;
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < polygon.size(); i++) {
      Point a = polygon.get(i);
      Point b = polygon.get((i + 1) % polygon.size());
      double da = nx * a.x() + ny * a.y() - limit;
      double db = nx * b.x() + ny * b.y() - limit;
      if (da <= 0) {
        kept.add(a);
      }
      if (Math.signum(da) * Math.signum(db) < 0) {
        double t = da / (da - db);
        kept.add(new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y())));
      }
    }
    return kept;
  }

  private static double areaM2(List<Point> polygon) {
    double twice = 0;
    for (int i = 0; i < polygon.size(); i++) {
      Point a = polygon.get(i);
      Point b = polygon.get((i + 1) % polygon.size());
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return twice / 2;
  }
}
