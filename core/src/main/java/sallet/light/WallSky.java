package sallet.light;

import java.util.Optional;
import sallet.household.Outlook;
import sallet.household.Window;

/**
 * How much of the sky's light on a wall what stands before its window leaves, against the window's
 * own skyline alone: the integral of cos² g cos a over the sky seen from the window's middle.
 */
final class WallSky {
  private static final int STRIPS = 60;
  private static final int STEPS = 45;

  private final double[] bySetOfTrees;

  private WallSky(double[] bySetOfTrees) {
    this.bySetOfTrees = bySetOfTrees;
  }

  static WallSky of(Window window, double azimuthDeg, SkyScreen screen) {
    if (window.outlook().isOpen()) {
      return new WallSky(new double[] {1});
    }
    double half = window.widthM() / 2;
    Opening middle =
        new Opening(new Rectangle(-half, half, -window.heightM() / 2, window.heightM() / 2), 0, 0);
    Optional<Block> plate = window.outlook().overhang().map(o -> Block.of(middle, o));
    SkyScreen bare = new SkyScreen(window.skylineDeg(), Outlook.OPEN);
    double[] seen = sums(azimuthDeg, screen, plate);
    double whole = sums(azimuthDeg, bare, Optional.empty())[0];
    for (int set = 0; set < seen.length; set++) {
      seen[set] = whole == 0 ? 0 : seen[set] / whole;
    }
    return new WallSky(seen);
  }

  /** The share on a day whose trees let this much through. */
  double open(double[] passing) {
    double open = 0;
    for (int set = 0; set < bySetOfTrees.length; set++) {
      open += passing[set] * bySetOfTrees[set];
    }
    return open;
  }

  private static double[] sums(double azimuthDeg, SkyScreen screen, Optional<Block> plate) {
    double[] sums = new double[screen.treeSets()];
    for (int i = 0; i < STRIPS; i++) {
      double turn = Math.PI * ((i + 0.5) / STRIPS - 0.5);
      double azimuth = azimuthDeg + Math.toDegrees(turn);
      double skyline = Math.toRadians(screen.lowestDeg(azimuth));
      Block.Hidden hidden = plate.map(p -> p.hidden(turn)).orElse(Block.Hidden.NOTHING);
      double step = (Math.PI / 2 - skyline) / STEPS;
      for (int j = 0; j < STEPS; j++) {
        double altitude = skyline + (j + 0.5) * step;
        double slope = Math.tan(altitude);
        if (slope < hidden.lower() || slope > hidden.upper()) {
          double cosine = Math.cos(altitude);
          sums[screen.treesAt(azimuth, Math.toDegrees(altitude))] +=
              cosine * cosine * Math.cos(turn) * step;
        }
      }
    }
    return sums;
  }
}
