package sallet.household;

import java.util.List;

/**
 * How a lamp's light is spread over the directions, as a lamp maker's file has it. All round:
 * planes from 0 to 360 degrees about the axis straight down, angles from that axis up.
 *
 * @param name what the file calls the lamp
 * @param planesDeg half-planes, growing from 0 to 360; 0 points along the lamp's length
 * @param anglesDeg angles from straight down, growing, 0 to at most 180
 * @param candela intensity, a list of angles for each plane, cd
 * @param lengthM shining face along plane 0, m; 0 when the file has none
 * @param widthM shining face across it, m
 * @param watts input, 0 when the file has none
 */
public record Photometry(
    String name,
    List<Double> planesDeg,
    List<Double> anglesDeg,
    List<List<Double>> candela,
    double lengthM,
    double widthM,
    double watts) {
  public Photometry {
    planesDeg = List.copyOf(planesDeg);
    anglesDeg = List.copyOf(anglesDeg);
    candela = candela.stream().map(List::copyOf).toList();
  }

  /** Intensity in a direction, straight lines between the values of the file; 0 beyond them, cd. */
  public double candela(double planeDeg, double angleDeg) {
    int last = anglesDeg.size() - 1;
    if (angleDeg > anglesDeg.get(last) + 1e-9 || angleDeg < anglesDeg.get(0) - 1e-9) {
      return 0;
    }
    double plane = ((planeDeg % 360) + 360) % 360;
    int p = below(planesDeg, plane);
    int a = below(anglesDeg, angleDeg);
    double pw = share(planesDeg, p, plane);
    double aw = share(anglesDeg, a, angleDeg);
    return (1 - pw) * along(p, a, aw) + pw * along(p + 1, a, aw);
  }

  /**
   * Light of all directions, lm: 2π (cos a - cos b) times the mean of both ends for each zone, and
   * the mean over the planes. Source: zonal flux as in the IES Lighting Handbook.
   */
  public double lumens() {
    double sum = 0;
    for (int p = 1; p < planesDeg.size(); p++) {
      double share = (planesDeg.get(p) - planesDeg.get(p - 1)) / 360;
      sum += share * (zones(candela.get(p - 1)) + zones(candela.get(p))) / 2;
    }
    return sum;
  }

  private double zones(List<Double> intensities) {
    double flux = 0;
    for (int i = 1; i < anglesDeg.size(); i++) {
      double zone =
          Math.cos(Math.toRadians(anglesDeg.get(i - 1)))
              - Math.cos(Math.toRadians(anglesDeg.get(i)));
      flux += Math.PI * zone * (intensities.get(i - 1) + intensities.get(i));
    }
    return flux;
  }

  private double along(int p, int a, double weight) {
    List<Double> plane = candela.get(Math.min(p, candela.size() - 1));
    return (1 - weight) * plane.get(a) + weight * plane.get(Math.min(a + 1, plane.size() - 1));
  }

  private static int below(List<Double> values, double value) {
    int i = 0;
    int j = values.size() - 1;
    while (j - i > 1) {
      int mid = (i + j) / 2;
      if (values.get(mid) <= value) {
        i = mid;
      } else {
        j = mid;
      }
    }
    return i;
  }

  private static double share(List<Double> values, int i, double value) {
    if (i + 1 >= values.size()) {
      return 0;
    }
    return (value - values.get(i)) / (values.get(i + 1) - values.get(i));
  }
}
