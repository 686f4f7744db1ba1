package sallet.app.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import sallet.app.file.Fault;

/** Reads option values; each that is wrong becomes one fault. */
final class CallReader {
  private final List<Fault> faults = new ArrayList<>();

  /** What was wrong so far. */
  List<Fault> faults() {
    return List.copyOf(faults);
  }

  void fault(String option, String sentence) {
    faults.add(new Fault(option, 0, sentence));
  }

  /** A whole number in its range; the lowest when the text is wrong. */
  int whole(String option, String text, int min, int max) {
    if (!text.matches("[-+]?\\d{1,9}")) {
      fault(option, "\"" + text + "\" is not a whole number; write one from " + span(min, max));
      return min;
    }
    int value = Integer.parseInt(text);
    if (value < min || value > max) {
      fault(option, text + " lies outside what is allowed (" + span(min, max) + ")");
      return min;
    }
    return value;
  }

  /** A number in its range; the lowest when the text is wrong. */
  double number(String option, String text, double min, double max) {
    if (!text.matches("[-+]?(\\d{1,9}(\\.\\d*)?|\\.\\d+)")) {
      String point = text.matches("\\d+,\\d+") ? " with a decimal point" : "";
      fault(option, "\"" + text + "\" is not a number; write one from " + span(min, max) + point);
      return min;
    }
    double value = Double.parseDouble(text);
    if (value < min || value > max) {
      fault(option, text + " lies outside what is allowed (" + span(min, max) + ")");
      return min;
    }
    return value;
  }

  /** A date from 2000 to 2199, empty when the text is wrong. */
  Optional<LocalDate> date(String option, String text) {
    try {
      LocalDate date = LocalDate.parse(text);
      if (date.getYear() >= 2000 && date.getYear() <= 2199) {
        return Optional.of(date);
      }
      fault(option, text + " lies outside what is allowed (years 2000 to 2199)");
    } catch (DateTimeException e) {
      fault(option, "\"" + text + "\" is not a date; write year, month and day like 2027-07-03");
    }
    return Optional.empty();
  }

  /** One of a few names, in any case; the first when the text is wrong. */
  <E extends Enum<E>> E oneOf(String option, String text, Class<E> names) {
    List<E> all = List.of(names.getEnumConstants());
    Optional<E> found = all.stream().filter(e -> e.name().equalsIgnoreCase(text)).findFirst();
    if (found.isEmpty()) {
      String known =
          all.stream()
              .map(e -> e.name().toLowerCase(Locale.ROOT))
              .collect(Collectors.joining(" or "));
      fault(option, "\"" + text + "\" is not known; write " + known);
    }
    return found.orElse(all.get(0));
  }

  private static String span(double min, double max) {
    return plain(min) + " to " + plain(max);
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
