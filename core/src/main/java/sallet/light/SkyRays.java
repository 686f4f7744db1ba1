package sallet.light;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import sallet.household.Outlook;

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

  private final Opening opening;
  private final Glazing glazing;
  private final double wallAzimuthDeg;
  private final SkyScreen screen;
  private final Optional<Shade> shade;

  /** Without overhang. */
  SkyRays(Opening opening, Glazing glazing, double wallAzimuthDeg, SkyScreen screen) {
    this(opening, glazing, wallAzimuthDeg, screen, Optional.empty());
  }

  SkyRays(
      Opening opening,
      Glazing glazing,
      double wallAzimuthDeg,
      SkyScreen screen,
      Optional<Outlook.Overhang> overhang) {
    this.opening = opening;
    this.glazing = glazing;
    this.wallAzimuthDeg = wallAzimuthDeg;
    this.screen = screen;
    this.shade = overhang.map(plate -> Shade.of(opening, plate));
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
    double step = (Math.atan(part.x2M() / d) - left) / STRIPS;
    for (int i = 0; i < STRIPS; i++) {
      double turn = left + (i + 0.5) * step;
      double cosTurn = Math.cos(turn);
      double azimuth = wallAzimuthDeg + Math.toDegrees(turn);
      double skyline = Math.toRadians(before.lowestDeg(azimuth));
      double low = Math.max(skyline, Math.atan(part.z1M() * cosTurn / d));
      double high = Math.atan(part.z2M() * cosTurn / d);
      double[] hidden = shade.map(s -> s.hidden(turn)).orElseGet(() -> new double[2]);
      if (hidden[1] > hidden[0]) {
        strip(before, sums, new Strip(azimuth, cosTurn, low, Math.min(high, hidden[0])));
        strip(before, sums, new Strip(azimuth, cosTurn, Math.max(low, hidden[1]), high));
      } else {
        strip(before, sums, new Strip(azimuth, cosTurn, low, high));
      }
    }
    return Arrays.stream(sums)
        .map(s -> new SkyCoefficients(s[0], s[1] * 3 / 7).times(step / Math.PI))
        .toList();
  }

  /** A strip of sky from a lower to an upper altitude, radians. */
  private record Strip(double azimuthDeg, double cosTurn, double low, double high) {}

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
