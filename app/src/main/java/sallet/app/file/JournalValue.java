package sallet.app.file;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sallet.journal.Event;
import sallet.units.Dimension;
import sallet.units.NotAQuantity;
import sallet.units.Quantity;

/**
 * A value of the journal in its event's own unit.
 *
 * @param base the value; empty when it is wrong
 * @param fault what is wrong with it
 */
record JournalValue(OptionalDouble base, Optional<String> fault) {
  private static final Map<Event, Range> RANGES =
      Map.ofEntries(
          Map.entry(Event.PICK, new Range(0.1, 100)),
          Map.entry(Event.WIDTH, new Range(0.1, 200)),
          Map.entry(Event.EC, new Range(0, 20)),
          Map.entry(Event.PH, new Range(0, 14)),
          Map.entry(Event.LEVEL, new Range(0, 100_000)),
          Map.entry(Event.TOP_UP, new Range(0, 100_000)),
          Map.entry(Event.RENEW, new Range(0.1, 100_000)),
          Map.entry(Event.SOLUTION_TEMPERATURE, new Range(-5, 60)),
          Map.entry(Event.AIR_TEMPERATURE, new Range(-40, 70)),
          Map.entry(Event.HUMIDITY, new Range(0, 100)),
          Map.entry(Event.PPFD, new Range(0, 5000)),
          Map.entry(Event.LUX, new Range(0, 250_000)),
          Map.entry(Event.POT_DRY, new Range(1, 100_000)),
          Map.entry(Event.POT_WET, new Range(1, 100_000)),
          Map.entry(Event.POT_MASS, new Range(1, 100_000)));

  private static final Map<Event, Dimension> DIMENSIONS =
      Map.ofEntries(
          Map.entry(Event.PICK, Dimension.SHARE),
          Map.entry(Event.WIDTH, Dimension.LENGTH),
          Map.entry(Event.LEVEL, Dimension.VOLUME),
          Map.entry(Event.TOP_UP, Dimension.VOLUME),
          Map.entry(Event.RENEW, Dimension.VOLUME),
          Map.entry(Event.SOLUTION_TEMPERATURE, Dimension.TEMPERATURE),
          Map.entry(Event.AIR_TEMPERATURE, Dimension.TEMPERATURE),
          Map.entry(Event.HUMIDITY, Dimension.SHARE),
          Map.entry(Event.PPFD, Dimension.LIGHT),
          Map.entry(Event.LUX, Dimension.ILLUMINANCE));

  /** Grams; ounces and pounds by the international avoirdupois pound of 453.59237 g. */
  private static final Map<String, Double> MASSES =
      Map.of("g", 1.0, "kg", 1000.0, "oz", 28.349523125, "lb", 453.59237);

  /** Units that no dimension knows, as multiples of the event's own. */
  private static final Map<Event, Map<String, Double>> OTHER_UNITS =
      Map.of(
          Event.EC,
          Map.of("mS/cm", 1.0, "dS/m", 1.0, "µS/cm", 1e-3, "uS/cm", 1e-3),
          Event.POT_DRY,
          MASSES,
          Event.POT_WET,
          MASSES,
          Event.POT_MASS,
          MASSES,
          Event.PH,
          Map.of("pH", 1.0));

  private record Range(double low, double high) {}

  /** Reads a value; without a unit it is in the event's own. */
  static JournalValue of(Event event, String text, String unit) {
    OptionalDouble number = number(text);
    if (number.isEmpty()) {
      return wrong("\"" + text + "\" is not a number; write one with a decimal point, like 1.8");
    }
    double base = number.getAsDouble();
    if (!unit.isEmpty() && !unit.equals(event.unit())) {
      Dimension dimension = DIMENSIONS.get(event);
      Double factor = OTHER_UNITS.getOrDefault(event, Map.of()).get(unit);
      if (dimension != null) {
        try {
          base = Quantity.parse(text + " " + unit, dimension).inBase();
        } catch (NotAQuantity e) {
          return wrong("\"" + text + " " + unit + "\" " + e.getMessage());
        }
        base *= dimension == Dimension.LENGTH ? 100 : 1;
      } else if (factor != null) {
        base *= factor;
      } else {
        return wrong(
            "the unit \"%s\" is not one of %s; leave it out%s"
                .formatted(
                    unit, event.word(), event.unit().isEmpty() ? "" : " or write " + event.unit()));
      }
    }
    Range range = RANGES.get(event);
    if (range != null && !(base >= range.low() && base <= range.high())) {
      return wrong(
          "%s lies outside what can be (%s to %s %s)"
              .formatted(
                  Quantity.plain(base),
                  Quantity.plain(range.low()),
                  Quantity.plain(range.high()),
                  event.unit())
              .replace(" )", ")"));
    }
    return new JournalValue(OptionalDouble.of(base), Optional.empty());
  }

  private static JournalValue wrong(String sentence) {
    return new JournalValue(OptionalDouble.empty(), Optional.of(sentence));
  }

  /** A plain number with a decimal point; empty when it is none. */
  static OptionalDouble number(String text) {
    return text.matches("[-+]?(\\d{1,9}(\\.\\d*)?|\\.\\d+)")
        ? OptionalDouble.of(Double.parseDouble(text))
        : OptionalDouble.empty();
  }
}
