package sallet.app.file;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.units.NotAQuantity;
import sallet.units.Quantity;

/** Reads the text behind a key as what the key asks for, or says what is wrong with it. */
final class Scalars {
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");
  private static final Pattern COMMA = Pattern.compile("[-+]?\\d+,\\d+");
  private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
  private static final Pattern YEAR_DAY = Pattern.compile("\\d{2}-\\d{2}");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})");
  private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}\\p{M} ._-]*");

  private Scalars() {}

  /** The text is not what the key asks for; the message is the whole sentence. */
  static final class Wrong extends Exception {
    private static final long serialVersionUID = 1;

    Wrong(String sentence) {
      super(sentence, null, false, false);
    }

    String sentence() {
      return Optional.ofNullable(getMessage()).orElse("");
    }
  }

  /** A quantity, number, word, date and so on, as the form of the key says. */
  static Object read(Key key, Yaml.Scalar scalar) throws Wrong {
    String text = scalar.text().strip();
    return switch (key.form()) {
      case QUANTITY, MONTHLY, TWELVE -> quantity(key, text);
      case NUMBER -> number(key, scalar);
      case WHOLE -> whole(key, scalar);
      case TEXT -> name(key, text);
      case WORDS -> words(key, text);
      case CHOICE -> choice(key, text);
      case YES -> yes(scalar);
      case DATE -> date(text);
      case YEARDAY -> yearDay(text);
      case FILE -> fileName(key, text);
      case CLOCK -> clock(text);
      case ZONE -> zone(text);
      case DAYS -> day(text);
      case CITY, CROPS -> text;
      case SECTION, SECTION_OR_LIST, SECTION_OR_NONE, LIST ->
          throw new Wrong(quoted(text) + " stands where keys are expected");
    };
  }

  static Quantity quantity(Key key, String text) throws Wrong {
    Quantity quantity;
    try {
      quantity = Quantity.parse(text, key.measures());
    } catch (NotAQuantity e) {
      throw new Wrong(quoted(text) + " " + e.getMessage());
    }
    double base = quantity.inBase();
    double slack = 1e-9 * Math.max(Math.abs(key.min()), Math.abs(key.max()));
    if (!(base >= key.min() - slack && base <= key.max() + slack)) {
      throw new Wrong(
          Text.shorten(text)
              + " lies outside what is allowed ("
              + Quantity.write(key.min(), key.max(), quantity.unit())
              + ")");
    }
    return quantity;
  }

  private static Double number(Key key, Yaml.Scalar scalar) throws Wrong {
    String text = scalar.text().strip();
    if (COMMA.matcher(text).matches()) {
      throw new Wrong(
          quoted(text) + " has a comma; write " + text.replace(',', '.') + " with a decimal point");
    }
    if (!NUMBER.matcher(text).matches()) {
      throw new Wrong(quoted(text) + " is not a number" + numberHint(key, text));
    }
    refuseQuotes(scalar);
    double value = Double.parseDouble(text);
    if (!(value >= key.min() && value <= key.max())) {
      throw outside(key, text);
    }
    return value;
  }

  private static String numberHint(Key key, String text) {
    if (key.path().startsWith("place.l") && text.matches(".*[NESWnesw]\\s*")) {
      return "; write degrees north and east as positive and south and west as negative numbers";
    }
    return text.matches("[-+]?[\\d.]+\\s*\\D+")
        ? "; write it without a unit, " + key.meaning()
        : "; write one from " + range(key);
  }

  private static Integer whole(Key key, Yaml.Scalar scalar) throws Wrong {
    String text = scalar.text().strip();
    if (!text.matches("[-+]?\\d+")) {
      throw new Wrong(quoted(text) + " is not a whole number; write one from " + range(key));
    }
    refuseQuotes(scalar);
    double value = Double.parseDouble(text);
    if (!(value >= key.min() && value <= key.max())) {
      throw outside(key, text);
    }
    return (int) value;
  }

  private static void refuseQuotes(Yaml.Scalar scalar) throws Wrong {
    if (!scalar.plain()) {
      throw new Wrong("the number " + scalar.text().strip() + " stands in quotes; remove them");
    }
  }

  private static Wrong outside(Key key, String text) {
    return new Wrong(Text.shorten(text) + " lies outside what is allowed (" + range(key) + ")");
  }

  private static String range(Key key) {
    return Quantity.plain(key.min()) + " to " + Quantity.plain(key.max());
  }

  private static String words(Key key, String text) throws Wrong {
    boolean printable = text.codePoints().noneMatch(Character::isISOControl);
    if (text.length() < key.min() || text.length() > key.max() || !printable) {
      throw new Wrong(quoted(text) + " is not " + range(key) + " plain characters");
    }
    return text;
  }

  private static String name(Key key, String text) throws Wrong {
    if (text.length() < key.min() || text.length() > key.max() || !NAME.matcher(text).matches()) {
      throw new Wrong(
          quoted(text)
              + " is not a name; use "
              + range(key)
              + " letters, digits, spaces, points and hyphens, a letter or digit first");
    }
    return text;
  }

  private static String choice(Key key, String text) throws Wrong {
    for (String choice : key.choices()) {
      if (choice.equalsIgnoreCase(text)) {
        return choice;
      }
    }
    throw new Wrong(
        quoted(text)
            + " is not known here"
            + Text.didYouMean(text, key.choices())
            + "; write one of "
            + String.join(", ", key.choices()));
  }

  private static Boolean yes(Yaml.Scalar scalar) throws Wrong {
    if (!scalar.plain() || !scalar.text().equals("true")) {
      throw new Wrong(quoted(scalar.text()) + " is not allowed; write true, or leave the key out");
    }
    return true;
  }

  private static LocalDate date(String text) throws Wrong {
    Matcher date = DATE.matcher(text);
    if (!date.matches()) {
      throw new Wrong(quoted(text) + " is not a date; write year, month and day like 2027-07-03");
    }
    try {
      LocalDate day = LocalDate.parse(text);
      if (day.getYear() >= 2000 && day.getYear() <= 2199) {
        return day;
      }
    } catch (DateTimeException e) {
      throw new Wrong(text + " is no day of the calendar; check its month and day");
    }
    throw new Wrong(text + " lies outside what is allowed (years 2000 to 2199)");
  }

  private static MonthDay yearDay(String text) throws Wrong {
    try {
      if (YEAR_DAY.matcher(text).matches()) {
        return MonthDay.parse("--" + text);
      }
    } catch (DateTimeException e) {
      throw new Wrong(text + " is no day of the calendar; check its month and day");
    }
    throw new Wrong(quoted(text) + " is not a day of the year; write month and day like 04-20");
  }

  private static String fileName(Key key, String text) throws Wrong {
    if (text.length() > key.max() || text.codePoints().anyMatch(Character::isISOControl)) {
      throw new Wrong(quoted(text) + " is not the name of a file");
    }
    return text;
  }

  private static LocalTime clock(String text) throws Wrong {
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches()) {
      int hour = Integer.parseInt(clock.group(1));
      int minute = Integer.parseInt(clock.group(2));
      if (hour <= 23 && minute <= 59) {
        return LocalTime.of(hour, minute);
      }
    }
    throw new Wrong(
        quoted(text) + " is not a time of day; write hours and minutes, 00:00 to 23:59");
  }

  private static ZoneId zone(String text) throws Wrong {
    if (ZoneId.getAvailableZoneIds().contains(text)) {
      return ZoneId.of(text);
    }
    throw new Wrong(
        quoted(text)
            + " is not a time zone"
            + Text.didYouMean(text, ZoneId.getAvailableZoneIds().stream().sorted().toList())
            + "; write its IANA name, like Pacific/Auckland");
  }

  private static DayOfWeek day(String text) throws Wrong {
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.name();
      if (name.equalsIgnoreCase(text) || name.substring(0, 3).equalsIgnoreCase(text)) {
        return day;
      }
    }
    throw new Wrong(quoted(text) + " is not a weekday; write " + String.join(", ", dayNames()));
  }

  /** The short names of the weekdays, Monday first. */
  static List<String> dayNames() {
    return List.of(DayOfWeek.values()).stream()
        .map(day -> day.name().charAt(0) + day.name().substring(1, 3).toLowerCase(Locale.ROOT))
        .toList();
  }

  static String quoted(String text) {
    return "\"" + Text.shorten(text) + "\"";
  }
}
