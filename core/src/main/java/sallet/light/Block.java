package sallet.light;

import java.util.ArrayList;
import java.util.List;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.Outlook;
import sallet.household.Sides;

/**
 * An opaque body with upright sides that may hide the sky from a point: the body of a lamp, a sheet
 * beside the tray, an overhang outdoors. It may be as flat as a plate or as thin as a sheet.
 *
 * @param rightM middle of its plan, to the right of the point looking out, m
 * @param outM middle of its plan, out from the point, m
 * @param halfRightM half its size along its own right, m
 * @param halfOutM half its size along its own out, m
 * @param turnRad how far it is turned clockwise as seen from above
 * @param lowM underside above the point, m
 * @param highM top above the point, m
 */
record Block(
    double rightM,
    double outM,
    double halfRightM,
    double halfOutM,
    double turnRad,
    double lowM,
    double highM) {
  /** A direction turned less than this from a side runs along it. */
  private static final double ALONG = 1e-12;

  /**
   * Tangents of the altitudes hidden in one direction, lower and upper; nothing is hidden when the
   * upper is not above the lower.
   */
  record Hidden(double lower, double upper) {
    static final Hidden NOTHING = new Hidden(0, 0);
  }

  /** The plate of an overhang before an opening. */
  static Block of(Opening opening, Outlook.Overhang overhang) {
    Rectangle hole = opening.hole();
    double height = hole.z2M() + overhang.aboveM();
    return new Block(
        (hole.x1M() + hole.x2M()) / 2,
        opening.distanceM() + opening.revealM() + overhang.depthM() / 2,
        hole.widthM() / 2 + overhang.besideM(),
        overhang.depthM() / 2,
        0,
        height,
        height);
  }

  /**
   * What hangs and stands around a tray: the bodies of its lamps, taken as flat as their faces (a
   * lamp that leans as the box around it), and the sheets along its edges, up to the lowest lamp.
   * Seen from the room's south-west corner, right being east and out being north.
   */
  static List<Block> around(Bench bench, List<Lamp> lamps) {
    List<Block> blocks = new ArrayList<>();
    for (Lamp lamp : lamps) {
      double tilt = Math.toRadians(lamp.tiltDeg());
      double face = bench.heightM() + lamp.heightAboveBenchM();
      double lean = lamp.widthM() / 2 * Math.abs(Math.sin(tilt));
      blocks.add(
          new Block(
              lamp.xM(),
              lamp.yM(),
              lamp.lengthM() / 2,
              lamp.widthM() / 2 * Math.cos(tilt),
              Math.toRadians(lamp.turnDeg()),
              face - lean,
              face + lean));
    }
    lamps.stream()
        .mapToDouble(Lamp::heightAboveBenchM)
        .min()
        .ifPresent(top -> blocks.addAll(sheets(bench, top)));
    return blocks;
  }

  private static List<Block> sheets(Bench bench, double topM) {
    List<Block> sheets = new ArrayList<>();
    Sides sides = bench.sides();
    double halfEast = bench.widthM() / 2;
    double halfNorth = bench.depthM() / 2;
    double east = bench.xM() + halfEast;
    double north = bench.yM() + halfNorth;
    double low = bench.heightM();
    double high = low + topM;
    if (sides.north() > 0) {
      sheets.add(new Block(east, north + halfNorth, halfEast, 0, 0, low, high));
    }
    if (sides.south() > 0) {
      sheets.add(new Block(east, north - halfNorth, halfEast, 0, 0, low, high));
    }
    if (sides.east() > 0) {
      sheets.add(new Block(east + halfEast, north, 0, halfNorth, 0, low, high));
    }
    if (sides.west() > 0) {
      sheets.add(new Block(east - halfEast, north, 0, halfNorth, 0, low, high));
    }
    return sheets;
  }

  /**
   * One described from the room's corner as a point sees it.
   *
   * @param outDeg the way it looks out, clockwise from the room's own north, degrees
   */
  Block seenFrom(Spot spot, double outDeg) {
    double out = Math.toRadians(outDeg);
    double east = rightM - spot.xM();
    double north = outM - spot.yM();
    return new Block(
        east * Math.cos(out) - north * Math.sin(out),
        east * Math.sin(out) + north * Math.cos(out),
        halfRightM,
        halfOutM,
        turnRad - out,
        lowM - spot.zM(),
        highM - spot.zM());
  }

  /** Whether it hides what shines from a direction above the level. */
  boolean hides(double right, double out, double up) {
    Hidden hidden = hidden(right, out);
    return up > 0 && up >= hidden.lower && up <= hidden.upper;
  }

  /** What it hides above the level in a direction turned clockwise from straight out, radians. */
  Hidden hidden(double directionRad) {
    return hidden(Math.sin(directionRad), Math.cos(directionRad));
  }

  /** The rise, over a level way to the right and out, of the rays it hides. */
  private Hidden hidden(double right, double out) {
    double cos = Math.cos(turnRad);
    double sin = Math.sin(turnRad);
    Way across = new Way(right * cos - out * sin, rightM * cos - outM * sin, halfRightM);
    Way along = new Way(right * sin + out * cos, rightM * sin + outM * cos, halfOutM);
    double nearest = Math.max(0, Math.max(across.enters(), along.enters()));
    double farthest = Math.min(across.leaves(), along.leaves());
    if (farthest < nearest || farthest <= 0 || highM <= 0) {
      return Hidden.NOTHING;
    }
    return new Hidden(Math.max(0, lowM) / farthest, highM / nearest);
  }

  /** A level ray along one of the body's axes: how fast it goes, where the body lies. */
  private record Way(double speed, double middleM, double halfM) {
    double enters() {
      return Math.abs(speed) < ALONG
          ? (Math.abs(middleM) <= halfM ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY)
          : Math.min((middleM - halfM) / speed, (middleM + halfM) / speed);
    }

    double leaves() {
      return Math.abs(speed) < ALONG
          ? (Math.abs(middleM) <= halfM ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY)
          : Math.max((middleM - halfM) / speed, (middleM + halfM) / speed);
    }
  }
}
