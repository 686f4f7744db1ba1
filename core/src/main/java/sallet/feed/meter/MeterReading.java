package sallet.feed.meter;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sallet.feed.FeedFault;

/**
 * What a meter shows, and every conductivity it could mean.
 *
 * @param text as read
 * @param meanings possible conductivities; one when the unit leaves no doubt
 */
public record MeterReading(String text, List<Meaning> meanings) {
  private static final Pattern READING = Pattern.compile("\\s*([0-9]+(?:\\.[0-9]+)?)\\s*(\\S.*)");
  private static final double HIGHEST_MS_CM = 20;

  /**
   * One meaning.
   *
   * @param scale the scale or unit it supposes
   * @param msCm conductivity at the meter's reference temperature, mS/cm
   */
  public record Meaning(String scale, double msCm) {}

  public MeterReading {
    meanings = List.copyOf(meanings);
  }

  /** Reads "840 ppm", "1.6 mS/cm", "1600 µS/cm", "1.6 dS/m" or "16 CF" (tenths of mS/cm). */
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
    return new MeterReading(text.strip(), meanings);
  }
}
