package sallet.water.flood;

import java.util.List;
import java.util.OptionalDouble;
import sallet.household.Watering;

/**
 * What a pump lifts: flow against height, straight lines between points, nothing beyond the last.
 *
 * @param points by growing height, the flow falling; at least two
 */
public record PumpCurve(List<Point> points) {
  /** Share of the maker's flow that is left after hose and bends. Judgement. */
  public static final double USUAL_SHARE = 0.8;

  /**
   * A point of the curve.
   *
   * @param headM height the water is lifted, m
   * @param flowLh flow there, L/h
   */
  public record Point(double headM, double flowLh) {}

  public PumpCurve {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a pump's curve needs at least two points");
    }
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).headM() > points.get(i - 1).headM()
          && points.get(i).flowLh() <= points.get(i - 1).flowLh()
          && points.get(i).flowLh() >= 0)) {
        throw new IllegalArgumentException(
            "a pump's flow must fall while height grows, point %d does not".formatted(i + 1));
      }
    }
  }

  /** A straight line from the flow on the level to the height at which nothing flows. */
  public static PumpCurve straight(double levelFlowLh, double highestM) {
    return of(Watering.CurvePoint.straight(levelFlowLh, highestM));
  }

  /** The curve of a household's pump. */
  public static PumpCurve of(List<Watering.CurvePoint> told) {
    return new PumpCurve(told.stream().map(p -> new Point(p.headM(), p.flowLh())).toList());
  }

  /** The same pump with a share of its flow. */
  public PumpCurve times(double share) {
    return new PumpCurve(
        points.stream().map(p -> new Point(p.headM(), share * p.flowLh())).toList());
  }

  /** Height beyond which it lifts nothing, m. */
  public double highestM() {
    return points.get(points.size() - 1).headM();
  }

  /** Flow at a height, L/h; below the first point that of the first. */
  public double flowLh(double headM) {
    if (headM > highestM()) {
      return 0;
    }
    if (headM <= points.get(0).headM()) {
      return points.get(0).flowLh();
    }
    int i = 1;
    while (i < points.size() - 1 && points.get(i).headM() < headM) {
      i++;
    }
    Point a = points.get(i - 1);
    Point b = points.get(i);
    return a.flowLh() + (b.flowLh() - a.flowLh()) * (headM - a.headM()) / (b.headM() - a.headM());
  }

  /**
   * Minutes to fill a tray; empty when the pump does not get there. Along a straight piece of the
   * curve t = A dH ln(Q1/Q2)/(Q1 - Q2).
   *
   * @param liftM height of the tray above the water in the reservoir, m
   * @param depthM depth of the flood, m
   * @param areaM2 area that takes up water, flood volume over depth, m²
   */
  public OptionalDouble fillMinutes(double liftM, double depthM, double areaM2) {
    double top = liftM + depthM;
    if (flowLh(top) <= 0) {
      return OptionalDouble.empty();
    }
    double minutes = 0;
    double from = liftM;
    for (Point p : points) {
      double to = Math.min(p.headM(), top);
      if (to > from) {
        minutes += 60 * 1000 * areaM2 * (to - from) / meanFlowLh(flowLh(from), flowLh(to));
        from = to;
      }
    }
    return OptionalDouble.of(minutes);
  }

  /** Logarithmic mean of two flows. */
  private static double meanFlowLh(double first, double last) {
    return Math.abs(first - last) < 1e-9 * first ? first : (first - last) / Math.log(first / last);
  }
}
