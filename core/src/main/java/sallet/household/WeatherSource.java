package sallet.household;

import java.util.List;

/** Where the monthly outdoor light comes from. Twelve values run January to December. */
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

  private static List<Double> twelve(List<Double> values) {
    if (values.size() != 12) {
      throw new IllegalArgumentException("needs 12 monthly values, has " + values.size());
    }
    return List.copyOf(values);
  }
}
