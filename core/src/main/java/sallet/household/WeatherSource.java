package sallet.household;

import java.time.Month;
import java.util.List;
import java.util.Map;

/** Where the outdoor light comes from. Twelve values run January to December. */
public sealed interface WeatherSource {
  /** The nearest built-in place, counting latitude most. */
  record Nearest() implements WeatherSource {}

  /** A built-in place by its city name. */
  record BuiltIn(String city) implements WeatherSource {}

  /** Mean daily global irradiation on the flat, MJ per m² and day. */
  record MonthlyIrradiation(List<Double> megaJoulesPerM2Day) implements WeatherSource {
    public MonthlyIrradiation {
      megaJoulesPerM2Day = twelve(megaJoulesPerM2Day);
    }
  }

  /** Hours of bright sunshine in each month. */
  record MonthlySunshine(List<Double> hours) implements WeatherSource {
    public MonthlySunshine {
      hours = twelve(hours);
    }
  }

  /**
   * A built-in place with some months put right.
   *
   * @param place the nearest one or one by its name
   * @param sunshineHours hours of bright sunshine in the months that are better known
   */
  record Corrected(WeatherSource place, Map<Month, Double> sunshineHours) implements WeatherSource {
    public Corrected {
      sunshineHours = Map.copyOf(sunshineHours);
    }
  }

  /**
   * How much of the light above the air reaches the ground over the year, in a word.
   *
   * @param clearness share of the light above the air, 0 to 1
   */
  record SkyClass(double clearness) implements WeatherSource {}

  /** An hourly weather file. */
  record Hourly(WeatherYear year) implements WeatherSource {}

  private static List<Double> twelve(List<Double> values) {
    if (values.size() != 12) {
      throw new IllegalArgumentException("needs 12 monthly values, has " + values.size());
    }
    return List.copyOf(values);
  }
}
