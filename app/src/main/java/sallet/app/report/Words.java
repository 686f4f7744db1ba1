package sallet.app.report;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/** Numbers and dates as people read them, in English and metric units. */
public final class Words {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter DAY_AND_YEAR =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

  private Words() {}

  /** Such as "Sat 28 Nov". */
  public static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** Such as "Sat 28 Nov 2026". */
  public static String dayAndYear(LocalDate date) {
    return DAY_AND_YEAR.format(date);
  }

  /** Whole grams, such as "60 g". */
  public static String grams(double grams) {
    return Math.round(grams) + " g";
  }

  /** Whole percent, such as "40 %". */
  public static String percent(double share) {
    return Math.round(share * 100) + " %";
  }

  /** One decimal, such as "9.4". */
  public static String oneDecimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** Such as "1 seed" or "4 seeds". */
  public static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }

  /** Such as "Wed and Sat". */
  public static String weekdays(List<DayOfWeek> days) {
    return list(days.stream().map(d -> d.getDisplayName(TextStyle.SHORT, Locale.ENGLISH)).toList());
  }

  /** A catalogue name within a sentence: "loose-leaf lettuce, red" as "red loose-leaf lettuce". */
  public static String spoken(String crop) {
    int comma = crop.lastIndexOf(", ");
    return comma < 0 ? crop : crop.substring(comma + 2) + " " + crop.substring(0, comma);
  }

  /** The text with its first letter raised. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** Such as "A1, A2 and A3". */
  public static String list(List<String> items) {
    int n = items.size();
    return n < 2
        ? String.join("", items)
        : String.join(", ", items.subList(0, n - 1)) + " and " + items.get(n - 1);
  }

  /**
   * The text without characters that steer a terminal or turn the direction of writing; each
   * becomes U+FFFD. Line feeds stay.
   */
  public static String printable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> out.appendCodePoint(isPrintable(c) ? c : 0xFFFD));
    return out.toString();
  }

  private static boolean isPrintable(int c) {
    boolean steersDirection =
        (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069) || c == 0x200E || c == 0x200F;
    boolean notText = c == 0xFFFE || c == 0xFFFF || (c >= 0xD800 && c <= 0xDFFF);
    return c == '\n' || !(Character.isISOControl(c) || steersDirection || notText);
  }
}
