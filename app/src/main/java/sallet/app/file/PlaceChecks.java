package sallet.app.file;

import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sallet.units.Quantity;
import sallet.weather.Cities;
import sallet.weather.City;

/** The weather is said one way, its city is built in, and no month has more sun than hours. */
final class PlaceChecks {
  private static final List<String> WAYS =
      List.of("nearest", "city", "irradiation", "sunshine", "sky", "file");

  private final Values values;
  private final Faults faults;

  PlaceChecks(Values values, Faults faults) {
    this.values = values;
    this.faults = faults;
  }

  /** The built-in name of the city the file names, without regard to case and accents. */
  Optional<String> city() {
    return values.get("place.weather.city", String.class).flatMap(Cities::named).map(City::name);
  }

  void check() {
    List<String> written = WAYS.stream().filter(way -> values.written(path(way))).toList();
    if (values.written("place.weather") && values.sound("place.weather") && written.size() != 1) {
      faults.add(
          "place.weather",
          values.line("place.weather"),
          "has "
              + (written.isEmpty() ? "no key" : String.join(" and ", written))
              + "; write exactly one of "
              + String.join(", ", WAYS));
    }
    values
        .get(path("city"), String.class)
        .filter(word -> Cities.named(word).isEmpty())
        .ifPresent(
            word ->
                faults.add(
                    path("city"),
                    values.line(path("city")),
                    Scalars.quoted(word)
                        + " is not built in"
                        + Text.didYouMean(word, Cities.all().stream().map(City::name).toList())
                        + "; docs/household-file.md lists the cities; or write nearest: true"));
    sunshine();
    months(written);
  }

  /** Months put right go with a built-in place, each once. */
  private void months(List<String> written) {
    String path = path("months");
    boolean builtIn = written.equals(List.of("nearest")) || written.equals(List.of("city"));
    if (values.written(path) && !builtIn) {
      faults.add(
          path,
          values.line(path),
          "puts months of a built-in place right; write it beside nearest or city");
    }
    Set<Integer> seen = new HashSet<>();
    for (int i = 0; i < values.count(path); i++) {
      String at = path + "[" + i + "].month";
      Optional<Integer> month = values.get(at, Integer.class);
      if (month.isPresent() && !seen.add(month.get())) {
        faults.add(at, values.line(at), "month " + month.get() + " is written twice");
      }
    }
  }

  private void sunshine() {
    List<Quantity> months = values.list(path("sunshine"), Quantity.class);
    for (int i = 0; months.size() == 12 && i < 12; i++) {
      double most = 24.0 * YearMonth.of(2024, i + 1).lengthOfMonth();
      Quantity month = months.get(i);
      if (month.inBase() > most) {
        String at = path("sunshine") + "[" + i + "]";
        faults.add(
            at,
            values.line(at),
            Quantity.write(month.inBase(), month.unit())
                + " is more than the month has (0 to "
                + Quantity.write(most, month.unit())
                + ")");
      }
    }
  }

  private static String path(String way) {
    return "place.weather." + way;
  }
}
