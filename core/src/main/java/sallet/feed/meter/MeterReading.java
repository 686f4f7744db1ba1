package sallet.feed.meter;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;

/**
 * What a meter shows, and every conductivity it could mean.
 *
 * @param text as read
 * @param meanings possible conductivities; one when the unit leaves no doubt
 * @param uncompensatedC temperature of a reading the meter did not compensate, °C; empty when it
 *     did
 */
public record MeterReading(String text, List<Meaning> meanings, Optional<Double> uncompensatedC) {
  private static final Pattern READING =
      Pattern.compile(
          "\\s*([0-9]+(?:\\.[0-9]+)?)\\s*(\\S.*?)(?:\\s+at\\s+([0-9.]+)\\s*°?\\s*[Cc])?\\s*");
  private static final double HIGHEST_MS_CM = 20;

  /**
   * One meaning.
   *
   * @param scale the scale or unit it supposes
   * @param msCm conductivity at the temperature the number stands for, mS/cm
   */
  public record Meaning(String scale, double msCm) {}

  public MeterReading {
    meanings = List.copyOf(meanings);
  }

  /**
   * Reads "840 ppm", "1.6 mS/cm", "1600 µS/cm", "1.6 dS/m" or "16 CF" (tenths of mS/cm); with "at
   * 15 °C" when the meter does not compensate.
   */
  public static MeterReading parse(String text) {
    Matcher m = READING.matcher(text);
    if (!m.matches()) {
      throw new FeedFault(
          "Cannot read the reading \"%s\"; write a number and a unit, like 840 ppm or 1.6 mS/cm"
              .formatted(text));
    }
    double number = Double.parseDouble(m.group(1));
    String unit = m.group(2).strip().toLowerCase(Locale.ROOT).replace('μ', 'µ').replace("us", "µs");
    List<Meaning> meanings =
        switch (unit) {
          case "ppm", "mg/l tds" ->
              Arrays.stream(PpmScale.values())
                  .map(s -> new Meaning("ppm scale " + s.label(), s.msCm(number)))
                  .toList();
          case "ms/cm", "ms", "ds/m", "ec" -> List.of(new Meaning("mS/cm", number));
          case "µs/cm", "µs" -> List.of(new Meaning("µS/cm", number / 1000));
          case "cf" -> List.of(new Meaning("CF", number / 10));
          default ->
              throw new FeedFault(
                  "Cannot read the unit \"%s\"; use ppm, mS/cm, µS/cm, dS/m or CF"
                      .formatted(m.group(2)));
        };
    if (meanings.stream().anyMatch(x -> x.msCm() > HIGHEST_MS_CM)) {
      throw new FeedFault(
          "A reading of %s is beyond the %.0f mS/cm a nutrient solution can have"
              .formatted(text.strip(), HIGHEST_MS_CM));
    }
    return new MeterReading(
        text.strip(), meanings, Optional.ofNullable(m.group(3)).map(MeterReading::celsius));
  }

  private static double celsius(String number) {
    try {
      return Double.parseDouble(number);
    } catch (NumberFormatException e) {
      throw new FeedFault("\"%s\" is no temperature; write it like 15 °C".formatted(number));
    }
  }

  /**
   * The meanings at 25 °C, by the usual 2 % for a degree.
   *
   * @param referenceC temperature the meter compensates to, °C
   */
  public List<Meaning> at25(double referenceC) {
    double from = uncompensatedC.orElse(referenceC);
    return meanings.stream()
        .map(
            m ->
                new Meaning(
                    m.scale,
                    TemperatureCompensation.at25(
                        m.msCm, from, TemperatureCompensation.USUAL_SLOPE)))
        .toList();
  }
}
