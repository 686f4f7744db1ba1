package sallet.light;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sallet.household.Household;
import sallet.household.Lamp;
import sallet.household.Tariff;
import sallet.weather.DaySpans;
import sallet.weather.Sun;

/**
 * How long and how strong the lamps run in a week so that every pot comes as near as can be to what
 * its crop wants (least squares over the pots that hold one, exact: the light of all pots rises
 * with lamp hours).
 *
 * @param from first day of the week
 * @param windowMol daylight, mean over the pots, mol/m²/d
 * @param dimming share of full output in each of the day's 24 hours, standard time
 * @param dliMol light of a day with it, for each pot, mol/m²
 * @param needs what stands in each pot in the middle of the week
 * @param costPerDay price of the electricity, 0 without a tariff
 */
public record LampWeek(
    LocalDate from,
    double windowMol,
    List<Double> dimming,
    List<Double> dliMol,
    List<Optional<LightNeed>> needs,
    double costPerDay) {
  /** Least share most drivers can be dimmed to. Common practice. */
  private static final double LEAST_DIMMING = 0.1;

  public LampWeek {
    dimming = List.copyOf(dimming);
    dliMol = List.copyOf(dliMol);
    needs = List.copyOf(needs);
  }

  /** Hours of full output that give the same light, h. */
  public double fullHours() {
    return dimming.stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Hours with any lamp light, h. */
  public double hoursOn() {
    return dimming.stream().filter(share -> share > 0).count();
  }

  /**
   * The weeks of a stretch of light, long and dim (better for leaves than short and bright at the
   * same sum: Elkins and van Iersel 2020), or the cheapest when there is a tariff.
   *
   * @param light of whole days, its lamp light is left aside
   */
  public static List<LampWeek> of(
      Household household, HourlyLight light, LightTarget target, Optional<Tariff> tariff) {
    List<Lamp> full = household.lamps().stream().map(lamp -> lamp.dimmedTo(1)).toList();
    RoomLamps lamps = new RoomLamps(household.room(), household.bench(), full);
    double factor = Calibration.of(household).factors().lamp().value();
    List<Double> ppfd =
        Spot.ofPots(household.bench()).stream().map(s -> factor * lamps.ppfdUmol(s)).toList();
    double kilowatts = full.stream().mapToDouble(Lamp::powerW).sum() / 1000;
    List<Double> prices =
        IntStream.range(0, 24).mapToObj(h -> tariff.map(t -> t.ofHour(h)).orElse(0.0)).toList();
    List<LampWeek> weeks = new ArrayList<>();
    for (int day = 0; day + 7 <= light.days(); day += 7) {
      List<Double> window = window(light, day);
      LocalDate from = light.from().plusDays(day);
      LocalDate middle = from.plusDays(3);
      List<Optional<LightNeed>> needs =
          IntStream.range(0, ppfd.size()).mapToObj(i -> target.need(i, middle)).toList();
      int most = (int) Math.floor(target.mostHours());
      double hours = Math.max(0, Math.min(most, fullHours(window, ppfd, needs)));
      List<Double> dimming = schedule(hours, sunUp(household, middle), most, prices);
      double sum = dimming.stream().mapToDouble(Double::doubleValue).sum();
      List<Double> dli =
          IntStream.range(0, ppfd.size())
              .mapToObj(i -> window.get(i) + Photons.mol(ppfd.get(i), sum))
              .toList();
      weeks.add(
          new LampWeek(from, mean(window), dimming, dli, needs, kilowatts * cost(dimming, prices)));
    }
    return weeks;
  }

  private static double cost(List<Double> dimming, List<Double> prices) {
    return IntStream.range(0, 24).mapToDouble(h -> dimming.get(h) * prices.get(h)).sum();
  }

  private static List<Double> window(HourlyLight light, int day) {
    return IntStream.range(0, light.places())
        .mapToObj(
            i ->
                IntStream.range(day, day + 7)
                    .mapToDouble(d -> light.daylightDliMol(i, d))
                    .average()
                    .orElse(0))
        .toList();
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }

  /**
   * Least squares over the pots that hold a crop: Σ p (T - D) / (0.0036 Σ p²), with T what the crop
   * wants and D the daylight in mol/m²/d, p in µmol/m²/s; 0 for a bare bench.
   */
  static double fullHours(
      List<Double> windowMol, List<Double> ppfdUmol, List<Optional<LightNeed>> needs) {
    double above = 0;
    double below = 0;
    for (int i = 0; i < ppfdUmol.size(); i++) {
      if (needs.get(i).isPresent()) {
        double p = Photons.mol(ppfdUmol.get(i), 1);
        above += p * (needs.get(i).get().targetMol() - windowMol.get(i));
        below += p * p;
      }
    }
    return below == 0 ? 0 : above / below;
  }

  /** Whether the sun is up for most of each hour. */
  private static List<Boolean> sunUp(Household household, LocalDate day) {
    ZoneOffset clock = RoomLight.standardTime(household.place(), day);
    DaySpans up =
        household.room().hasDaylight() ? Sun.up(household.place(), day, clock) : DaySpans.NONE;
    return IntStream.range(0, 24).mapToObj(h -> up.shareOfHour(h) > 0.5).toList();
  }

  /**
   * Dimming by the hour: inside a stretch no longer than the longest day that holds all sunny hours
   * (or inside these when they are longer), the cheapest hours first, equal ones alike.
   */
  static List<Double> schedule(
      double fullHours, List<Boolean> sunUp, int mostHours, List<Double> prices) {
    List<Double> best = Collections.nCopies(24, 0.0);
    if (fullHours <= 0) {
      return best;
    }
    long sunny = sunUp.stream().filter(up -> up).count();
    double least = Double.POSITIVE_INFINITY;
    for (int start = 0; start < 24; start++) {
      int first = start;
      List<Integer> stretch =
          sunny >= mostHours
              ? IntStream.range(0, 24).filter(sunUp::get).boxed().toList()
              : IntStream.range(first, first + mostHours).mapToObj(h -> h % 24).toList();
      long held = stretch.stream().filter(sunUp::get).count();
      if (held == sunny || sunny >= mostHours) {
        List<Double> dimming = filled(fullHours, stretch, prices);
        // Among equally cheap stretches the one whose middle is nearest to noon.
        double off = Math.abs(first + mostHours / 2.0 - 12.5);
        double cost = cost(dimming, prices) + 1e-6 * off;
        if (cost < least) {
          least = cost;
          best = dimming;
        }
      }
    }
    return best;
  }

  private static List<Double> filled(double fullHours, List<Integer> stretch, List<Double> prices) {
    double[] dimming = new double[24];
    double left = Math.min(fullHours, stretch.size());
    for (double price : stretch.stream().map(prices::get).distinct().sorted().toList()) {
      List<Integer> alike = stretch.stream().filter(h -> prices.get(h) == price).toList();
      double share = Math.min(1, left / alike.size());
      int hours = alike.size();
      if (share > 0 && share < LEAST_DIMMING) {
        hours = (int) Math.max(1, Math.floor(left / LEAST_DIMMING));
        share = Math.min(1, left / hours);
      }
      int skip = (alike.size() - hours) / 2;
      for (int h : alike.subList(skip, skip + hours)) {
        dimming[h] = share;
      }
      left = Math.max(0, left - share * hours);
      if (left <= 1e-9) {
        break;
      }
    }
    return IntStream.range(0, 24).mapToObj(h -> dimming[h]).toList();
  }
}
