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

  /** Count, type, light, colour, colour rendering and watts of a set of lamps. */
  private static final int LINES_OF_A_SET = 6;

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
    number(5, "the distance of the planes", 0, 360);
    int angles = (int) number(6, "the number of angles", 2, 721);
    number(7, "the distance of the angles", 0, 180);
    int sets = (int) number(26, "the number of lamp sets", 1, 20);
    int first = HEAD + 1 + LINES_OF_A_SET * sets + RATIOS;
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < planes; i++) {
      all.add(number(first + i, "a plane", 0, 360));
    }
    List<Double> gammas = gammas(first + planes, angles);
    int stored = stored(symmetry, planes);
    int at = first + planes + angles;
    double watts = sum(sets, 5, "the lamps' watts", 1e6);
    double length = number(16, "the shining length", 0, 1e5) / 1000;
    double width = number(17, "the shining width", 0, 1e5) / 1000;
    return Planes.around(
            planesOf(symmetry, all, stored),
            candela(at, stored, angles, sum(sets, 2, "the lamps' light", 1e9)),
            at + stored * angles - 1)
        .photometry(lines.get(8).strip(), gammas, width == 0 ? length : width, length, watts);
  }

  /** The sum of a field over the lamp sets. The file lists each field for all sets in turn. */
  private double sum(int sets, int field, String what, double most) {
    double sum = 0;
    for (int s = 0; s < sets; s++) {
      sum += number(HEAD + 1 + field * sets + s, what, 0, most);
    }
    return sum;
  }

  /** Growing angles from straight down. */
  private List<Double> gammas(int line, int count) {
    List<Double> gammas = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double gamma = number(line + i, "an angle", 0, 180);
      if (i > 0 && gamma <= gammas.get(i - 1)) {
        throw new UnreadableFile(line + i, "angle " + gamma + " stands after " + gammas.get(i - 1));
      }
      gammas.add(gamma);
    }
    if (gammas.get(0) > 0) {
      throw new UnreadableFile(line, "the angles do not begin at 0");
    }
    return gammas;
  }

  /**
   * Intensities of the stored planes. The file has them for 1000 lm of its lamps with what the
   * housing swallows already taken off: files of luminaires that let out 82 and 76 % of their
   * lamps' light add up to 820 and 758 lm (seen). The output ratio of line 23 must not be applied
   * again.
   */
  private List<List<Double>> candela(int first, int planes, int angles, double lumens) {
    double factor = lumens / 1000 * number(24, "the factor of the intensities", 0, 1e6);
    List<List<Double>> candela = new ArrayList<>();
    for (int p = 0; p < planes; p++) {
      List<Double> plane = new ArrayList<>();
      for (int a = 0; a < angles; a++) {
        plane.add(factor * number(first + p * angles + a, "an intensity", 0, 1e9));
      }
      candela.add(plane);
    }
    return candela;
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
