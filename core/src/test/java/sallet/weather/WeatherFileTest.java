package sallet.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import sallet.household.Place;
import sallet.household.WeatherSource;
import sallet.household.WeatherYear;

/** Weather files written here hour by hour from a clear sky, read back and broken in every way. */
class WeatherFileTest {
  private static final Place GREENSBORO =
      new Place(36.1, -79.95, 273, ZoneId.of("America/New_York"), new WeatherSource.Nearest());

  /** Light of an hour's middle under a clear sky, by universal time. */
  private static ClearSky clear(LocalDate day, double utcHour) {
    SunPosition sun =
        Sun.at(
            day.atStartOfDay().plusSeconds(Math.round(3600 * utcHour)).toInstant(ZoneOffset.UTC),
            GREENSBORO);
    return sun.altitudeDeg() <= 0
        ? new ClearSky(0, 0, 0)
        : ClearSky.of(sun, Sun.normalWm2(day.getDayOfYear()), 273);
  }

  private static List<String> epw(boolean universal, ToDoubleFunction<ClearSky> diffuse) {
    List<String> lines = new ArrayList<>();
    lines.add("LOCATION,Somewhere,NC,USA,made,1,36.1,-79.95,-5,273");
    for (String head : List.of("A", "B", "C", "D", "COMMENTS 1")) {
      lines.add(head);
    }
    lines.add(universal ? "COMMENTS 2,Irradiance Time Offset (h):-0.8239" : "COMMENTS 2");
    lines.add("DATA PERIODS");
    for (LocalDate day = LocalDate.of(2023, 1, 1); day.getYear() == 2023; day = day.plusDays(1)) {
      for (int hour = 1; hour <= 24; hour++) {
        ClearSky sky = clear(day, universal ? hour - 0.8239 : hour - 0.5 + 5);
        lines.add(
            String.format(
                Locale.ROOT,
                "1999,%d,%d,%d,60,flags,1,1,1,1,0,0,0,%.3f,%.3f,%.3f,0,0",
                day.getMonthValue(),
                day.getDayOfMonth(),
                hour,
                sky.globalWm2(),
                sky.beamWm2(),
                diffuse.applyAsDouble(sky)));
      }
    }
    return lines;
  }

  private static double megaJoules(OutdoorLight light, LocalDate day) {
    return light.of(day).stream().mapToDouble(m -> m.globalWm2() * m.lastsHours()).sum() * 3600e-6;
  }

  /** Standard-time and universal-time files of the same sky give the same days and fit the sun. */
  @Test
  void bothClocksGiveTheSameSky() {
    HourlySky standard =
        new HourlySky(WeatherFile.read(epw(false, ClearSky::diffuseWm2)), ZoneOffset.ofHours(-5));
    HourlySky universal =
        new HourlySky(WeatherFile.read(epw(true, ClearSky::diffuseWm2)), ZoneOffset.ofHours(-5));
    assertThat(standard.misfitWm2()).isLessThan(2);
    assertThat(universal.misfitWm2()).isLessThan(2);
    for (int month = 1; month <= 12; month++) {
      LocalDate day = LocalDate.of(2027, month, 15);
      assertThat(megaJoules(standard, day) / megaJoules(universal, day)).isEqualTo(1, within(0.01));
      assertThat(noon(standard, day)).isEqualTo(noon(universal, day), within(0.1));
    }
  }

  private static double noon(OutdoorLight light, LocalDate day) {
    double sum = 0;
    double weighed = 0;
    for (SkyMoment moment : light.of(day)) {
      sum += moment.globalWm2();
      weighed += moment.globalWm2() * moment.hour();
    }
    return weighed / sum;
  }

  @Test
  void aWrongTimeZoneShows() {
    List<String> lines = epw(false, ClearSky::diffuseWm2);
    lines.set(0, lines.get(0).replace(",-5,", ",-3,"));
    HourlySky sky = new HourlySky(WeatherFile.read(lines), ZoneOffset.ofHours(-5));
    assertThat(sky.misfitWm2()).isGreaterThan(20);
    Place there =
        new Place(
            36.1,
            -79.95,
            273,
            ZoneId.of("America/New_York"),
            new WeatherSource.Hourly(WeatherFile.read(lines)));
    assertThat(PlaceClimate.of(there).notes()).anyMatch(note -> note.contains("time zone"));
  }

  /** Leap days: 29 February is the file's 28th, and 1 March stays 1 March. */
  @Test
  void daysKeepTheirPlaceInLeapYears() {
    HourlySky sky =
        new HourlySky(WeatherFile.read(epw(false, ClearSky::diffuseWm2)), ZoneOffset.ofHours(-5));
    for (String day : List.of("-02-28", "-03-01", "-12-31", "-01-01")) {
      assertThat(megaJoules(sky, LocalDate.parse("2028" + day)))
          .as(day)
          .isEqualTo(megaJoules(sky, LocalDate.parse("2027" + day)), within(0.05));
    }
    assertThat(megaJoules(sky, LocalDate.of(2028, 2, 29)))
        .isEqualTo(megaJoules(sky, LocalDate.of(2028, 2, 28)), within(0.05));
  }

  /** Sun and sky of every hour add up, and the day keeps the file's light. */
  @Test
  void quartersKeepTheHour() {
    WeatherYear year = WeatherFile.read(epw(false, ClearSky::diffuseWm2));
    HourlySky sky = new HourlySky(year, ZoneOffset.ofHours(-5));
    LocalDate day = LocalDate.of(2027, 5, 9);
    double file =
        year.hours().stream()
                .filter(h -> h.month() == 5 && h.day() == 9)
                .mapToDouble(WeatherYear.Hour::globalWm2)
                .sum()
            * 3600e-6;
    assertThat(megaJoules(sky, day)).isEqualTo(file, within(1e-3));
    for (SkyMoment m : sky.of(day)) {
      assertThat(m.diffuseWm2() + m.beamWm2() * Math.max(0, m.sun().sinAltitude()))
          .isEqualTo(m.globalWm2(), within(1e-9));
      assertThat(m.beamWm2()).isBetween(0.0, m.outsideWm2());
    }
  }

  @Test
  void aMissingSkyPartIsSplitOff() {
    HourlySky sky = new HourlySky(WeatherFile.read(epw(false, s -> 9999)), ZoneOffset.ofHours(-5));
    LocalDate day = LocalDate.of(2027, 6, 20);
    double diffuse = sky.of(day).stream().mapToDouble(m -> m.diffuseWm2() * m.lastsHours()).sum();
    double global = sky.of(day).stream().mapToDouble(m -> m.globalWm2() * m.lastsHours()).sum();
    assertThat(diffuse / global).isBetween(0.1, 0.4);
  }

  @Test
  void foreignAndBrokenFilesAreRefusedWithTheirLine() {
    List<String> good = epw(false, ClearSky::diffuseWm2);
    assertRefused(List.of("name;value"), 1, "no hourly weather file");
    assertRefused(List.of(), 0, "empty");
    assertRefused(good.subList(0, 5000), 5000, "ends after 4992 hours");
    List<String> gap = new ArrayList<>(good);
    gap.remove(3000);
    assertRefused(gap, 3001, "belongs");
    assertRefused(with(good, 0, good.get(0).replace("36.1", "95")), 1, "the latitude is 95");
    assertRefused(with(good, 20, "1999,1,1,13,60,flags"), 21, "has only 6 columns");
    assertRefused(with(good, 20, good.get(20).replace("1999,1,1,13", "1999,1,1,x")), 21, "\"x\"");
    assertRefused(
        with(good, 20, good.get(20).replace("1999,1,1,13", "1999,2,30,13")), 21, "not exist");
    assertRefused(
        with(good, 20, good.get(20).replaceFirst("0,0,0,[0-9.]+", "0,0,0,2500")), 21, "2500");
  }

  private static List<String> with(List<String> lines, int index, String line) {
    List<String> changed = new ArrayList<>(lines);
    changed.set(index, line);
    return changed;
  }

  private static void assertRefused(List<String> lines, int line, String part) {
    assertThatThrownBy(() -> WeatherFile.read(lines))
        .isInstanceOf(UnreadableFile.class)
        .hasMessageContaining(part)
        .extracting(e -> ((UnreadableFile) e).line())
        .isEqualTo(line);
  }
}
