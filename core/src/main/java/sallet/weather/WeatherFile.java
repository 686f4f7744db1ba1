package sallet.weather;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sallet.household.WeatherYear;

/**
 * Hourly weather files: EPW (the form of building simulation, with the universal-time variant of
 * PVGIS) and TMY3 (comma-separated). Only the light is read. Stamps name the hour's end; the years
 * of the months differ and do not matter.
 */
public final class WeatherFile {
  /** From this value on a radiation is missing (EPW: 9999; TMY3: -9900). */
  private static final double MISSING = 9999;

  private static final double MOST_WM2 = 1500;

  private final List<String> lines;

  private WeatherFile(List<String> lines) {
    this.lines = lines;
  }

  /**
   * Reads the lines of a file.
   *
   * @throws UnreadableFile when it is broken, cut short or of another kind
   */
  public static WeatherYear read(List<String> lines) {
    WeatherFile file = new WeatherFile(lines);
    if (lines.isEmpty()) {
      throw new UnreadableFile(0, "the weather file is empty");
    }
    if (lines.get(0).replace("\ufeff", "").startsWith("LOCATION,")) {
      return file.epw();
    }
    if (lines.size() > 1 && lines.get(1).startsWith("Date (MM/DD/YYYY),Time (HH:MM)")) {
      return file.tmy3();
    }
    throw new UnreadableFile(
        1, "this is no hourly weather file in EPW form (LOCATION, ...) or TMY3 form");
  }

  private WeatherYear epw() {
    List<String> head = cells(0);
    double clock = number(0, head, 8, "the time zone", -12, 14);
    double middle = 0.5;
    int first = 8;
    for (int i = 0; i < Math.min(first, lines.size()); i++) {
      int offset = lines.get(i).indexOf("Irradiance Time Offset (h):");
      if (offset >= 0) {
        // Such files are stamped in universal time whatever their time zone says.
        List<String> told = List.of(lines.get(i).substring(offset).split(":", 2)[1].split(",")[0]);
        middle = 1 + number(i, told, 0, "the irradiance time offset", -1, 1);
        clock = 0;
      }
    }
    List<WeatherYear.Hour> hours = new ArrayList<>();
    for (int i = first; i < end(); i++) {
      List<String> c = cells(i);
      hours.add(
          hour(
              i,
              new Stamp(whole(i, c, 1), whole(i, c, 2), whole(i, c, 3)),
              middle,
              List.of(light(i, c, 13), light(i, c, 14), light(i, c, 15))));
    }
    return year(head.get(1), List.of(6, 7, 9), clock, whole(hours, first));
  }

  private WeatherYear tmy3() {
    List<String> head = cells(0);
    double clock = number(0, head, 3, "the time zone", -12, 14);
    List<WeatherYear.Hour> hours = new ArrayList<>();
    for (int i = 2; i < end(); i++) {
      List<String> c = cells(i);
      List<String> date = List.of(c.get(0).split("/"));
      List<String> time = List.of((c.size() > 1 ? c.get(1) : "").split(":"));
      hours.add(
          hour(
              i,
              new Stamp(whole(i, date, 0), whole(i, date, 1), whole(i, time, 0)),
              0.5,
              List.of(light(i, c, 4), light(i, c, 7), light(i, c, 10))));
    }
    return year(head.get(1), List.of(4, 5, 6), clock, whole(hours, 2));
  }

  private WeatherYear year(
      String name, List<Integer> places, double clock, List<WeatherYear.Hour> hours) {
    List<String> head = cells(0);
    return new WeatherYear(
        name.replace("\"", "").strip(),
        number(0, head, places.get(0), "the latitude", -90, 90),
        number(0, head, places.get(1), "the longitude", -180, 180),
        number(0, head, places.get(2), "the elevation", -450, 9000),
        clock,
        hours);
  }

  private record Stamp(int month, int day, int ending) {}

  private static WeatherYear.Hour hour(int i, Stamp at, double middle, List<Double> light) {
    boolean real =
        at.month >= 1
            && at.month <= 12
            && at.day >= 1
            && at.day <= YearMonth.of(2024, at.month).lengthOfMonth()
            && at.ending >= 1
            && at.ending <= 24;
    if (!real) {
      throw new UnreadableFile(
          i + 1,
          "month "
              + at.month
              + ", day "
              + at.day
              + ", hour "
              + at.ending
              + " does not exist; hours run from 1 to 24");
    }
    return new WeatherYear.Hour(
        at.month, at.day, at.ending - 1 + middle, light.get(0), light.get(2), light.get(1));
  }

  /** The hours when they are those of a whole year, each in its place. */
  private static List<WeatherYear.Hour> whole(List<WeatherYear.Hour> hours, int headerLines) {
    int year = hours.size() == 8784 ? 2024 : 2023;
    for (int i = 0; i < Math.min(hours.size(), 8784); i++) {
      LocalDate day = LocalDate.ofYearDay(year, 1).plusDays(i / 24);
      WeatherYear.Hour hour = hours.get(i);
      boolean inPlace =
          hour.month() == day.getMonthValue()
              && hour.day() == day.getDayOfMonth()
              && (int) Math.ceil(hour.middleHour()) == i % 24 + 1;
      if (!inPlace) {
        throw new UnreadableFile(
            headerLines + i + 1,
            String.format(
                Locale.ROOT,
                "here stands %d-%02d, where hour %d of %d-%02d belongs; hours are missing or out"
                    + " of order",
                hour.month(),
                hour.day(),
                i % 24 + 1,
                day.getMonthValue(),
                day.getDayOfMonth()));
      }
    }
    if (hours.size() != 8760 && hours.size() != 8784) {
      throw new UnreadableFile(
          headerLines + hours.size(),
          "the file ends after " + hours.size() + " hours; a year has 8760");
    }
    return hours;
  }

  private int end() {
    int end = lines.size();
    while (end > 0 && lines.get(end - 1).isBlank()) {
      end--;
    }
    return end;
  }

  private List<String> cells(int i) {
    return List.of(lines.get(i).split(",", -1));
  }

  private double light(int i, List<String> cells, int column) {
    double value = number(i, cells, column, "the light", -9900, 1e6);
    if (value >= MISSING || value <= -9000) {
      return Double.NaN;
    }
    if (value > MOST_WM2 || value < -10) {
      throw new UnreadableFile(
          i + 1, cells.get(column).strip() + " W/m² is no light of an hour (0 to 1500)");
    }
    return Math.max(0, value);
  }

  private int whole(int i, List<String> cells, int column) {
    return (int) number(i, cells, column, "month, day and hour", 0, 31);
  }

  private double number(
      int i, List<String> cells, int column, String what, double least, double most) {
    if (column >= cells.size()) {
      throw new UnreadableFile(
          i + 1, "the line has only " + cells.size() + " columns; " + what + " is missing");
    }
    String text = cells.get(column).strip();
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new UnreadableFile(i + 1, what + " is not a number: \"" + shortened(text) + "\"");
    }
    if (!(value >= least && value <= most)) {
      throw new UnreadableFile(
          i + 1,
          String.format(
              Locale.ROOT, "%s is %s, outside %.0f to %.0f", what, shortened(text), least, most));
    }
    return value;
  }

  private static String shortened(String text) {
    return text.length() > 20 ? text.substring(0, 20) + "..." : text;
  }
}
