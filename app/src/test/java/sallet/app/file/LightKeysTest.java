package sallet.app.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.LampColour;
import sallet.household.Outlook;
import sallet.household.WeatherSource;

/** Weather files, skies, obstructions, roof windows, lamps, tariff and readings in the file. */
class LightKeysTest {
  private static final String PLACE =
      "place: {latitude: 52, longitude: 13, timeZone: Europe/Berlin%s}%n";

  @TempDir private Path dir;

  private HouseholdFile read(String weather, String rest) throws IOException {
    Path file = dir.resolve("home.yaml");
    Files.writeString(file, PLACE.formatted(weather) + rest);
    return Examples.reader().read(file);
  }

  private Household good(String weather, String rest) throws IOException {
    HouseholdFile file = read(weather, rest);
    assertThat(file).as(file.toString()).isInstanceOf(HouseholdFile.Good.class);
    return ((HouseholdFile.Good) file).household();
  }

  private List<String> faults(String weather, String rest) throws IOException {
    HouseholdFile file = read(weather, rest);
    assertThat(file).isInstanceOf(HouseholdFile.Faulty.class);
    return ((HouseholdFile.Faulty) file).faults().stream().map(Fault::text).toList();
  }

  /** A year with one bright hour a day. */
  private static List<String> weatherFile() {
    List<String> lines = new ArrayList<>();
    lines.add("123,\"SOMEWHERE\",XX,1.0,52.1,13.2,50");
    lines.add("Date (MM/DD/YYYY),Time (HH:MM),ETR,ETRN,GHI,s,u,DNI,s,u,DHI,s,u");
    for (LocalDate day = LocalDate.of(2023, 1, 1); day.getYear() == 2023; day = day.plusDays(1)) {
      for (int hour = 1; hour <= 24; hour++) {
        lines.add(
            String.format(
                Locale.ROOT,
                "%02d/%02d/1999,%02d:00,0,0,%d,1,0,0,1,0,%d,1,0",
                day.getMonthValue(),
                day.getDayOfMonth(),
                hour,
                hour == 12 ? 300 : 0,
                hour == 12 ? 300 : 0));
      }
    }
    return lines;
  }

  @Test
  void aWeatherFileLiesBesideTheHouseholdFile() throws IOException {
    Files.write(dir.resolve("sky.csv"), weatherFile());
    Household household = good(", weather: {file: sky.csv}", "");
    assertThat(household.place().weather())
        .isInstanceOfSatisfying(
            WeatherSource.Hourly.class,
            hourly -> {
              assertThat(hourly.year().name()).isEqualTo("SOMEWHERE");
              assertThat(hourly.year().hours()).hasSize(8760);
            });
  }

  @Test
  void brokenWeatherFilesAreToldWithTheirLine() throws IOException {
    Files.write(dir.resolve("short.csv"), weatherFile().subList(0, 100));
    assertThat(faults(", weather: {file: short.csv}", ""))
        .containsExactly(
            "place.weather.file (line 1): short.csv, line 100: the file ends after 98 hours; a"
                + " year has 8760");
    assertThat(faults(", weather: {file: gone.csv}", ""))
        .singleElement()
        .asString()
        .contains("there is no file \"gone.csv\"");
    Files.writeString(dir.resolve("foreign.epw"), "hello\nworld\n");
    assertThat(faults(", weather: {file: foreign.epw}", ""))
        .singleElement()
        .asString()
        .contains("foreign.epw, line 1: this is no hourly weather file");
  }

  @Test
  void skiesAndBetterKnownMonths() throws IOException {
    assertThat(good(", weather: {sky: fair}", "").place().weather())
        .isEqualTo(new WeatherSource.SkyClass(0.55));
    assertThat(
            good(", weather: {city: Berlin, months: [{month: 12, sunshine: 30 h}]}", "")
                .place()
                .weather())
        .isEqualTo(
            new WeatherSource.Corrected(
                new WeatherSource.BuiltIn("Berlin"), Map.of(Month.DECEMBER, 30.0)));
    assertThat(faults(", weather: {sky: fair, months: [{month: 12, sunshine: 30 h}]}", ""))
        .singleElement()
        .asString()
        .contains("write it beside nearest or city");
    assertThat(faults(", weather: {sky: fair, city: Berlin}", ""))
        .singleElement()
        .asString()
        .contains("write exactly one of");
  }

  @Test
  void whatStandsBeforeAWindow() throws IOException {
    Outlook outlook =
        good(
                "",
                """
                room:
                  windows:
                    - wall: south
                      horizon: [{azimuth: 200°, altitude: 10°}, {azimuth: 90°, altitude: 5°}]
                      houses: [{from: 150°, to: 170°, altitude: 30°}]
                      trees: [{from: 180°, to: 200°, high: 40°, kind: evergreen}]
                      overhang: {depth: 1 m}
                """)
            .room()
            .windows()
            .get(0)
            .outlook();
    assertThat(outlook.horizon())
        .containsExactly(new Outlook.Point(90, 5), new Outlook.Point(200, 10));
    assertThat(outlook.houses()).containsExactly(new Outlook.House(150, 170, 30));
    assertThat(outlook.trees())
        .containsExactly(
            new Outlook.Tree(180, 200, 0, 40, 0.27, 0.30, MonthDay.of(4, 20), MonthDay.of(10, 15)));
    assertThat(outlook.overhang()).contains(new Outlook.Overhang(0, 1, 0));
    assertThat(faults("", "room: {windows: [{wall: south, trees: [{from: 1°, to: 2°}]}]}"))
        .singleElement()
        .asString()
        .contains("room.windows[0].trees[0].high", "missing");
  }

  /** 9000 lm of white light at 70 lm for each µmol/s are 128.6 µmol/s. */
  @Test
  void lampsByPhotonsLumensOrEfficacy() throws IOException {
    List<Lamp> lamps =
        good(
                "",
                """
                lamps:
                  - {power: 60 W, light: 150 µmol/s, tilt: 10°}
                  - {power: 60 W, lumens: 9000 lm}
                  - {power: 60 W, efficacy: 2 µmol/J, colour: red and blue}
                """)
            .lamps();
    assertThat(lamps.get(0).ppfUmolPerS()).isEqualTo(150, within(1e-9));
    assertThat(lamps.get(0).tiltDeg()).isEqualTo(10);
    assertThat(lamps.get(1).ppfUmolPerS()).isEqualTo(9000 / 70.0, within(1e-9));
    assertThat(lamps.get(2).ppfUmolPerS()).isEqualTo(120, within(1e-9));
    assertThat(lamps.get(2).colour()).isEqualTo(LampColour.RED_AND_BLUE);
    assertThat(faults("", "lamp: {lumens: 9000 lm, efficacy: 2 µmol/J}"))
        .singleElement()
        .asString()
        .contains("write one of efficacy, light and lumens");
    assertThat(faults("", "lamp: {lumens: 9000 lm, colour: red and blue}"))
        .singleElement()
        .asString()
        .contains("lumens say nothing about red and blue light");
    assertThat(faults("", "lamps: [{heightAboveBench: 10 cm}]"))
        .singleElement()
        .asString()
        .contains("lamps[0].heightAboveBench", "into the plants");
  }

  /** A lamp of 1.2 m fits along a wall 0.3 m away, turned a little too, but not by a quarter. */
  @Test
  void aLampIsTurnedWithItsSize() throws IOException {
    String lamp = "lamp: {size: {length: 1.2 m, width: 0.3 m}, at: {x: 1.5 m, y: 0.3 m}%s}";
    assertThat(good("", lamp.formatted("")).lamp().orElseThrow().turnDeg()).isZero();
    assertThat(good("", lamp.formatted(", turn: -10°")).lamp().orElseThrow().turnDeg())
        .isEqualTo(-10);
    assertThat(faults("", lamp.formatted(", turn: 90°")))
        .singleElement()
        .asString()
        .contains("lamp.at.y", "the lamp reaches from -0.3 to 0.9 m, outside the room");
    assertThat(faults("", lamp.formatted(", turn: 400°")))
        .singleElement()
        .asString()
        .contains("lamp.turn", "lies outside what is allowed (-180 to 180°)");
  }

  @Test
  void photometryGivesSizeAndWatts() throws IOException {
    Files.write(
        dir.resolve("panel.ies"),
        List.of("TILT=NONE", "1 -1 1 3 1 1 2 0.3 0.6 0", "1 1 50", "0 45 90", "0", "100 70 0"));
    Lamp lamp = good("", "lamp: {photometry: panel.ies, light: 110 µmol/s}").lamp().orElseThrow();
    assertThat(lamp.lengthM()).isEqualTo(0.6);
    assertThat(lamp.widthM()).isEqualTo(0.3);
    assertThat(lamp.powerW()).isEqualTo(50);
    assertThat(lamp.ppfUmolPerS()).isEqualTo(110, within(1e-9));
    Files.write(
        dir.resolve("flood.ies"),
        List.of("TILT=NONE", "1 -1 1 3 1 2 2 0.3 0.6 0", "1 1 50", "0 45 90", "0", "100 70 0"));
    assertThat(faults("", "lamp: {photometry: flood.ies}"))
        .singleElement()
        .asString()
        .contains("flood.ies, line 2", "type B");
  }

  @Test
  void readingsMustBeOfUse() throws IOException {
    String lamp = "lamp: {power: 100 W, colour: red and blue}\n";
    assertThat(
            good(
                    "",
                    lamp
                        + "lightReadings: [{pot: A1, date: 2027-01-02, sky: lamp, ppfd: 90"
                        + " µmol/m²/s}]")
                .readings())
        .hasSize(1);
    assertThat(
            faults(
                "", lamp + "lightReadings: [{pot: A1, date: 2027-01-02, sky: lamp, lux: 900 lx}]"))
        .singleElement()
        .asString()
        .contains("lightReadings[0]", "quantum meter");
    assertThat(faults("", lamp + "lightReadings: [{pot: A1, date: 2027-01-02, sky: lamp}]"))
        .singleElement()
        .asString()
        .contains("write either ppfd or lux");
    assertThat(
            faults(
                "",
                lamp
                    + "lightReadings: [{pot: Q1, date: 2027-01-02, sky: lamp, ppfd: 90 µmol/m²/s}]"))
        .singleElement()
        .asString()
        .contains("there is no pot called Q1");
  }

  /** The shelf's lamp gives the mean of its cells; both keys together are a fault. */
  @Test
  void theShelfsLampSetsItsLight() throws IOException {
    String lamp =
        "{shelf: {length: 0.6 m, width: 0.3 m}, size: {length: 0.6 m, width: 0.3 m}, light: 90"
            + " µmol/s, height: 20 cm}";
    Household household = good("", "nursery: {lamp: " + lamp + "}");
    assertThat(household.nursery().ppfdUmol()).isBetween(150.0, 500.0);
    assertThat(faults("", "nursery: {light: 100 µmol/m²/s, lamp: " + lamp + "}"))
        .singleElement()
        .asString()
        .contains("write one of the two");
  }
}
