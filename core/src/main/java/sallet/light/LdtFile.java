package sallet.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.household.Photometry;
import sallet.weather.UnreadableFile;

/**
 * Photometry files of the form EULUMDAT (Stockmar 1990): one value a line, intensities in candela
 * for 1000 lm of the lamps. Plane 0 lies across the lamp's length; which planes are stored for each
 * symmetry is from memory.
 */
public final class LdtFile {
  private static final int HEAD = 26;
  private static final int RATIOS = 10;

  private final List<String> lines;

  private LdtFile(List<String> lines) {
    this.lines = lines;
  }

  /**
   * Reads the lines of a file.
   *
   * @throws UnreadableFile when it is broken, cut short or of another kind
   */
  public static Photometry read(List<String> lines) {
    return new LdtFile(lines).photometry();
  }

  private Photometry photometry() {
    if (lines.size() < HEAD) {
      throw new UnreadableFile(
          lines.size(), "this is no EULUMDAT file: it ends before its line " + HEAD);
    }
    int symmetry = (int) number(3, "the symmetry", 0, 4);
    int planes = (int) number(4, "the number of planes", 1, 721);
    double planeStep = number(5, "the distance of the planes", 0, 360);
    int angles = (int) number(6, "the number of angles", 2, 721);
    double angleStep = number(7, "the distance of the angles", 0, 180);
    int sets = (int) number(26, "the number of lamp sets", 1, 20);
    double count = number(27, "the number of lamps", -1000, 1000);
    double lumens = 0;
    double watts = 0;
    for (int s = 0; s < sets; s++) {
      lumens += number(27 + 2 * sets + s, "the lamps' light", 0, 1e9);
      watts += number(27 + 5 * sets + s, "the lamps' watts", 0, 1e6);
    }
    int first = 27 + 6 * sets + RATIOS;
    int stored = stored(symmetry, planes);
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < planes; i++) {
      all.add(number(first + i, "a plane", 0, 360));
    }
    List<Double> gammas = new ArrayList<>();
    for (int i = 0; i < angles; i++) {
      double gamma = number(first + planes + i, "an angle", 0, 180);
      if (i > 0 && gamma <= gammas.get(i - 1)) {
        throw new UnreadableFile(
            first + planes + i, "angle " + gamma + " stands after " + gammas.get(i - 1));
      }
      gammas.add(gamma);
    }
    if (gammas.get(0) > 0 || planeStep < 0 || angleStep < 0) {
      throw new UnreadableFile(first + planes, "the angles do not begin at 0");
    }
    // A negative number of lamps marks intensities of the lamp as it is, still for 1000 lm.
    double scale = lumens / 1000 * (count < 0 ? 1 : number(23, "the output ratio", 0, 200) / 100);
    double factor = number(24, "the factor of the intensities", 0, 1e6);
    List<List<Double>> candela = new ArrayList<>();
    int at = first + planes + angles;
    for (int p = 0; p < stored; p++) {
      List<Double> plane = new ArrayList<>();
      for (int a = 0; a < angles; a++) {
        plane.add(scale * factor * number(at++, "an intensity", 0, 1e9));
      }
      candela.add(plane);
    }
    double length = number(16, "the shining length", 0, 1e5) / 1000;
    double width = number(17, "the shining width", 0, 1e5) / 1000;
    return Planes.around(planesOf(symmetry, all, stored), candela, at - 1)
        .photometry(lines.get(8).strip(), gammas, width == 0 ? length : width, length, watts);
  }

  private static int stored(int symmetry, int planes) {
    return switch (symmetry) {
      case 1 -> 1;
      case 2, 3 -> planes / 2 + 1;
      case 4 -> planes / 4 + 1;
      default -> planes;
    };
  }

  private static List<Double> planesOf(int symmetry, List<Double> all, int stored) {
    int start = symmetry == 3 ? (stored - 1) / 2 : 0;
    if (symmetry == 3) {
      List<Double> planes = new ArrayList<>();
      for (int i = 0; i < stored; i++) {
        planes.add(all.get(Math.min(start + i, all.size() - 1)));
      }
      return planes;
    }
    return all.subList(0, stored);
  }

  /** A line, counted from 1; a decimal comma counts as a point. */
  private double number(int line, String what, double least, double most) {
    if (line > lines.size()) {
      throw new UnreadableFile(
          lines.size(), "the file ends where " + what + " should stand (line " + line + ")");
    }
    String text = lines.get(line - 1).strip().replace(',', '.');
    try {
      double value = Double.parseDouble(text);
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Told below, like a number that cannot be.
    }
    throw new UnreadableFile(
        line,
        what
            + " cannot be \""
            + (text.length() > 20 ? text.substring(0, 20) + "..." : text)
            + "\"");
  }

  /** The lines of a file with this photometry, all planes stored. */
  public static List<String> write(Photometry lamp) {
    int planes = lamp.planesDeg().size() - 1;
    double lumens = lamp.lumens();
    List<String> lines = new ArrayList<>();
    lines.addAll(List.of("-", "1", "0", Integer.toString(planes)));
    lines.addAll(List.of(text(360.0 / planes), Integer.toString(lamp.anglesDeg().size()), "0"));
    lines.addAll(List.of("-", lamp.name(), "-", "-", "-"));
    for (double size : new double[] {lamp.widthM(), lamp.lengthM(), 0, lamp.widthM()}) {
      lines.add(text(1000 * size));
    }
    lines.add(text(1000 * lamp.lengthM()));
    lines.addAll(List.of("0", "0", "0", "0", "100", "100", "1", "0", "1"));
    lines.addAll(List.of("1", "LED", text(lumens), "-", "-", text(lamp.watts())));
    for (int i = 0; i < RATIOS; i++) {
      lines.add("0");
    }
    lamp.planesDeg().subList(0, planes).forEach(p -> lines.add(text(p)));
    lamp.anglesDeg().forEach(a -> lines.add(text(a)));
    for (List<Double> plane : lamp.candela().subList(0, planes)) {
      plane.forEach(c -> lines.add(text(c * 1000 / lumens)));
    }
    return lines;
  }

  private static String text(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }
}
