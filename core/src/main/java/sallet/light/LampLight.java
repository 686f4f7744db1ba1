package sallet.light;

import java.util.ArrayList;
import java.util.List;
import sallet.household.Bench;
import sallet.household.Lamp;
import sallet.household.Photometry;
import sallet.household.Sides;
import sallet.weather.DaySpans;

/**
 * Light of one lamp above the bench, straight and by way of reflecting sheets around the tray.
 *
 * <p>A level face that shines evenly is exact (closed form). Any other is cut into elements no
 * wider than a sixth of their distance, each with the file's spread. Sheets are mirrors: the light
 * of a lamp's image at a point is that of the lamp at the point's own image, times the reflectance
 * of each mirror met.
 */
final class LampLight {
  /** Images of less light than this are left out. */
  private static final double LEAST_IMAGE = 1e-4;

  private static final int MOST_REFLECTIONS = 40;

  /** Elements across the distance: the sum over them is then good to 0.3 %. */
  private static final double ELEMENTS_PER_DISTANCE = 6;

  private final Lamp lamp;
  private final Bench bench;
  private final double faceM;
  private final double lumens;
  private final List<Image> images;

  /** A mirror image: how many boxes east and north it lies, and what is left of its light. */
  private record Image(int east, int north, double left) {}

  LampLight(Lamp lamp, Bench bench) {
    this.lamp = lamp;
    this.bench = bench;
    this.faceM = bench.heightM() + lamp.heightAboveBenchM();
    this.lumens = lamp.photometry().map(Photometry::lumens).orElse(1.0);
    this.images = images(bench.sides());
  }

  /** When a lamp shines. */
  static DaySpans on(Lamp lamp) {
    return lamp.ppfUmolPerS() > 0
        ? DaySpans.daily(lamp.on().toNanoOfDay() / 3.6e12, lamp.hours())
        : DaySpans.NONE;
  }

  /**
   * PPFD on the level at a point of the room while the lamp is on, µmol/m²/s.
   *
   * @throws IllegalArgumentException when the lamp hangs no higher than the point
   */
  double ppfdUmol(double xM, double yM, double zM) {
    double above = faceM - zM;
    if (above <= 0) {
      throw new IllegalArgumentException(
          String.format(
              "the lamp hangs %.2f m above the tray, but the canopy reaches %.2f m",
              lamp.heightAboveBenchM(), zM - bench.heightM()));
    }
    double x = xM - bench.xM() - bench.widthM() / 2;
    double y = yM - bench.yM() - bench.depthM() / 2;
    double sum = 0;
    for (Image image : images) {
      double east = unfolded(x, image.east, bench.widthM());
      double north = unfolded(y, image.north, bench.depthM());
      sum += image.left * turned(east - lampEast(), north - lampNorth(), above);
    }
    return sum;
  }

  /** The image of a coordinate, from the box's middle, a number of boxes away. */
  private static double unfolded(double at, int boxes, double sizeM) {
    return (boxes % 2 == 0 ? 1 : -1) * (at - boxes * sizeM);
  }

  private double lampEast() {
    return lamp.xM() - bench.xM() - bench.widthM() / 2;
  }

  private double lampNorth() {
    return lamp.yM() - bench.yM() - bench.depthM() / 2;
  }

  /** Without mirrors, at a point east and north of the lamp's middle and so far below it. */
  private double turned(double eastM, double northM, double belowM) {
    double turn = Math.toRadians(lamp.turnDeg());
    return straight(
        eastM * Math.cos(turn) - northM * Math.sin(turn),
        eastM * Math.sin(turn) + northM * Math.cos(turn),
        belowM);
  }

  /** The same along the lamp's length and across it. */
  private double straight(double alongM, double acrossM, double belowM) {
    if (lamp.tiltDeg() == 0 && lamp.photometry().isEmpty()) {
      return lamp.ppfUmolPerS()
          / (lamp.lengthM() * lamp.widthM())
          * Panel.rectangle(lamp.lengthM(), lamp.widthM(), alongM, acrossM, belowM);
    }
    double aside =
        Math.hypot(
            Math.max(0, Math.abs(alongM) - lamp.lengthM() / 2),
            Math.max(0, Math.abs(acrossM) - lamp.widthM() / 2));
    double distance = Math.hypot(belowM, aside);
    int along = elements(lamp.lengthM(), distance);
    int across = elements(lamp.widthM(), distance);
    double sum = 0;
    for (int i = 0; i < along; i++) {
      double u = lamp.lengthM() * ((i + 0.5) / along - 0.5);
      for (int j = 0; j < across; j++) {
        double v = lamp.widthM() * ((j + 0.5) / across - 0.5);
        sum += element(alongM - u, acrossM, belowM, v);
      }
    }
    return sum / (along * across);
  }

  private static int elements(double sizeM, double distanceM) {
    return Math.max(1, Math.min(100, (int) Math.ceil(ELEMENTS_PER_DISTANCE * sizeM / distanceM)));
  }

  /** The whole lamp's light as if it came from an element v up the lamp's width. */
  private double element(double alongM, double acrossM, double belowM, double v) {
    double tilt = Math.toRadians(lamp.tiltDeg());
    double level = acrossM - v * Math.cos(tilt);
    double down = belowM + v * Math.sin(tilt);
    if (down <= 0) {
      return 0;
    }
    double square = alongM * alongM + level * level + down * down;
    double distance = Math.sqrt(square);
    double cosine = (level * Math.sin(tilt) + down * Math.cos(tilt)) / distance;
    double side = level * Math.cos(tilt) - down * Math.sin(tilt);
    return intensity(cosine, Math.toDegrees(Math.atan2(side, alongM))) * down / distance / square;
  }

  /** µmol/s and steradian at an angle of the given cosine from the lamp's axis. */
  private double intensity(double cosine, double planeDeg) {
    if (lamp.photometry().isEmpty()) {
      return lamp.ppfUmolPerS() / Math.PI * Math.max(0, cosine);
    }
    double angle = Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    return lamp.ppfUmolPerS() * lamp.photometry().get().candela(planeDeg, angle) / lumens;
  }

  private static List<Image> images(Sides sides) {
    List<Image> images = new ArrayList<>();
    for (int i = -MOST_REFLECTIONS; i <= MOST_REFLECTIONS; i++) {
      double east = left(i, sides.east(), sides.west());
      for (int j = -MOST_REFLECTIONS; east > LEAST_IMAGE && j <= MOST_REFLECTIONS; j++) {
        double both = east * left(j, sides.north(), sides.south());
        if (both > LEAST_IMAGE) {
          images.add(new Image(i, j, both));
        }
      }
    }
    return images;
  }

  /** Light left after the mirrors in turn, the near one first: that at the image's side. */
  private static double left(int boxes, double near, double far) {
    int mirrors = Math.abs(boxes);
    int atSecond = mirrors / 2;
    double first = boxes > 0 ? near : far;
    double second = boxes > 0 ? far : near;
    return Math.pow(first, mirrors - atSecond) * Math.pow(second, atSecond);
  }
}
