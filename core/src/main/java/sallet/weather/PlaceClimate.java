package sallet.weather;

import java.time.Month;
import java.time.ZoneOffset;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sallet.household.Place;
import sallet.household.WeatherSource;
import sallet.household.WeatherYear;

/**
 * The climate taken for a place, and what the grower should know about it.
 *
 * @param climate light of every day
 * @param city the built-in city it comes from, empty when the grower gave the months
 * @param notes where it comes from, how good it is and what was amiss, a sentence each
 */
public record PlaceClimate(Climate climate, Optional<City> city, List<String> notes) {

  /** Distance from the city from which its sunshine is a rough guide, km. Judgement. */
  private static final double FAR_KM = 300;

  /** Distance from which a weather file is of another place, km. Judgement. */
  private static final double FAR_FILE_KM = 100;

  /**
   * Misfit beyond which a file's clock is wrong, W/m². Judgement between the right (below 10) and
   * the wrong reading (28 to 41) of files at hand.
   */
  private static final double WORST_MISFIT_WM2 = 20;

  public PlaceClimate {
    notes = List.copyOf(notes);
  }

  /**
   * The climate a place names.
   *
   * @throws IllegalArgumentException when it names a city that is not built in
   */
  public static PlaceClimate of(Place place) {
    WeatherSource source = place.weather();
    if (source instanceof WeatherSource.Nearest || source instanceof WeatherSource.BuiltIn) {
      return ofCity(place, city(place, source), Map.of());
    }
    if (source instanceof WeatherSource.Corrected corrected) {
      return ofCity(place, city(place, corrected.place()), corrected.sunshineHours());
    }
    if (source instanceof WeatherSource.MonthlySunshine sunshine) {
      return new PlaceClimate(
          MonthlyClimate.ofSunshine(place.latitudeDeg(), place.latitudeDeg(), sunshine.hours()),
          Optional.empty(),
          List.of("Outdoor light comes from the sunshine hours given; good to about 10 %."));
    }
    if (source instanceof WeatherSource.SkyClass sky) {
      return new PlaceClimate(
          MonthlyClimate.ofClearness(place.latitudeDeg(), sky.clearness()),
          Optional.empty(),
          List.of(
              String.format(
                  Locale.ROOT,
                  "Outdoor light is taken as %.0f %% of the light above the air all year: a rough"
                      + " guide; twelve monthly values would be better.",
                  100 * sky.clearness())));
    }
    if (source instanceof WeatherSource.Hourly hourly) {
      return ofFile(place, hourly.year());
    }
    return ofIrradiation(place, ((WeatherSource.MonthlyIrradiation) source).megaJoulesPerM2Day());
  }

  /**
   * Sun and sky of a place through its days.
   *
   * @param clock the standard time in which hours are counted
   * @throws IllegalArgumentException when the place names a city that is not built in
   */
  public static OutdoorLight light(Place place, ZoneOffset clock) {
    if (place.weather() instanceof WeatherSource.Hourly hourly) {
      return new HourlySky(hourly.year(), clock);
    }
    Climate climate = of(place).climate();
    return day -> MeanSky.of(place, climate, day, clock);
  }

  private static City city(Place place, WeatherSource source) {
    return source instanceof WeatherSource.BuiltIn builtIn
        ? Cities.named(builtIn.city())
            .orElseThrow(
                () -> new IllegalArgumentException("no built-in place is called " + builtIn.city()))
        : Cities.nearest(place.latitudeDeg(), place.longitudeDeg());
  }

  private static PlaceClimate ofCity(Place place, City city, Map<Month, Double> own) {
    double km = city.distanceKm(place.latitudeDeg(), place.longitudeDeg());
    String from =
        String.format(
            Locale.ROOT,
            "Outdoor light comes from the mean sunshine hours of %s, %.0f km away and %.1f° of"
                + " latitude apart",
            city.name(),
            km,
            Math.abs(city.latitudeDeg() - place.latitudeDeg()));
    List<String> notes = new ArrayList<>();
    notes.add(km <= FAR_KM ? from + "; good to about 10 %." : from + ".");
    if (km > FAR_KM) {
      notes.add(
          city.name()
              + " is far: twelve monthly values of your own place would make the plan better.");
    }
    if (!own.isEmpty()) {
      notes.add("Your own sunshine hours replace " + own.size() + " of its months.");
    }
    return new PlaceClimate(
        MonthlyClimate.ofSunshine(
            place.latitudeDeg(), city.latitudeDeg(), city.sunshineHours(), own),
        Optional.of(city),
        notes);
  }

  private static PlaceClimate ofFile(Place place, WeatherYear year) {
    HourlySky sky = new HourlySky(year, ZoneOffset.UTC);
    City where =
        new City(
            "", year.name(), year.latitudeDeg(), year.longitudeDeg(), ZoneOffset.UTC, List.of());
    double km = where.distanceKm(place.latitudeDeg(), place.longitudeDeg());
    List<String> notes = new ArrayList<>();
    notes.add(
        String.format(
            Locale.ROOT,
            "Outdoor light comes from the hourly weather file of %s, %.0f km away.",
            year.name(),
            km));
    if (km > FAR_FILE_KM) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The weather file is of a place %.0f km away; its sun rises and stands as it does"
                  + " there.",
              km));
    }
    double misfit = sky.misfitWm2();
    if (misfit > WORST_MISFIT_WM2) {
      notes.add(
          String.format(
              Locale.ROOT,
              "Sun and sky of the weather file miss its global light by %.0f W/m² in the mean; its"
                  + " time zone may be wrong.",
              misfit));
    }
    if (sky.missingHours() > 0) {
      notes.add(
          sky.missingHours() + " hours of the weather file have no light and are taken as dark.");
    }
    return new PlaceClimate(sky.climate(), Optional.empty(), notes);
  }

  private static PlaceClimate ofIrradiation(Place place, List<Double> megaJoules) {
    List<String> notes = new ArrayList<>();
    notes.add("Outdoor light comes from the monthly irradiation given.");
    double[] clearness = MonthlyClimate.irradiationClearness(place.latitudeDeg(), megaJoules);
    for (int m = 0; m < 12; m++) {
      if (clearness[m] < MonthlyClimate.DULLEST || clearness[m] > MonthlyClimate.CLEAREST) {
        notes.add(
            String.format(
                Locale.ROOT,
                "%s: %.1f MJ/m² a day is %.0f %% of the light above the air; Sallet reckons with"
                    + " %.0f to %.0f %%.",
                Month.of(m + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                megaJoules.get(m),
                100 * clearness[m],
                100 * MonthlyClimate.DULLEST,
                100 * MonthlyClimate.CLEAREST));
      }
    }
    return new PlaceClimate(
        MonthlyClimate.ofIrradiation(place.latitudeDeg(), megaJoules), Optional.empty(), notes);
  }
}
