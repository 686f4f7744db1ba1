package sallet.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sallet.household.Room;
import sallet.household.Window;
import sallet.weather.PerezSky;
import sallet.weather.SkyMoment;

/**
 * Daylight at fixed points of a room. What depends on the room alone (which share of the sky's
 * light each point gets) is reckoned once; each moment then needs only the sun's patches and a few
 * products.
 */
final class RoomDaylight {
  private final List<WindowLight> windows;
  private final SkyCoefficients[] sky;

  /**
   * A point in the room, looking up.
   *
   * @param xM from the west wall, m
   * @param yM from the south wall, m
   * @param zM above the floor, m
   */
  record Point(double xM, double yM, double zM) {}

  RoomDaylight(Room room, List<Point> points) {
    this.windows = new ArrayList<>();
    this.sky = new SkyCoefficients[points.size()];
    Arrays.fill(sky, SkyCoefficients.NONE);
    for (Window window : room.windows()) {
      Glazing glazing = Glazing.of(window);
      List<Opening> openings =
          points.stream().map(p -> Opening.of(room, window, p.xM, p.yM, p.zM)).toList();
      windows.add(
          new WindowLight(room, window, glazing, InnerReflection.of(room, window), openings));
      for (int i = 0; i < sky.length; i++) {
        sky[i] =
            sky[i].plus(
                SkyCoefficients.of(openings.get(i), glazing, window.skylineDeg())
                    .times(WindowLight.passes(window)));
      }
    }
  }

  /** Light on the flat at each point, W/m². */
  double[] atWm2(SkyMoment moment) {
    PerezSky parts = PerezSky.of(moment);
    double reflected = windows.stream().mapToDouble(w -> w.reflectedWm2(moment, parts)).sum();
    double[] light = new double[sky.length];
    for (int i = 0; i < light.length; i++) {
      double share = parts.overcast() ? sky[i].overcast() : sky[i].even();
      light[i] = parts.evenWm2() * share + reflected;
    }
    for (WindowLight window : windows) {
      window.addSun(moment, parts, light);
    }
    return light;
  }
}
