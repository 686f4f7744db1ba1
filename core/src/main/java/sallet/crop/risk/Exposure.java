package sallet.crop.risk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import sallet.air.Vapour;
import sallet.crop.Bolting;
import sallet.crop.Crop;
import sallet.crop.PlaceDays;
import sallet.crop.Stay;
import sallet.household.AirClimate;

/**
 * All that the risks of one plant's life are judged by.
 *
 * @param crop the crop
 * @param emergence day it comes up
 * @param end day it goes
 * @param stays where it stands, in order of time; the last is the bench
 * @param air air of the room
 * @param airMPerS air speed at the crown, m/s
 * @param southern whether the room lies south of the equator
 */
public record Exposure(
    Crop crop,
    LocalDate emergence,
    LocalDate end,
    List<Stay> stays,
    AirClimate air,
    double airMPerS,
    boolean southern) {

  /** Air speed at the crown in a room without a fan, m/s. Common practice. */
  public static final double STILL_AIR_M_PER_S = 0.1;

  /** Days from emergence in which dim light draws a seedling. Common practice. */
  private static final int SEEDLING_DAYS = 14;

  public Exposure {
    stays = List.copyOf(stays);
    if (stays.isEmpty() || stays.get(0).from().isAfter(emergence) || !end.isAfter(emergence)) {
      throw new IllegalArgumentException(
          "a life from " + emergence + " to " + end + " needs a place from its first day on");
    }
    Stay.requireAfter(emergence, stays);
  }

  /** One day where the plant stands then. */
  record Day(LocalDate date, PlaceDays place) {
    double dliMol() {
      return place.dliMol(place.index(date));
    }

    double meanC() {
      return place.meanC(place.index(date));
    }

    double photoperiodHours() {
      return place.photoperiodHours(place.index(date));
    }

    double boltingCd(Bolting bolting) {
      return bolting.dayCd(place.boltingHeatCd(place.index(date)), photoperiodHours());
    }
  }

  /** The days of the life, as far as the places are known. */
  List<Day> days() {
    List<Day> days = new ArrayList<>();
    for (LocalDate date = emergence; date.isBefore(end); date = date.plusDays(1)) {
      PlaceDays place = placeOn(date);
      if (place.holds(date)) {
        days.add(new Day(date, place));
      }
    }
    return days;
  }

  private PlaceDays placeOn(LocalDate date) {
    PlaceDays place = stays.get(0).place();
    for (Stay stay : stays) {
      place = stay.from().isAfter(date) ? place : stay.place();
    }
    return place;
  }

  List<Day> seedlingDays() {
    List<Day> all = days();
    return all.subList(0, Math.min(SEEDLING_DAYS, all.size()));
  }

  /** The days on the bench; the whole life when it never gets there. */
  List<Day> benchDays() {
    LocalDate from = stays.get(stays.size() - 1).from();
    List<Day> bench = days().stream().filter(day -> !day.date().isBefore(from)).toList();
    return bench.isEmpty() ? days() : bench;
  }

  static double mean(List<Day> days, ToDoubleFunction<Day> value) {
    return days.stream().mapToDouble(value).average().orElse(Double.NaN);
  }

  /** The warmest month's day temperature while it stands on the bench, °C. */
  double warmestDayC() {
    return benchDays().stream()
        .mapToDouble(day -> air.dayC().get(day.date().getMonthValue() - 1))
        .max()
        .orElse(Double.NaN);
  }

  /** The coldest month's night temperature while it stands on the bench, °C. */
  double coldestNightC() {
    return benchDays().stream()
        .mapToDouble(day -> air.nightC().get(day.date().getMonthValue() - 1))
        .min()
        .orElse(Double.NaN);
  }

  /** The dampest night: the day's air cooled to the night without losing water, percent. */
  double nightHumidityPercent() {
    return benchDays().stream()
        .mapToInt(day -> day.date().getMonthValue() - 1)
        .distinct()
        .mapToDouble(
            month ->
                Vapour.humidityAfter(
                    air.humidityPercent().get(month),
                    air.dayC().get(month),
                    air.nightC().get(month)))
        .max()
        .orElse(Double.NaN);
  }
}
