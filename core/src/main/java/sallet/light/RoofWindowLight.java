package sallet.light;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import sallet.household.RoofWindow;
import sallet.household.Room;
import sallet.weather.PerezSky;
import sallet.weather.Plane;
import sallet.weather.SkyMoment;
import sallet.weather.SunPosition;

/**
 * One window of the roof and what it lets in, under an open sky. The sky is summed over rays
 * through an even grid of the pane: dA cos i sin g / (π r²) each, with the glass at its own angle.
 */
final class RoofWindowLight implements Aperture {
  private static final int RAYS_ACROSS = 24;

  private final RoofPane pane;
  private final Plane plane;
  private final double turnDeg;
  private final Glazing glazing;
  private final double passes;
  private final List<Double> albedo;
  private final InnerReflection reflection;
  private final List<Spot> spots;
  private final List<List<Block>> bodies;
  private final SkyCoefficients[] sky;

  /**
   * @param bodies in the room that may hide it, as each spot sees them looking north
   */
  RoofWindowLight(Room room, RoofWindow window, List<Spot> spots, List<List<Block>> bodies) {
    RoofWindow.Glass glass = window.glass();
    this.pane = RoofPane.of(window);
    this.plane = new Plane(window.slopeDeg(), window.faces().azimuthDeg() + room.turnDeg());
    this.turnDeg = room.turnDeg();
    this.glazing = Glazing.of(glass.panes(), glass.visibleTransmittance());
    this.passes = glass.glassShare() * glass.cleanliness() * glass.curtain();
    this.albedo = room.outdoorAlbedo();
    this.reflection = InnerReflection.ofRoof(room);
    this.spots = List.copyOf(spots);
    this.bodies = List.copyOf(bodies);
    this.sky = new SkyCoefficients[spots.size()];
    Arrays.setAll(sky, i -> seen(i).times(passes));
  }

  private SkyCoefficients seen(int spot) {
    double width = pane.window().widthM();
    double length = pane.window().lengthM();
    double even = 0;
    double overcast = 0;
    for (int i = 0; i < RAYS_ACROSS * RAYS_ACROSS; i++) {
      double u = width * ((i % RAYS_ACROSS + 0.5) / RAYS_ACROSS - 0.5);
      double v = length * ((Math.floorDiv(i, RAYS_ACROSS) + 0.5) / RAYS_ACROSS - 0.5);
      Direction way = pane.way(spots.get(spot), u, v);
      double square = way.dot(way);
      double distance = Math.sqrt(square);
      double incidence = way.dot(pane.out()) / distance;
      double sine = way.up() / distance;
      if (incidence > 0 && sine > 0 && pane.clearsShaft(way, u, v) && !hidden(spot, way)) {
        double light = incidence * sine / square * glazing.at(incidence);
        even += light;
        overcast += light * (1 + 2 * sine) * 3 / 7;
      }
    }
    double each = width * length / (RAYS_ACROSS * RAYS_ACROSS) / Math.PI;
    return new SkyCoefficients(even, overcast).times(each);
  }

  @Override
  public void addSky(LocalDate day, PerezSky parts, double[] pointsWm2) {
    for (int i = 0; i < pointsWm2.length; i++) {
      pointsWm2[i] += parts.evenWm2() * (parts.overcast() ? sky[i].overcast() : sky[i].even());
    }
  }

  @Override
  public void addSun(LocalDate day, SkyMoment moment, PerezSky parts, double[] pointsWm2) {
    double incidence = plane.cosIncidence(moment.sun());
    if (incidence <= 0 || moment.sun().altitudeDeg() <= 0) {
      return;
    }
    Direction ray = towards(moment.sun());
    double beam =
        (moment.beamWm2() + parts.aroundSunWm2()) * ray.up() * glazing.at(incidence) * passes;
    for (int i = 0; i < pointsWm2.length; i++) {
      if (pane.lets(spots.get(i), ray) && !hidden(i, ray)) {
        pointsWm2[i] += beam;
      }
    }
  }

  private boolean hidden(int spot, Direction ray) {
    return bodies.get(spot).stream().anyMatch(b -> b.hides(ray.east(), ray.north(), ray.up()));
  }

  private Direction towards(SunPosition sun) {
    double altitude = Math.toRadians(sun.altitudeDeg());
    double azimuth = Math.toRadians(sun.azimuthDeg() - turnDeg);
    return new Direction(
        Math.cos(altitude) * Math.sin(azimuth),
        Math.cos(altitude) * Math.cos(azimuth),
        Math.sin(altitude));
  }

  @Override
  public double reflectedWm2(LocalDate day, SkyMoment moment, PerezSky parts) {
    double skyWm2 =
        Math.max(
            0,
            parts.evenWm2() * plane.skyShare()
                + parts.horizonWm2() * Math.sin(Math.toRadians(plane.tiltDeg())));
    double groundWm2 =
        moment.globalWm2() * albedo.get(day.getMonthValue() - 1) * plane.groundShare();
    double incidence = plane.cosIncidence(moment.sun());
    double sunWm2 =
        incidence > 0 && moment.sun().altitudeDeg() > 0
            ? (moment.beamWm2() + parts.aroundSunWm2()) * incidence * glazing.at(incidence)
            : 0;
    double glassM2 = pane.window().widthM() * pane.window().lengthM();
    return passes
        * glassM2
        * ((skyWm2 * glazing.diffuse() + sunWm2) * reflection.ofFalling()
            + groundWm2 * glazing.diffuse() * reflection.ofRising());
  }
}
