package sallet.light;

import java.util.ArrayList;
import java.util.List;
import sallet.household.Photometry;
import sallet.weather.UnreadableFile;

/**
 * Half-planes of intensities filled up to the full circle by the symmetry their last angle tells.
 *
 * @param planesDeg from 0 to 360
 * @param candela a list for each plane
 */
record Planes(List<Double> planesDeg, List<List<Double>> candela) {

  /**
   * From planes that begin at 0 and end at 0 (the same all round), 90 (four equal quarters), 180
   * (two equal halves) or beyond (none).
   *
   * @param line of the file, for the fault
   */
  static Planes around(List<Double> planesDeg, List<List<Double>> candela, int line) {
    double last = planesDeg.get(planesDeg.size() - 1);
    if (planesDeg.size() == 1) {
      return new Planes(List.of(0.0, 360.0), List.of(candela.get(0), candela.get(0)));
    }
    if (planesDeg.get(0) == 90 && last == 270) {
      return around(turned(planesDeg), candela, line).turnedBy90();
    }
    if (planesDeg.get(0) != 0) {
      throw new UnreadableFile(line, "the planes begin at " + planesDeg.get(0) + ", not at 0");
    }
    if (last == 90) {
      return mirrored(mirrored(new Planes(planesDeg, candela), 90), 180);
    }
    if (last == 180) {
      return mirrored(new Planes(planesDeg, candela), 180);
    }
    if (last < 180) {
      throw new UnreadableFile(
          line, "the planes end at " + last + " degrees; they must end at 0, 90, 180 or 360");
    }
    if (last == 360) {
      return new Planes(planesDeg, candela);
    }
    List<Double> planes = new ArrayList<>(planesDeg);
    planes.add(360.0);
    List<List<Double>> all = new ArrayList<>(candela);
    all.add(candela.get(0));
    return new Planes(planes, all);
  }

  Photometry photometry(
      String name, List<Double> anglesDeg, double lengthM, double widthM, double watts) {
    return new Photometry(name, planesDeg, anglesDeg, candela, lengthM, widthM, watts);
  }

  private static List<Double> turned(List<Double> planesDeg) {
    return planesDeg.stream().map(p -> p - 90).toList();
  }

  /** The same light turned by a quarter. */
  private Planes turnedBy90() {
    List<Double> planes = new ArrayList<>();
    List<List<Double>> all = new ArrayList<>();
    Photometry here = photometry("", anglesOfIndex(), 0, 0, 0);
    for (double plane : planesDeg) {
      planes.add(plane);
      List<Double> values = new ArrayList<>();
      for (int a = 0; a < candela.get(0).size(); a++) {
        values.add(here.candela(plane - 90, a));
      }
      all.add(values);
    }
    return new Planes(planes, all);
  }

  private List<Double> anglesOfIndex() {
    List<Double> index = new ArrayList<>();
    for (int a = 0; a < candela.get(0).size(); a++) {
      index.add((double) a);
    }
    return index;
  }

  private static Planes mirrored(Planes half, double aboutDeg) {
    List<Double> planes = new ArrayList<>(half.planesDeg);
    List<List<Double>> all = new ArrayList<>(half.candela);
    for (int i = half.planesDeg.size() - 2; i >= 0; i--) {
      planes.add(2 * aboutDeg - half.planesDeg.get(i));
      all.add(half.candela.get(i));
    }
    return new Planes(planes, all);
  }
}
