package sallet.app.file;

import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sallet.units.Quantity;
import sallet.units.Unit;

/**
 * The values of one file by path, with the defaults of the table behind them. A value with a fault,
 * and one that is missing and has no default of its own, is not a number: comparisons with it are
 * false, so that one fault does not bring others after it.
 */
final class Values {
  private final Keys keys;
  private final Faults faults;
  private final Map<String, Object> values;
  private final Map<String, Integer> lines;
  private final Map<String, Integer> counts;

  Values(
      Keys keys,
      Faults faults,
      Map<String, Object> values,
      Map<String, Integer> lines,
      Map<String, Integer> counts) {
    this.keys = keys;
    this.faults = faults;
    this.values = values;
    this.lines = lines;
    this.counts = counts;
  }

  /** Whether the key is written in the file, rightly or wrongly. */
  boolean written(String path) {
    return lines.containsKey(path);
  }

  /** Whether nothing is wrong at the path, below it or with a section around it. */
  boolean sound(String path) {
    if (faults.touch(path)) {
      return false;
    }
    return !faults.around(path);
  }

  /** Line of the key, or of the nearest section around it that is written; 0 when there is none. */
  int line(String path) {
    for (String at = path; !at.isEmpty(); at = outer(at)) {
      Integer line = lines.get(at);
      if (line != null) {
        return line;
      }
    }
    return 0;
  }

  private static String outer(String path) {
    return path.substring(0, Math.max(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['))));
  }

  /** Number of items of a list, 0 when it is not written. */
  int count(String path) {
    return counts.getOrDefault(path, 0);
  }

  /** Whether the key holds a list of groups. */
  boolean isList(String path) {
    return counts.containsKey(path);
  }

  /** A value as its form gives it; empty when it is not written or faulty. */
  <T> Optional<T> get(String path, Class<T> type) {
    return Optional.ofNullable(values.get(path)).filter(type::isInstance).map(type::cast);
  }

  /** A quantity in its base unit. */
  double base(String path) {
    return get(path, Quantity.class)
        .map(Quantity::inBase)
        .orElseGet(() -> standard(path).map(Quantity::inBase).orElse(Double.NaN));
  }

  /** A quantity in percent as a share of one. */
  double share(String path) {
    return base(path) / 100;
  }

  /** The unit the grower used, else the base unit. */
  Unit unit(String path) {
    return get(path, Quantity.class)
        .map(Quantity::unit)
        .orElseGet(() -> keys.of(path).measures().base());
  }

  /** One quantity for each month, in the base unit. */
  List<Double> monthly(String path) {
    List<Double> twelve = list(path, Quantity.class).stream().map(Quantity::inBase).toList();
    return twelve.size() == 12 ? twelve : Collections.nCopies(12, base(path));
  }

  /** A number without a unit. */
  double number(String path) {
    Optional<Double> written =
        get(path, Double.class).or(() -> get(path, Integer.class).map(Integer::doubleValue));
    return written.orElseGet(() -> plainStandard(path).map(Double::valueOf).orElse(Double.NaN));
  }

  /** A whole number; the default also when the written one is faulty. */
  int whole(String path) {
    return get(path, Integer.class).orElseGet(() -> Integer.valueOf(keys.of(path).standard()));
  }

  /** A word; the default also when the written one is faulty. */
  String word(String path) {
    return get(path, String.class).orElseGet(() -> keys.of(path).standard());
  }

  /** A time of day; the default also when the written one is faulty. */
  LocalTime clock(String path) {
    return get(path, LocalTime.class).orElseGet(() -> LocalTime.parse(keys.of(path).standard()));
  }

  /** The good items of a list of one type. */
  <T> List<T> list(String path, Class<T> type) {
    return get(path, List.class).map(items -> cast(items, type)).orElse(List.of());
  }

  private static <T> List<T> cast(List<?> items, Class<T> type) {
    return items.stream().filter(type::isInstance).<T>map(type::cast).toList();
  }

  private Optional<Quantity> standard(String path) {
    Key key = keys.of(path);
    return plainStandard(path).map(text -> Quantity.parse(text, key.measures()));
  }

  /** The default as text, when it does not depend on other keys and the value is not faulty. */
  private Optional<String> plainStandard(String path) {
    Key key = keys.of(path);
    boolean none = key.required() || key.standard().startsWith("(") || key.standard().isEmpty();
    return none || !sound(path) ? Optional.empty() : Optional.of(key.standard());
  }
}
