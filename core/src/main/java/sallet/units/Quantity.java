package sallet.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as written.
 *
 * @param dimension what it measures
 * @param written the number as written
 * @param unit the unit as written
 */
public record Quantity(Dimension dimension, double written, Unit unit) {
  /** Longest text that can be a quantity. */
  private static final int LONGEST = 60;

  private static final String NUMBER = "[+\\-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)";
  private static final Pattern PART = Pattern.compile("(" + NUMBER + ")(?![\\d.,])(.*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(\\d+)\\s*(?:ft|feet|foot|')\\s*(\\d+(?:\\.\\d+)?)\\s*(?:in|inch|inches|\")");
  private static final Pattern HOURS_AND_MINUTES = Pattern.compile("(\\d+)\\s*h\\s*(\\d+)\\s*min");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("([+\\-]?\\d+),(\\d+)(\\D.*)?");

  /**
   * Reads a text such as "1.2 m", "5 ft 6 in" or "72 °F".
   *
   * @throws NotAQuantity when it is none of this dimension; the message says what is wrong and how
   *     to mend it
   */
  public static Quantity parse(String text, Dimension dimension) {
    String line = text.strip().replace('\u2212', '-');
    if (line.length() > LONGEST) {
      throw new NotAQuantity("is too long to be " + dimension.what() + "; " + example(dimension));
    }
    Optional<Quantity> twoPart = twoPart(line, dimension);
    if (twoPart.isPresent()) {
      return twoPart.get();
    }
    refuseComma(line);
    Matcher part = PART.matcher(line);
    if (!part.matches()) {
      throw new NotAQuantity("is not " + dimension.what() + "; " + example(dimension));
    }
    String unit = part.group(2).strip();
    if (unit.isEmpty()) {
      throw new NotAQuantity("has no unit; add " + known(dimension));
    }
    Optional<Unit> known = dimension.unit(unit);
    if (known.isEmpty()) {
      throw new NotAQuantity(unknownUnit(unit, dimension));
    }
    return new Quantity(dimension, Double.parseDouble(part.group(1)), known.get());
  }

  /** The value in the base unit of its dimension. */
  public double inBase() {
    return unit.toBase(written);
  }

  /** A value in the base unit, written in a unit with at most four figures ("47.2 in"). */
  public static String write(double base, Unit unit) {
    return plain(unit.fromBase(base)) + gap(unit) + unit.symbol();
  }

  /** A span of values in the base unit, written in a unit ("0 to 1.2 m"). */
  public static String write(double fromBase, double toBase, Unit unit) {
    return plain(unit.fromBase(fromBase)) + " to " + write(toBase, unit);
  }

  /** A number with at most four figures, whole digits never cut, without trailing zeros. */
  public static String plain(double number) {
    if (!Double.isFinite(number)) {
      return Double.toString(number);
    }
    BigDecimal exact = BigDecimal.valueOf(number);
    BigDecimal rounded =
        exact.abs().compareTo(BigDecimal.valueOf(1000)) >= 0
            ? exact.setScale(0, RoundingMode.HALF_UP)
            : exact.round(new MathContext(4, RoundingMode.HALF_UP));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static Optional<Quantity> twoPart(String line, Dimension dimension) {
    Matcher feet = FEET_AND_INCHES.matcher(line);
    if (dimension == Dimension.LENGTH && feet.matches()) {
      double inches = 12 * Double.parseDouble(feet.group(1)) + Double.parseDouble(feet.group(2));
      return dimension.unit("in").map(inch -> new Quantity(dimension, inches, inch));
    }
    Matcher hours = HOURS_AND_MINUTES.matcher(line);
    if (dimension == Dimension.DURATION && hours.matches()) {
      double minutes = 60 * Double.parseDouble(hours.group(1)) + Double.parseDouble(hours.group(2));
      return dimension.unit("min").map(minute -> new Quantity(dimension, minutes, minute));
    }
    return Optional.empty();
  }

  private static void refuseComma(String line) {
    Matcher comma = DECIMAL_COMMA.matcher(line);
    if (comma.matches()) {
      String rest = comma.group(3) == null ? "" : comma.group(3);
      String asThousands =
          comma.group(2).length() == 3
              ? ", or " + comma.group(1) + comma.group(2) + rest + " without the comma"
              : "";
      throw new NotAQuantity(
          "has a comma in its number; write "
              + comma.group(1)
              + "."
              + comma.group(2)
              + rest
              + " with a decimal point"
              + asThousands);
    }
  }

  private static String unknownUnit(String unit, Dimension dimension) {
    return "is not " + dimension.what() + ": the unit is \"" + unit + "\"; use " + known(dimension);
  }

  private static String known(Dimension dimension) {
    List<String> symbols = dimension.units().stream().map(Unit::symbol).toList();
    int last = symbols.size() - 1;
    return last == 0
        ? symbols.get(0)
        : String.join(", ", symbols.subList(0, last)) + " or " + symbols.get(last);
  }

  private static String example(Dimension dimension) {
    return "write it like 10" + gap(dimension.base()) + dimension.base().symbol();
  }

  private static String gap(Unit unit) {
    return unit.symbol().equals("°") ? "" : " ";
  }
}
