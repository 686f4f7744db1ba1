package sallet.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * Rays from a point through an upright opening to the sky.
 *
 * <p>The sky seen through the opening is cut into upright strips of equal azimuth and each strip
 * into steps of equal altitude; a ray through the middle of each step meets the glass at its own
 * angle. Without glass the sum along a strip is exact, skyline, overhang and reveal included, so
 * that few rays do.
 */
final class SkyRays {
  private static final int STRIPS = 32;
  private static final int RAYS_IN_STRIP = 12;

  /** The edges of crowns fall between rays; twice as many see them well enough. */
  private static final int RAYS_BEFORE_TREES = 24;

  /** The upright edges of bodies fall between strips; thrice as many see them well enough. */
  private static final int STRIPS_PAST_BODIES = 96;

  private final Opening opening;
  private final Glazing glazing;
  private final double wallAzimuthDeg;
  private final SkyScreen screen;
  private final List<Block> bodies;

  /** With nothing between the point and the opening, nor above it. */
  SkyRays(Opening opening, Glazing glazing, double wallAzimuthDeg, SkyScreen screen) {
    this(opening, glazing, wallAzimuthDeg, screen, List.of());
  }

  /**
   * @param bodies that stand in the way, as the point sees them looking out of the wall
   */
  SkyRays(
      Opening opening,
      Glazing glazing,
      double wallAzimuthDeg,
      SkyScreen screen,
      List<Block> bodies) {
    this.opening = opening;
    this.glazing = glazing;
    this.wallAzimuthDeg = wallAzimuthDeg;
    this.screen = screen;
    this.bodies = List.copyOf(bodies);
  }

  /** What comes by way of each set of trees, the empty set first, and from houses to the first. */
  List<SkyCoefficients> bySetOfTrees() {
    List<SkyCoefficients> seen = new ArrayList<>(aboveSkyline());
    if (screen.hides()) {
      SkyCoefficients whole = sum(SkyScreen.none()).get(0);
      SkyCoefficients all = seen.stream().reduce(SkyCoefficients.NONE, SkyCoefficients::plus);
      seen.set(0, seen.get(0).plus(whole.less(all).ofHouses()));
    }
    return seen;
  }

  /** The same before a black skyline. */
  List<SkyCoefficients> aboveSkyline() {
    return sum(screen);
  }

  private List<SkyCoefficients> sum(SkyScreen before) {
    Rectangle part = opening.clear().aboveLevel();
    int sets = before.treeSets();
    if (part.isEmpty()) {
      return Collections.nCopies(sets, SkyCoefficients.NONE);
    }
    double[][] sums = new double[sets][2];
    double d = opening.distanceM();
    double left = Math.atan(part.x1M() / d);
    int strips = bodies.isEmpty() ? STRIPS : STRIPS_PAST_BODIES;
    double step = (Math.atan(part.x2M() / d) - left) / strips;
    for (int i = 0; i < strips; i++) {
      double turn = left + (i + 0.5) * step;
      double cosTurn = Math.cos(turn);
      double azimuth = wallAzimuthDeg + Math.toDegrees(turn);
      double skyline = Math.toRadians(before.lowestDeg(azimuth));
      double low = Math.max(skyline, Math.atan(part.z1M() * cosTurn / d));
      double high = Math.atan(part.z2M() * cosTurn / d);
      for (Strip strip : pastBodies(turn, new Strip(azimuth, cosTurn, low, high))) {
        strip(before, sums, strip);
      }
    }
    return Arrays.stream(sums)
        .map(s -> new SkyCoefficients(s[0], s[1] * 3 / 7).times(step / Math.PI))
        .toList();
  }

  /** A strip of sky from a lower to an upper altitude, radians. */
  private record Strip(double azimuthDeg, double cosTurn, double low, double high) {
    Strip from(double altitude) {
      return new Strip(azimuthDeg, cosTurn, Math.max(low, altitude), high);
    }

    Strip to(double altitude) {
      return new Strip(azimuthDeg, cosTurn, low, Math.min(high, altitude));
    }
  }

  /** What the bodies leave of a strip. */
  private List<Strip> pastBodies(double turn, Strip whole) {
    List<Strip> open = List.of(whole);
    for (Block body : bodies) {
      Block.Hidden hidden = body.hidden(turn);
      if (hidden.upper() > hidden.lower()) {
        double lower = Math.atan(hidden.lower());
        double upper = Math.atan(hidden.upper());
        open = open.stream().flatMap(s -> Stream.of(s.to(lower), s.from(upper))).toList();
      }
    }
    return open;
  }

  /** Integral of sin g cos g over the altitudes g of a strip, times glass and the sky's pattern. */
  private void strip(SkyScreen before, double[][] sums, Strip strip) {
    if (strip.high <= strip.low) {
      return;
    }
    int rays = before.treeSets() > 1 ? RAYS_BEFORE_TREES : RAYS_IN_STRIP;
    double step = (strip.high - strip.low) / rays;
    for (int j = 0; j < rays; j++) {
      double altitude = strip.low + (j + 0.5) * step;
      double light = Math.sin(2 * altitude) * Math.sin(step) / 2;
      double through = light * glazing.at(strip.cosTurn * Math.cos(altitude));
      int set = before.treesAt(strip.azimuthDeg, Math.toDegrees(altitude));
      sums[set][0] += through;
      sums[set][1] += through * (1 + 2 * Math.sin(altitude));
    }
  }
}
