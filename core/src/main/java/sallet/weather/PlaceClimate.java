package sallet.weather;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sallet.household.Place;
import sallet.household.WeatherSource;

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
    if (source instanceof WeatherSource.Nearest) {
      return ofCity(place, Cities.nearest(place.latitudeDeg(), place.longitudeDeg()));
    }
    if (source instanceof WeatherSource.BuiltIn builtIn) {
      return ofCity(
          place,
          Cities.named(builtIn.city())
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "no built-in place is called " + builtIn.city())));
    }
    if (source instanceof WeatherSource.MonthlySunshine sunshine) {
      return new PlaceClimate(
          MonthlyClimate.ofSunshine(place.latitudeDeg(), place.latitudeDeg(), sunshine.hours()),
          Optional.empty(),
          List.of("Outdoor light comes from the sunshine hours given; good to about 10 %."));
    }
    return ofIrradiation(place, ((WeatherSource.MonthlyIrradiation) source).megaJoulesPerM2Day());
  }

  private static PlaceClimate ofCity(Place place, City city) {
    double km = city.distanceKm(place.latitudeDeg(), place.longitudeDeg());
    String from =
        String.format(
            Locale.ROOT,
            "Outdoor light comes from the mean sunshine hours of %s, %.0f km away and %.1f° of"
                + " latitude apart",
            city.name(),
            km,
            Math.abs(city.latitudeDeg() - place.latitudeDeg()));
    List<String> notes =
        km <= FAR_KM
            ? List.of(from + "; good to about 10 %.")
            : List.of(
                from + ".",
                city.name()
                    + " is far: twelve monthly values of your own place would make the plan"
                    + " better.");
    return new PlaceClimate(
        MonthlyClimate.ofSunshine(place.latitudeDeg(), city.latitudeDeg(), city.sunshineHours()),
        Optional.of(city),
        notes);
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
