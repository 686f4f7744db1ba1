package sallet.water.medium;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * A growing medium.
 *
 * @param name its name in the household file
 * @param retention how it holds water
 * @param bulkGCm3 dry mass of a filled cubic centimetre, g
 * @param wetting share of the drained content that a flood from below brings back. Judgement
 * @param wettingFromDry the same once it has dried out
 * @param depletion share of the easily available water that may go before the next flood. Judgement
 * @param floorContent mean content below which it must never fall, m³/m³. Judgement
 * @param basis where the curve comes from
 * @param knownAs how well it is known: computed or memory
 */
public record Medium(
    String name,
    Retention retention,
    double bulkGCm3,
    double wetting,
    double wettingFromDry,
    double depletion,
    double floorContent,
    String basis,
    String knownAs) {

  /** Pull at which water stops being easy to get, cm. De Boodt and Verdonck (from memory). */
  public static final double EASY_CM = 50;

  /** Pull at which leaves are taken to wilt, cm. Judgement. */
  public static final double WILT_CM = 100;

  /** Share of air below which roots may lack oxygen. Nursery guideline 13 to 30 %; judgement. */
  public static final double LEAST_AIR = 0.10;

  /** All media of the household file. */
  public static List<Medium> catalogue() {
    try (InputStream in = Medium.class.getResourceAsStream("media.csv")) {
      if (in == null) {
        throw new IllegalStateException("the table of media is missing");
      }
      try (CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(in)) {
        return csv.stream().map(Medium::of).toList();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The medium of that name. */
  public static Medium named(String name) {
    return catalogue().stream()
        .filter(medium -> medium.name.equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no medium is called " + name));
  }

  private static Medium of(NamedCsvRecord row) {
    Retention retention =
        new Retention(
            number(row, "theta_r"),
            number(row, "theta_s"),
            number(row, "alpha_per_cm"),
            number(row, "n"));
    return new Medium(
        row.getField("medium"),
        retention,
        number(row, "bulk_g_cm3"),
        number(row, "wetting"),
        number(row, "from_dry"),
        number(row, "depletion"),
        Math.max(number(row, "floor"), retention.at(WILT_CM)),
        row.getField("basis"),
        row.getField("known_as"));
  }

  private static double number(NamedCsvRecord row, String column) {
    return Double.parseDouble(row.getField(column));
  }
}
