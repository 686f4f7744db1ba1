package sallet.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.household.Photometry;
import sallet.weather.UnreadableFile;

/**
 * Photometry files of the form ANSI/IES LM-63 (1986 to 2019), type C. The luminous length lies
 * along plane 0, the width across it.
 */
public final class IesFile {
  private static final double FOOT_M = 0.3048;
  private static final int MOST_ANGLES = 2000;

  private final List<String> words = new ArrayList<>();
  private final List<Integer> lineOf = new ArrayList<>();
  private int next;

  private IesFile() {}

  /**
   * Reads the lines of a file.
   *
   * @throws UnreadableFile when it is broken, cut short, of another kind or of type A or B
   */
  public static Photometry read(List<String> lines) {
    int tilt = 0;
    while (tilt < lines.size() && !lines.get(tilt).strip().startsWith("TILT=")) {
      tilt++;
    }
    if (tilt == lines.size()) {
      throw new UnreadableFile(
          1, "this is no photometry file of the form LM-63: it has no line TILT=");
    }
    IesFile file = new IesFile();
    for (int i = tilt + 1; i < lines.size(); i++) {
      for (String word : lines.get(i).strip().split("[\\s,]+")) {
        if (!word.isEmpty()) {
          file.words.add(word);
          file.lineOf.add(i + 1);
        }
      }
    }
    if (lines.get(tilt).strip().equals("TILT=INCLUDE")) {
      file.skipTilt();
    }
    return file.photometry(name(lines.subList(0, tilt)), oldFactor(lines));
  }

  /** Before 2002 the second factor multiplied as well. */
  private static boolean oldFactor(List<String> lines) {
    String first = lines.get(0).strip();
    return !first.startsWith("IESNA:LM-63-2002") && !first.startsWith("IES:LM-63-20");
  }

  private static String name(List<String> head) {
    return head.stream()
        .filter(line -> line.strip().startsWith("[LUMINAIRE]"))
        .map(line -> line.strip().substring("[LUMINAIRE]".length()).strip())
        .findFirst()
        .orElse("lamp");
  }

  private void skipTilt() {
    number("the lamp's position", 1, 3);
    int pairs = (int) number("the number of tilt angles", 1, MOST_ANGLES);
    for (int i = 0; i < 2 * pairs; i++) {
      number("a tilt angle or factor", -1e6, 1e6);
    }
  }

  private Photometry photometry(String name, boolean oldFactor) {
    number("the number of lamps", 0, 1e6);
    number("the lumens of a lamp", -1, 1e9);
    double factor = number("the multiplier", 0, 1e9);
    int vertical = (int) number("the number of vertical angles", 2, MOST_ANGLES);
    int horizontal = (int) number("the number of horizontal angles", 1, MOST_ANGLES);
    onlyTypeC((int) number("the photometric type", 1, 3));
    double unit = number("the unit of length", 1, 2) < 2 ? FOOT_M : 1;
    double width = unit * Math.abs(number("the width", -100, 100));
    double length = unit * Math.abs(number("the length", -100, 100));
    number("the height", -100, 100);
    double ballast = number("the ballast factor", 0, 1000);
    double second = number("the second factor", 0, 1000);
    double watts = number("the watts", 0, 1e6);
    double scale = factor * ballast * (oldFactor && second > 0 ? second : 1);
    List<Double> angles = angles("a vertical angle", vertical, 180);
    List<Double> planes = angles("a horizontal angle", horizontal, 360);
    List<List<Double>> candela = candela(horizontal, vertical, scale);
    if (angles.get(0) > 0) {
      throw new UnreadableFile(
          0, "the lamp shines up only: its angles begin at " + angles.get(0) + " degrees");
    }
    return Planes.around(planes, candela, lineOf.get(next - 1))
        .photometry(name, angles, length, width, watts);
  }

  private void onlyTypeC(int type) {
    if (type != 1) {
      throw new UnreadableFile(
          lineOf.get(next - 1),
          "the file has angles of type "
              + (type == 2 ? "B" : "A")
              + " (floodlights); Sallet reads type C, which lamps for rooms have");
    }
  }

  private List<List<Double>> candela(int planes, int angles, double scale) {
    List<List<Double>> candela = new ArrayList<>();
    for (int p = 0; p < planes; p++) {
      List<Double> plane = new ArrayList<>();
      for (int a = 0; a < angles; a++) {
        plane.add(scale * number("a candela value", 0, 1e9));
      }
      candela.add(plane);
    }
    return candela;
  }

  private List<Double> angles(String what, int count, double most) {
    List<Double> angles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = number(what, 0, most);
      if (i > 0 && angle <= angles.get(i - 1)) {
        throw new UnreadableFile(
            lineOf.get(next - 1), what + " is " + angle + " after " + angles.get(i - 1));
      }
      angles.add(angle);
    }
    return angles;
  }

  private double number(String what, double least, double most) {
    if (next >= words.size()) {
      int line = lineOf.isEmpty() ? 0 : lineOf.get(lineOf.size() - 1);
      throw new UnreadableFile(line, "the file ends where " + what + " should stand");
    }
    String word = words.get(next);
    int line = lineOf.get(next);
    next++;
    try {
      double value = Double.parseDouble(word);
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Told below, like a number that cannot be.
    }
    throw new UnreadableFile(
        line,
        String.format(
            Locale.ROOT,
            "%s cannot be \"%s\"",
            what,
            word.length() > 20 ? word.substring(0, 20) + "..." : word));
  }

  /** The lines of a file of the 2002 form with this photometry, in metres. */
  public static List<String> write(Photometry lamp) {
    List<String> lines = new ArrayList<>();
    lines.add("IESNA:LM-63-2002");
    lines.add("[LUMINAIRE] " + lamp.name());
    lines.add("TILT=NONE");
    lines.add(
        String.format(
            Locale.ROOT,
            "1 -1 1 %d %d 1 2 %.4f %.4f 0",
            lamp.anglesDeg().size(),
            lamp.planesDeg().size(),
            lamp.widthM(),
            lamp.lengthM()));
    lines.add(String.format(Locale.ROOT, "1 1 %.2f", lamp.watts()));
    lines.add(text(lamp.anglesDeg()));
    lines.add(text(lamp.planesDeg()));
    lamp.candela().forEach(plane -> lines.add(text(plane)));
    return lines;
  }

  private static String text(List<Double> values) {
    return String.join(
        " ", values.stream().map(v -> String.format(Locale.ROOT, "%.3f", v)).toList());
  }
}
