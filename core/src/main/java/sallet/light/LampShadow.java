package sallet.light;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.weather.OutdoorLight;
import sallet.weather.PlaceClimate;
import sallet.weather.SkyMoment;

/**
 * Daylight that the lamps' bodies and the sheets around the tray keep from the pots. Told from
 * three days a month.
 *
 * @param share of the year's daylight, mean over the pots, 0 to 1
 * @param ofMonths share of each of the twelve months, from the first
 * @param ofPots share of each pot's year
 * @param clearAboveBenchM least height of the lowest lamp above the tray surface, all raised alike,
 *     from which on they take no more than {@link #LITTLE}, m; empty when they take no more now, or
 *     do so up to the ceiling
 */
public record LampShadow(
    double share, List<Double> ofMonths, List<Double> ofPots, OptionalDouble clearAboveBenchM) {
  /** A shadow not worth moving a lamp for. Judgement. */
  public static final double LITTLE = 0.05;

  private static final int[] DAYS_OF_MONTH = {5, 15, 25};
  private static final double STEP_M = 0.05;

  public LampShadow {
    ofMonths = List.copyOf(ofMonths);
    ofPots = List.copyOf(ofPots);
  }

  /** For the twelve months from the month of a day; empty without daylight or lamps. */
  public static Optional<LampShadow> of(Household household, LocalDate from) {
    if (household.lamps().isEmpty() || !household.room().hasDaylight()) {
      return Optional.empty();
    }
    Days days = Days.of(household, from);
    double[][] bare = days.lightOf(household.withLamps(List.of()));
    double[][] hung = days.lightOf(household);
    int each = DAYS_OF_MONTH.length;
    List<Double> months =
        IntStream.range(0, 12)
            .mapToObj(
                m ->
                    lost(
                        Arrays.stream(bare, m * each, (m + 1) * each),
                        Arrays.stream(hung, m * each, (m + 1) * each)))
            .toList();
    List<Double> pots =
        IntStream.range(0, household.bench().pots().size())
            .mapToObj(i -> lost(atPot(bare, i), atPot(hung, i)))
            .toList();
    double share = lost(Arrays.stream(bare), Arrays.stream(hung));
    return Optional.of(
        new LampShadow(
            share,
            months,
            pots,
            share <= LITTLE ? OptionalDouble.empty() : clear(household, days, bare)));
  }

  private static Stream<double[]> atPot(double[][] light, int pot) {
    return Arrays.stream(light).map(day -> new double[] {day[pot]});
  }

  /** Share of light that is there before and not after. */
  private static double lost(Stream<double[]> before, Stream<double[]> after) {
    double all = before.flatMapToDouble(DoubleStream::of).sum();
    return all == 0 ? 0 : Math.max(0, 1 - after.flatMapToDouble(DoubleStream::of).sum() / all);
  }

  /** The first height, in steps up to the ceiling, from which the shadow stays little. */
  private static OptionalDouble clear(Household household, Days days, double[][] bare) {
    List<Lamp> lamps = household.lamps();
    double lowest = lamps.stream().mapToDouble(Lamp::heightAboveBenchM).min().orElseThrow();
    double highest = lamps.stream().mapToDouble(Lamp::heightAboveBenchM).max().orElseThrow();
    double room = household.room().heightM() - household.bench().heightM() - highest;
    OptionalDouble clear = OptionalDouble.empty();
    for (int step = (int) Math.floor(room / STEP_M); step > 0; step--) {
      double up = step * STEP_M;
      Household raised =
          household.withLamps(
              lamps.stream().map(l -> l.atHeight(l.heightAboveBenchM() + up)).toList());
      if (lost(Arrays.stream(bare), Arrays.stream(days.lightOf(raised))) > LITTLE) {
        break;
      }
      clear = OptionalDouble.of(lowest + up);
    }
    return clear;
  }

  /** The sky of some days. */
  private record Days(List<LocalDate> dates, List<List<SkyMoment>> skies) {
    static Days of(Household household, LocalDate from) {
      OutdoorLight outdoors =
          PlaceClimate.light(household.place(), RoomLight.standardTime(household.place(), from));
      List<LocalDate> dates =
          IntStream.range(0, 12)
              .mapToObj(m -> from.withDayOfMonth(1).plusMonths(m))
              .flatMap(month -> Arrays.stream(DAYS_OF_MONTH).mapToObj(month::withDayOfMonth))
              .toList();
      return new Days(dates, dates.stream().map(outdoors::of).toList());
    }

    /** Daylight of each day at each pot, Wh/m². */
    double[][] lightOf(Household household) {
      List<Spot> spots = Spot.ofPots(household.bench());
      RoomDaylight room = new RoomDaylight(household, spots);
      double[][] light = new double[dates.size()][spots.size()];
      for (int day = 0; day < light.length; day++) {
        for (SkyMoment moment : skies.get(day)) {
          double[] wm2 = room.atWm2(dates.get(day), moment);
          for (int i = 0; i < wm2.length; i++) {
            light[day][i] += wm2[i] * moment.lastsHours();
          }
        }
      }
      return light;
    }
  }
}
