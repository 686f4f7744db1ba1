package sallet.crop.risk;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import sallet.crop.Crop;

/**
 * The largest nitrate contents the European Union allows in leaf vegetables in trade, and a rough
 * guess of what leaf grown in a light may hold.
 *
 * <p>Maxima: Regulation (EU) No 1258/2011. They bind traders, not a household; they are shown as
 * the published measure there is.
 */
public final class NitrateLimits {
  private NitrateLimits() {}

  /**
   * One maximum.
   *
   * @param product as the regulation names it
   * @param growing "under glass or film", "open air" or "any"
   * @param period "1 Oct - 31 Mar", "1 Apr - 30 Sep" or "all year"
   * @param mgPerKg nitrate, mg NO3 by kg of fresh leaf
   * @param source regulation
   */
  public record Maximum(
      String product, String growing, String period, int mgPerKg, String source) {}

  /** All maxima. */
  public static List<Maximum> all() {
    try (InputStream in =
            Objects.requireNonNull(
                NitrateLimits.class.getResourceAsStream("nitrate_limits_eu.csv"));
        CsvReader<NamedCsvRecord> rows =
            CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return rows.stream().map(NitrateLimits::maximum).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Maximum maximum(NamedCsvRecord row) {
    return new Maximum(
        row.getField("product"),
        row.getField("growing"),
        row.getField("harvest_period"),
        Integer.parseInt(row.getField("max_mg_NO3_per_kg_fresh")),
        row.getField("source"));
  }

  /**
   * The maximum for a crop under cover; empty when the regulation names none.
   *
   * @param harvest day of harvest in the north; in the south the months are turned by half a year
   * @param southern whether the room lies south of the equator
   */
  public static Optional<Maximum> of(Crop crop, LocalDate harvest, boolean southern) {
    int month = (southern ? harvest.plusMonths(6) : harvest).getMonthValue();
    boolean winter = month >= 10 || month <= 3;
    String period = winter ? "1 Oct - 31 Mar" : "1 Apr - 30 Sep";
    String product = product(crop);
    return product.isEmpty()
        ? Optional.empty()
        : all().stream()
            .filter(max -> max.product().startsWith(product))
            .filter(max -> !max.growing().equals("open air"))
            .filter(max -> max.period().equals(period) || max.period().equals("all year"))
            .findFirst();
  }

  private static String product(Crop crop) {
    return switch (crop.species()) {
      case "Lactuca sativa" ->
          crop.name().startsWith("crisphead") ? "iceberg type" : "lettuce except iceberg";
      case "Spinacia oleracea" -> "spinach fresh";
      case "Eruca vesicaria subsp. sativa", "Diplotaxis tenuifolia" -> "rocket";
      default -> "";
    };
  }

  /**
   * Rough nitrate of fed lettuce grown in a light, mg/kg: 2500 (12/DLI)^0.6. From memory; other
   * feeds, types and last days give half or double. No number is known for other crops; rocket
   * gathers most.
   *
   * @param dliMol mean daily light of the last weeks, above 0 mol/m²/d
   */
  public static OptionalInt guessMgPerKg(Crop crop, double dliMol) {
    return crop.species().equals("Lactuca sativa") && dliMol > 0
        ? OptionalInt.of((int) Math.round(2500 * Math.pow(12 / dliMol, 0.6)))
        : OptionalInt.empty();
  }
}
