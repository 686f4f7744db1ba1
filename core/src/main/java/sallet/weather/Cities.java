package sallet.weather;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The built-in places: mean sunshine hours of 61 cities on all continents. Source and licence: the
 * note beside {@code climate_sunshine_cities.csv}.
 */
public final class Cities {
  private static final String FILE = "climate_sunshine_cities.csv";

  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  /** Kilometres of detour one degree of latitude is worth: day length follows it. Judgement. */
  private static final double KM_PER_LATITUDE_DEG = 222;

  private static final List<City> ALL = read();

  private Cities() {}

  /** All of them, in the order of the file: by continent. */
  public static List<City> all() {
    return ALL;
  }

  /** The city of a name, without regard to case and accents. */
  public static Optional<City> named(String name) {
    return ALL.stream().filter(city -> plain(city.name()).equals(plain(name))).findFirst();
  }

  /**
   * The nearest city of like latitude: least distance, a degree of latitude counting as 222 km
   * more.
   */
  public static City nearest(double latitudeDeg, double longitudeDeg) {
    return ALL.stream()
        .min(
            Comparator.comparingDouble(
                city ->
                    city.distanceKm(latitudeDeg, longitudeDeg)
                        + KM_PER_LATITUDE_DEG * Math.abs(city.latitudeDeg() - latitudeDeg)))
        .orElseThrow();
  }

  private static String plain(String name) {
    return Normalizer.normalize(name.strip(), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .replace('ø', 'o')
        .replace('Ø', 'O')
        .toLowerCase(Locale.ROOT);
  }

  private static List<City> read() {
    InputStream in = Objects.requireNonNull(Cities.class.getResourceAsStream(FILE), FILE);
    List<City> cities = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (NamedCsvRecord row : rows) {
        cities.add(city(row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(cities);
  }

  private static City city(NamedCsvRecord row) {
    return new City(
        row.getField("country"),
        row.getField("city"),
        Double.parseDouble(row.getField("lat")),
        Double.parseDouble(row.getField("lon")),
        ZoneId.of(row.getField("iana_zone")),
        MONTHS.stream().map(m -> Double.valueOf(row.getField("sun_h_" + m))).toList());
  }
}
