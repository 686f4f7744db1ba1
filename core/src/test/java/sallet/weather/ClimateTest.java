package sallet.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sallet.household.Place;
import sallet.household.WeatherSource;

class ClimateTest {
  /** Mean daily irradiation of an invented mid-latitude place, MJ/m². */
  private static final List<Double> MONTHS =
      List.of(3.4, 6.0, 9.8, 14.9, 18.2, 19.6, 18.9, 16.5, 11.9, 7.2, 4.0, 2.7);

  private static Place at(double latitude, double longitude, WeatherSource source) {
    return new Place(latitude, longitude, 0, ZoneId.of("UTC"), source);
  }

  @Test
  void daysOfAMonthHaveTheGivenMean() {
    Climate climate = MonthlyClimate.ofIrradiation(50, MONTHS);
    for (int m = 1; m <= 12; m++) {
      YearMonth month = YearMonth.of(2027, m);
      double sum = 0;
      for (int d = 1; d <= month.lengthOfMonth(); d++) {
        sum += climate.globalMegaJoules(month.atDay(d));
      }
      assertThat(sum / month.lengthOfMonth())
          .as(month.toString())
          .isEqualTo(MONTHS.get(m - 1), within(0.002));
    }
  }

  @Test
  void clearnessRunsWithoutJumps() {
    MonthlyClimate climate = MonthlyClimate.ofIrradiation(50, MONTHS);
    LocalDate day = LocalDate.of(2027, 12, 20);
    for (int i = 0; i < 800; i++) {
      double step = climate.clearness(day.plusDays(1)) - climate.clearness(day);
      assertThat(Math.abs(step)).as(day.toString()).isLessThan(0.01);
      day = day.plusDays(1);
    }
  }

  /** Ångström by hand for the mean day: London in June, see the file's own column. */
  @Test
  void aCityTakenForItselfGivesItsOwnSunshine() {
    PlaceClimate london = PlaceClimate.of(at(51.508, -0.125, new WeatherSource.Nearest()));
    assertThat(london.city().orElseThrow().name()).isEqualTo("London");
    double sum = 0;
    for (int d = 1; d <= 30; d++) {
      sum += london.climate().globalMegaJoules(LocalDate.of(2027, 6, d));
    }
    assertThat(sum / 30).isEqualTo(19.01, within(0.1));
    assertThat(london.notes()).hasSize(1).first().asString().contains("London, 0 km");
  }

  @ParameterizedTest
  @CsvSource({
    "-45.9, 170.5, Christchurch",
    "47.6, 7.6, Zurich",
    "-41.3, 174.8, Christchurch",
    "55.9, -4.3, Edinburgh",
    "64.1, -21.9, Reykjavik",
  })
  void theNearestCityOfLikeLatitudeIsTaken(double latitude, double longitude, String city) {
    assertThat(Cities.nearest(latitude, longitude).name()).isEqualTo(city);
  }

  @Test
  void aFarCityIsSaidToBeFar() {
    PlaceClimate climate = PlaceClimate.of(at(35, -40, new WeatherSource.Nearest()));
    assertThat(climate.notes()).anyMatch(note -> note.contains("is far"));
  }

  /** Great circle from 0, 0 to 0, 90 is a quarter of the way around: π/2 times 6371 km. */
  @Test
  void distanceIsAlongTheGreatCircle() {
    City origin = new City("-", "-", 0, 0, ZoneId.of("UTC"), List.of());
    assertThat(origin.distanceKm(0, 90)).isEqualTo(10007.5, within(0.1));
    assertThat(origin.distanceKm(-90, 17)).isEqualTo(10007.5, within(0.1));
    assertThat(origin.distanceKm(0, -180)).isEqualTo(20015.1, within(0.1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Bogotá", "bogota", "TROMSO", "tromsø", " são paulo ", "Sao Paulo"})
  void citiesAreFoundWithoutRegardToCaseAndAccents(String name) {
    assertThat(Cities.named(name)).isPresent();
  }

  @Test
  void everyCityHasTwelveMonthsAndAYearOfLight() {
    assertThat(Cities.all()).hasSize(61);
    for (City city : Cities.all()) {
      assertThat(city.sunshineHours()).as(city.name()).hasSize(12);
      Place place =
          at(city.latitudeDeg(), city.longitudeDeg(), new WeatherSource.BuiltIn(city.name()));
      Climate climate = PlaceClimate.of(place).climate();
      for (int d = 0; d < 365; d++) {
        LocalDate day = LocalDate.of(2027, 1, 1).plusDays(d);
        double outside =
            DailyRadiation.outsideAirMegaJoules(city.latitudeDeg(), day.getDayOfYear());
        double light = climate.globalMegaJoules(day);
        assertThat(light).as(city.name() + day).isBetween(0.0, 0.85 * outside);
      }
    }
  }

  @Test
  void anUnknownCityIsRefusedByName() {
    assertThatThrownBy(() -> PlaceClimate.of(at(50, 0, new WeatherSource.BuiltIn("Atlantis"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Atlantis");
  }

  @Test
  void moreLightThanTheSkyHasIsBoundedAndSaid() {
    List<Double> odd = List.of(34.0, 6.0, 9.8, 14.9, 18.2, 19.6, 18.9, 16.5, 11.9, 7.2, 4.0, 2.7);
    PlaceClimate climate = PlaceClimate.of(at(50, 0, new WeatherSource.MonthlyIrradiation(odd)));
    assertThat(climate.notes()).anyMatch(note -> note.startsWith("January: 34.0 MJ"));
    LocalDate day = LocalDate.of(2027, 1, 15);
    assertThat(climate.climate().globalMegaJoules(day))
        .isLessThan(DailyRadiation.outsideAirMegaJoules(50, 15));
  }

  @Test
  void darkMonthsTakeTheClearnessOfTheirNeighbours() {
    List<Double> tromso = List.of(0.0, 1.1, 5.0, 10.0, 15.0, 17.0, 15.5, 11.0, 6.0, 2.0, 0.1, 0.0);
    MonthlyClimate climate = MonthlyClimate.ofIrradiation(75, tromso);
    assertThat(climate.clearness(LocalDate.of(2027, 12, 21))).isBetween(0.1, 0.85);
    assertThat(climate.globalMegaJoules(LocalDate.of(2027, 12, 21))).isZero();
    assertThat(climate.globalMegaJoules(LocalDate.of(2027, 6, 21))).isGreaterThan(15);
  }
}
