package sallet.light;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import sallet.household.Place;
import sallet.household.WeatherSource;
import sallet.weather.SkyMoment;
import sallet.weather.Sun;
import sallet.weather.SunPosition;

/**
 * A year of hourly light as in the TMY3 form (CSV) or EPW form, just enough for the check files:
 * hours end at their stamp, standard time, no missing values.
 *
 * @param place latitude, longitude and elevation of its header
 * @param clock its standard time
 * @param hours one for each line
 */
record HourlyFile(Place place, ZoneOffset clock, List<Hour> hours) {
  /** Year taken for the sun's position whatever year a line names. */
  private static final int YEAR = 2005;

  record Hour(int month, int day, int ending, double global, double beam, double diffuse) {}

  static HourlyFile read(Path path) {
    try {
      List<String> lines = Files.readAllLines(path);
      return path.toString().endsWith(".epw") ? epw(lines) : tmy3(lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static HourlyFile tmy3(List<String> lines) {
    String[] head = lines.get(0).split(",");
    return of(
        head,
        3,
        4,
        lines.stream()
            .skip(2)
            .map(line -> line.split(","))
            .map(
                c ->
                    new Hour(
                        Integer.parseInt(c[0].substring(0, 2)),
                        Integer.parseInt(c[0].substring(3, 5)),
                        Integer.parseInt(c[1].substring(0, 2)),
                        Double.parseDouble(c[4]),
                        Double.parseDouble(c[7]),
                        Double.parseDouble(c[10])))
            .toList());
  }

  private static HourlyFile epw(List<String> lines) {
    String[] head = lines.get(0).split(",");
    return of(
        head,
        8,
        6,
        lines.stream()
            .skip(8)
            .map(line -> line.split(","))
            .map(
                c ->
                    new Hour(
                        Integer.parseInt(c[1].strip()),
                        Integer.parseInt(c[2].strip()),
                        Integer.parseInt(c[3].strip()),
                        Double.parseDouble(c[13]),
                        Double.parseDouble(c[14]),
                        Double.parseDouble(c[15])))
            .toList());
  }

  private static HourlyFile of(String[] head, int zone, int latitude, List<Hour> hours) {
    ZoneOffset clock =
        ZoneOffset.ofTotalSeconds((int) (3600 * Double.parseDouble(head[zone].strip())));
    double elevation = Double.parseDouble(head[zone == 3 ? 6 : 9].strip());
    Place place =
        new Place(
            Double.parseDouble(head[latitude].strip()),
            Double.parseDouble(head[latitude + 1].strip()),
            elevation,
            clock,
            new WeatherSource.Nearest());
    return new HourlyFile(place, clock, hours);
  }

  /** The hours of a month, each with the sun of its middle. */
  List<SkyMoment> month(int month) {
    return hours.stream().filter(hour -> hour.month == month).map(this::moment).toList();
  }

  private SkyMoment moment(Hour hour) {
    LocalDate day = LocalDate.of(YEAR, hour.month, hour.day);
    SunPosition sun =
        Sun.precisely(
            day.atStartOfDay().plusMinutes(hour.ending * 60L - 30).toInstant(clock),
            place,
            67,
            1013.25 * Math.exp(-place.elevationM() / 8434),
            12);
    return new SkyMoment(
        hour.ending - 0.5,
        1,
        sun,
        hour.global,
        hour.diffuse,
        hour.beam,
        Sun.normalWm2(day.getDayOfYear()));
  }
}
