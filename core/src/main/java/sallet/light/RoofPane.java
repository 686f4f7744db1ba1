package sallet.light;

import sallet.household.RoofWindow;

/**
 * Where a roof window lies: its middle and the directions along its level edges, up its slope and
 * straight out.
 */
record RoofPane(
    RoofWindow window, Direction middle, Direction along, Direction upSlope, Direction out) {

  static RoofPane of(RoofWindow window) {
    double azimuth = Math.toRadians(window.faces().azimuthDeg());
    double slope = Math.toRadians(window.slopeDeg());
    double sin = Math.sin(azimuth);
    double cos = Math.cos(azimuth);
    return new RoofPane(
        window,
        new Direction(window.xM(), window.yM(), window.heightM()),
        new Direction(cos, -sin, 0),
        new Direction(-sin * Math.cos(slope), -cos * Math.cos(slope), Math.sin(slope)),
        new Direction(sin * Math.sin(slope), cos * Math.sin(slope), Math.cos(slope)));
  }

  /** From a spot to a place on the pane, m from its middle. */
  Direction way(Spot from, double alongM, double upSlopeM) {
    return middle
        .plus(along.times(alongM))
        .plus(upSlope.times(upSlopeM))
        .plus(new Direction(-from.xM(), -from.yM(), -from.zM()));
  }

  /** Whether a ray that leaves the room here clears the far end of the shaft. */
  boolean clearsShaft(Direction way, double alongM, double upSlopeM) {
    double deeper = window.shaftM() / way.dot(out);
    return inside(alongM + deeper * way.dot(along), upSlopeM + deeper * way.dot(upSlope));
  }

  /** Whether a ray from a spot in a direction leaves by this window. */
  boolean lets(Spot from, Direction ray) {
    double facing = ray.dot(out);
    if (facing <= 0) {
      return false;
    }
    Direction toMiddle = way(from, 0, 0);
    double distance = toMiddle.dot(out) / facing;
    Direction miss = ray.times(distance).plus(toMiddle.times(-1));
    double u = miss.dot(along);
    double v = miss.dot(upSlope);
    return distance > 0 && inside(u, v) && clearsShaft(ray, u, v);
  }

  private boolean inside(double alongM, double upSlopeM) {
    return Math.abs(alongM) <= window.widthM() / 2 && Math.abs(upSlopeM) <= window.lengthM() / 2;
  }
}
