package sallet.light;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import sallet.cases.CaseFolder;
import sallet.cases.CaseRow;
import sallet.cases.Outcome;
import sallet.cases.RowCheck;
import sallet.household.AirClimate;
import sallet.household.Place;
import sallet.household.Room;
import sallet.household.Wall;
import sallet.household.WeatherSource;
import sallet.household.WeatherYear;
import sallet.household.Window;
import sallet.weather.PerezSky;
import sallet.weather.SkyMoment;
import sallet.weather.Sun;
import sallet.weather.SunPosition;
import sallet.weather.WeatherFile;

/**
 * A month's light at one pot from an hourly weather file. The cases are simpler than Sallet: the
 * sun of the middle of each hour, an even sky, a black skyline, and a reveal that stops the sun
 * alone. The parts are held apart, since the total hides faults of the smaller ones.
 */
final class EndToEndCheck implements RowCheck {
  /** Year taken for the sun's position whatever year a line names. */
  private static final int YEAR = 2005;

  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private final Map<Path, WeatherYear> read = new ConcurrentHashMap<>();

  @Override
  public List<Outcome> check(CaseRow row, CaseFolder folder) {
    String file = "light/weather/" + row.text("weather_file");
    if (!folder.has(file)) {
      throw new Skipped("needs " + file);
    }
    int month = (int) row.number("month");
    WeatherYear weather = read.computeIfAbsent(folder.path(file), EndToEndCheck::read);
    Parts parts = Parts.of(row, moments(weather, month), DAYS[month - 1]);
    double total = row.number("expect_DLI_total");
    List<Outcome> outcomes = new ArrayList<>();
    part(outcomes, row, "expect_outdoor_DLI", parts.outdoors, 0.01, 0.005);
    outcomes.add(
        Outcome.number(
            "expect_sky_factor_glazed",
            row.number("expect_sky_factor_glazed"),
            parts.skyFactor,
            5e-4));
    part(outcomes, row, "expect_DLI_beam", parts.beam, 0.02, 0.08);
    part(outcomes, row, "expect_DLI_sky", parts.sky, 0.01, 0.005);
    part(outcomes, row, "expect_DLI_internally_reflected", parts.reflected, 0.01, 0.005);
    double ours = parts.beam + parts.sky + parts.reflected;
    outcomes.add(Outcome.number("expect_DLI_total", total, ours, Math.max(0.03 * total, 0.05)));
    return outcomes;
  }

  /** A weather file of a folder of cases. */
  static WeatherYear read(Path path) {
    try {
      return WeatherFile.read(Files.readAllLines(path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The hours of a month as they are written, each with the sun of its middle. */
  private static List<SkyMoment> moments(WeatherYear year, int month) {
    Place place =
        new Place(
            year.latitudeDeg(),
            year.longitudeDeg(),
            year.elevationM(),
            ZoneOffset.UTC,
            new WeatherSource.Nearest());
    return year.hours().stream()
        .filter(hour -> hour.month() == month)
        .map(hour -> moment(hour, year.clockHours(), place))
        .toList();
  }

  private static SkyMoment moment(WeatherYear.Hour hour, double clockHours, Place place) {
    LocalDate day = LocalDate.of(YEAR, hour.month(), hour.day());
    long second = Math.round(3600 * (hour.middleHour() - clockHours));
    SunPosition sun =
        Sun.precisely(
            day.atStartOfDay().plusSeconds(second).toInstant(ZoneOffset.UTC),
            place,
            67,
            1013.25 * Math.exp(-place.elevationM() / 8434),
            12);
    return new SkyMoment(
        hour.middleHour(),
        1,
        sun,
        hour.globalWm2(),
        hour.diffuseWm2(),
        hour.beamWm2(),
        Sun.normalWm2(day.getDayOfYear()));
  }

  private static void part(
      List<Outcome> outcomes, CaseRow row, String column, double ours, double share, double least) {
    double expected = row.number(column);
    outcomes.add(Outcome.number(column, expected, ours, Math.max(share * expected, least)));
  }

  /** Mean daily light of a month, mol/m²/d, and the share of the sky seen through the glass. */
  private record Parts(
      double outdoors, double skyFactor, double beam, double sky, double reflected) {

    /** A day without meaning: there are no trees and no snow. */
    private static final LocalDate DAY = LocalDate.of(YEAR, 1, 1);

    static Parts of(CaseRow row, List<SkyMoment> moments, int days) {
      Window window = window(row);
      Glazing glazing = Glazing.of(window);
      Rectangle hole =
          new Rectangle(
              row.number("x1_m"), row.number("x2_m"), row.number("z1_m"), row.number("z2_m"));
      double d = row.number("d_m");
      double skyline = window.skylineDeg();
      double skyFactor =
          SkyCoefficients.aboveSkyline(new Opening(hole, d, 0), glazing, skyline).even();
      double absorbed = row.number("room_area_m2") * (1 - row.number("R_mean"));
      InnerReflection reflection =
          new InnerReflection(row.number("Rfw") / absorbed, row.number("Rcw") / absorbed);
      WindowLight light =
          new WindowLight(
              room(row, window),
              window,
              glazing,
              reflection,
              List.of(new Opening(hole, d, window.revealM())),
              List.of(List.of()));
      double[] beam = new double[1];
      double global = 0;
      double sky = 0;
      double reflected = 0;
      for (SkyMoment moment : moments) {
        PerezSky even = new PerezSky(moment.diffuseWm2(), 0, 0, 2);
        light.addSun(DAY, moment, even, beam);
        global += moment.globalWm2();
        sky += moment.diffuseWm2() * skyFactor * WindowLight.passes(window);
        reflected += light.reflectedWm2(DAY, moment, even);
      }
      double mol = RoomLight.UMOL_PER_J * 3600e-6 / days;
      return new Parts(global * mol, skyFactor, beam[0] * mol, sky * mol, reflected * mol);
    }

    private static Window window(CaseRow row) {
      return new Window(
          Wall.NORTH,
          0,
          row.number("x2_m") - row.number("x1_m"),
          row.number("z2_m") - row.number("z1_m"),
          1,
          row.number("reveal_m"),
          (int) row.number("panes"),
          Double.NaN,
          row.number("frame_factor"),
          row.number("maintenance"),
          1,
          row.number("obstruction_altitude_deg"));
    }

    /** Of the room only the azimuth and the ground outdoors count here. */
    private static Room room(CaseRow row, Window window) {
      return new Room(
          4,
          3,
          2.4,
          row.number("window_outward_azimuth"),
          new Room.Reflectance(0, 0, 0),
          row.number("ground_albedo"),
          new AirClimate(Collections.nCopies(12, 19.0), Collections.nCopies(12, 14.0), 55, 450),
          List.of(window));
    }
  }
}
