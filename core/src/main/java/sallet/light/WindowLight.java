package sallet.light;

import java.util.List;
import sallet.household.Room;
import sallet.household.Window;
import sallet.weather.PerezSky;
import sallet.weather.Plane;
import sallet.weather.SkyMoment;

/**
 * One window and what it lets in: the sun's patch on each point, and light for the room's walls.
 */
final class WindowLight {
  private final Plane plane;
  private final double skylineDeg;
  private final Glazing glazing;
  private final double passes;
  private final double glassM2;
  private final double albedo;
  private final InnerReflection reflection;
  private final double[] distanceM;
  private final Rectangle[] clear;

  /**
   * @param openings the window as each point sees it
   */
  WindowLight(
      Room room,
      Window window,
      Glazing glazing,
      InnerReflection reflection,
      List<Opening> openings) {
    this.plane = new Plane(90, window.wall().azimuthDeg() + room.turnDeg());
    this.skylineDeg = window.skylineDeg();
    this.glazing = glazing;
    this.passes = passes(window);
    this.glassM2 = window.widthM() * window.heightM();
    this.albedo = room.outdoorAlbedo();
    this.reflection = reflection;
    this.distanceM = openings.stream().mapToDouble(Opening::distanceM).toArray();
    this.clear = openings.stream().map(Opening::clear).toArray(Rectangle[]::new);
  }

  /** Share of light that passes frame, dirt and curtain. */
  static double passes(Window window) {
    return window.glassShare() * window.cleanliness() * window.curtain();
  }

  /** Adds the sun and the bright sky around it to the points they reach, W/m². */
  void addSun(SkyMoment moment, PerezSky sky, double[] pointsWm2) {
    SunPatch sun = SunPatch.of(moment.sun(), plane.azimuthDeg());
    if (!sun.shinesOnWall() || moment.sun().altitudeDeg() < skylineDeg) {
      return;
    }
    double beam =
        (moment.beamWm2() + sky.aroundSunWm2()) * sun.up() * glazing.at(sun.out()) * passes;
    double x = sun.hitXM(1);
    double z = sun.hitZM(1);
    for (int i = 0; i < pointsWm2.length; i++) {
      if (clear[i].contains(x * distanceM[i], z * distanceM[i])) {
        pointsWm2[i] += beam;
      }
    }
  }

  /** Light on the bench by way of the room's surfaces, W/m². */
  double reflectedWm2(SkyMoment moment, PerezSky sky) {
    double open = 1 - Math.sin(Math.toRadians(skylineDeg));
    double skyWm2 = Math.max(0, sky.evenWm2() / 2 + sky.horizonWm2()) * open * glazing.diffuse();
    double groundWm2 = moment.globalWm2() * albedo / 2 * glazing.diffuse();
    double incidence = plane.cosIncidence(moment.sun());
    boolean sunny = incidence > 0 && moment.sun().altitudeDeg() > Math.max(0, skylineDeg);
    double sunWm2 =
        sunny ? (moment.beamWm2() + sky.aroundSunWm2()) * incidence * glazing.at(incidence) : 0;
    return passes
        * glassM2
        * ((skyWm2 + sunWm2) * reflection.ofFalling() + groundWm2 * reflection.ofRising());
  }
}
