package sallet.light;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.household.Outlook;
import sallet.household.Room;
import sallet.household.Window;
import sallet.weather.PerezSky;
import sallet.weather.Plane;
import sallet.weather.SkyMoment;

/** One window of a wall and what it lets in. */
final class WindowLight implements Aperture {
  private final Plane plane;
  private final Window window;
  private final SkyScreen screen;
  private final Glazing glazing;
  private final double passes;
  private final double glassM2;
  private final List<Double> albedo;
  private final InnerReflection reflection;
  private final List<List<Block>> bodies;
  private final WallSky wallSky;
  private final double[] distanceM;
  private final Rectangle[] clear;
  private final double[][] even;
  private final double[][] overcast;

  /**
   * @param openings the window as each point sees it
   * @param bodies in the room that may hide it, as each point sees them looking out of the wall
   */
  WindowLight(
      Room room,
      Window window,
      Glazing glazing,
      InnerReflection reflection,
      List<Opening> openings,
      List<List<Block>> bodies) {
    Outlook outlook = window.outlook();
    this.window = window;
    this.plane = new Plane(90, window.wall().azimuthDeg() + room.turnDeg());
    this.screen = new SkyScreen(window.skylineDeg(), outlook);
    this.glazing = glazing;
    this.passes = passes(window);
    this.glassM2 = window.widthM() * window.heightM();
    this.albedo = room.outdoorAlbedo();
    this.reflection = reflection;
    this.bodies =
        IntStream.range(0, openings.size())
            .mapToObj(i -> withOverhang(bodies.get(i), openings.get(i), outlook))
            .toList();
    this.wallSky = WallSky.of(window, plane.azimuthDeg(), screen);
    this.distanceM = openings.stream().mapToDouble(Opening::distanceM).toArray();
    this.clear = openings.stream().map(Opening::clear).toArray(Rectangle[]::new);
    this.even = new double[openings.size()][];
    this.overcast = new double[openings.size()][];
    for (int i = 0; i < openings.size(); i++) {
      List<SkyCoefficients> sets =
          new SkyRays(openings.get(i), glazing, plane.azimuthDeg(), screen, this.bodies.get(i))
              .bySetOfTrees();
      even[i] = sets.stream().mapToDouble(c -> c.even() * passes).toArray();
      overcast[i] = sets.stream().mapToDouble(c -> c.overcast() * passes).toArray();
    }
  }

  private static List<Block> withOverhang(List<Block> inside, Opening opening, Outlook outlook) {
    return Stream.concat(
            outlook.overhang().map(plate -> Block.of(opening, plate)).stream(), inside.stream())
        .toList();
  }

  /** Share of light that passes frame, dirt and curtain. */
  static double passes(Window window) {
    return window.glassShare() * window.cleanliness() * window.curtain();
  }

  @Override
  public void addSky(LocalDate day, PerezSky sky, double[] pointsWm2) {
    double[] passing = screen.passing(day);
    double[][] shares = sky.overcast() ? overcast : even;
    for (int i = 0; i < pointsWm2.length; i++) {
      double share = 0;
      for (int set = 0; set < passing.length; set++) {
        share += passing[set] * shares[i][set];
      }
      pointsWm2[i] += sky.evenWm2() * share;
    }
  }

  /** Share of the even sky's light on the flat outdoors that comes straight to a point. */
  double skyShare(int point, LocalDate day, boolean underCloud) {
    double[] passing = screen.passing(day);
    double share = 0;
    for (int set = 0; set < passing.length; set++) {
      share += passing[set] * (underCloud ? overcast : even)[point][set];
    }
    return share;
  }

  @Override
  public void addSun(LocalDate day, SkyMoment moment, PerezSky sky, double[] pointsWm2) {
    SunPatch sun = SunPatch.of(moment.sun(), plane.azimuthDeg());
    double seen = sun.shinesOnWall() ? sunSeen(day, moment) : 0;
    if (seen <= 0) {
      return;
    }
    double beam =
        (moment.beamWm2() + sky.aroundSunWm2()) * sun.up() * glazing.at(sun.out()) * passes * seen;
    double x = sun.hitXM(1);
    double z = sun.hitZM(1);
    for (int i = 0; i < pointsWm2.length; i++) {
      if (clear[i].contains(x * distanceM[i], z * distanceM[i]) && !hidden(i, sun)) {
        pointsWm2[i] += beam;
      }
    }
  }

  private boolean hidden(int point, SunPatch sun) {
    for (Block body : bodies.get(point)) {
      if (body.hides(sun.right(), sun.out(), sun.up())) {
        return true;
      }
    }
    return false;
  }

  /** Share of the sun's light that comes past skyline and trees. */
  private double sunSeen(LocalDate day, SkyMoment moment) {
    double altitude = moment.sun().altitudeDeg();
    double azimuth = moment.sun().azimuthDeg();
    return altitude < screen.lowestDeg(azimuth)
        ? 0
        : screen.passing(day)[screen.treesAt(azimuth, altitude)];
  }

  @Override
  public double reflectedWm2(LocalDate day, SkyMoment moment, PerezSky sky) {
    double open =
        (1 - Math.sin(Math.toRadians(window.skylineDeg()))) * wallSky.open(screen.passing(day));
    double skyWm2 = Math.max(0, sky.evenWm2() / 2 + sky.horizonWm2()) * open * glazing.diffuse();
    double groundWm2 =
        moment.globalWm2() * albedo.get(day.getMonthValue() - 1) / 2 * glazing.diffuse();
    double incidence = plane.cosIncidence(moment.sun());
    boolean sunny = incidence > 0 && moment.sun().altitudeDeg() > 0;
    double sunWm2 =
        sunny
            ? (moment.beamWm2() + sky.aroundSunWm2())
                * incidence
                * glazing.at(incidence)
                * sunSeen(day, moment)
                * sunlitShare(moment)
            : 0;
    return passes
        * glassM2
        * ((skyWm2 + sunWm2) * reflection.ofFalling() + groundWm2 * reflection.ofRising());
  }

  /** Share of the window below the shadow of an overhang (its sides are not looked at). */
  private double sunlitShare(SkyMoment moment) {
    SunPatch sun = SunPatch.of(moment.sun(), plane.azimuthDeg());
    return window
        .outlook()
        .overhang()
        .map(
            plate -> {
              double shadow = plate.depthM() * sun.up() / sun.out() - plate.aboveM();
              return 1 - Math.max(0, Math.min(1, shadow / window.heightM()));
            })
        .orElse(1.0);
  }
}
