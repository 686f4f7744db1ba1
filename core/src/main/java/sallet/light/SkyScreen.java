package sallet.light;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import sallet.household.Outlook;

/**
 * What hides the sky before a window: a skyline to everything below it, trees in part. Crowns are
 * dark against the sky; their share of visible sky goes from the bare to the leafy value in 30 days
 * and back (common practice; shares: Wilkinson 1992 as tabulated by Tregenza and Sharples).
 */
final class SkyScreen {
  /** Days in which leaves come and go. */
  private static final double LEAFING_DAYS = 30;

  private final double skylineDeg;
  private final Outlook outlook;
  private final boolean level;
  private final double[] untouched;

  SkyScreen(double skylineDeg, Outlook outlook) {
    this.skylineDeg = Math.max(0, skylineDeg);
    this.outlook = outlook;
    this.level = outlook.horizon().isEmpty() && outlook.houses().isEmpty();
    this.untouched = new double[] {1};
  }

  /** Nothing before the window. */
  static SkyScreen none() {
    return new SkyScreen(0, Outlook.OPEN);
  }

  /** Whether anything opaque stands there. */
  boolean hides() {
    return skylineDeg > 0 || !level;
  }

  /** The skyline in a direction, degrees. */
  double lowestDeg(double azimuthDeg) {
    if (level) {
      return skylineDeg;
    }
    double lowest = Math.max(skylineDeg, horizonDeg(azimuthDeg));
    for (Outlook.House house : outlook.houses()) {
      if (between(azimuthDeg, house.fromDeg(), house.toDeg())) {
        lowest = Math.max(lowest, house.altitudeDeg());
      }
    }
    return lowest;
  }

  /** How many sets of trees can stand in one line. */
  int treeSets() {
    return 1 << outlook.trees().size();
  }

  /** The trees in a direction, as a set: bit i for tree i. */
  int treesAt(double azimuthDeg, double altitudeDeg) {
    int set = 0;
    for (int i = 0; i < outlook.trees().size(); i++) {
      Outlook.Tree tree = outlook.trees().get(i);
      if (altitudeDeg >= tree.lowDeg()
          && altitudeDeg <= tree.highDeg()
          && between(azimuthDeg, tree.fromDeg(), tree.toDeg())) {
        set |= 1 << i;
      }
    }
    return set;
  }

  /** Share of light that passes each set of trees on a day. */
  double[] passing(LocalDate day) {
    List<Outlook.Tree> trees = outlook.trees();
    if (trees.isEmpty()) {
      return untouched;
    }
    double[] passing = new double[treeSets()];
    for (int set = 0; set < passing.length; set++) {
      passing[set] = 1;
      for (int i = 0; i < trees.size(); i++) {
        if ((set & 1 << i) != 0) {
          passing[set] *= visible(trees.get(i), day);
        }
      }
    }
    return passing;
  }

  /** Share of sky seen through a crown on a day. */
  static double visible(Outlook.Tree tree, LocalDate day) {
    double leaves = leaves(tree.leafOut(), tree.leafFall(), day);
    return tree.winterSky() + leaves * (tree.summerSky() - tree.winterSky());
  }

  private static double leaves(MonthDay out, MonthDay fall, LocalDate day) {
    int since = daysFrom(out, MonthDay.from(day));
    int lasting = daysFrom(out, fall);
    return Math.max(
        0, Math.min(Math.min(1, since / LEAFING_DAYS), 1 - (since - lasting) / LEAFING_DAYS));
  }

  private static int daysFrom(MonthDay from, MonthDay to) {
    return Math.floorMod(to.atYear(2023).getDayOfYear() - from.atYear(2023).getDayOfYear(), 365);
  }

  private double horizonDeg(double azimuthDeg) {
    List<Outlook.Point> points = outlook.horizon();
    for (int i = 0; i < points.size(); i++) {
      Outlook.Point left = points.get(i);
      Outlook.Point right = points.get((i + 1) % points.size());
      double span = turn(left.azimuthDeg(), right.azimuthDeg());
      double past = turn(left.azimuthDeg(), azimuthDeg);
      if (past <= span || points.size() == 1) {
        double weight = span == 0 ? 0 : past / span;
        return (1 - weight) * left.altitudeDeg() + weight * right.altitudeDeg();
      }
    }
    return 0;
  }

  private static boolean between(double azimuthDeg, double fromDeg, double toDeg) {
    return turn(fromDeg, azimuthDeg) <= turn(fromDeg, toDeg);
  }

  /** Clockwise from one direction to another, 0 to below 360 degrees. */
  private static double turn(double fromDeg, double toDeg) {
    return ((toDeg - fromDeg) % 360 + 360) % 360;
  }
}
