package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sallet.household.Household;
import sallet.household.Tariff;
import sallet.household.Wall;

/** Height, hours, price and raising of lamps against hand sums, brute force and laws. */
class LampScheduleTest {
  private static final List<Double> FREE = Collections.nCopies(24, 0.0);

  private static Household household(Optional<Tariff> tariff) {
    Household plain =
        Households.household(
            Households.CHRISTCHURCH,
            Households.room(0, List.of(Households.window(Wall.NORTH, 0.6, 1.8, 1.2, 0.9))),
            Households.bench(0.4, 1.5, 3, 6),
            Optional.of(Households.LAMP));
    return new Household(
        plain.eaters(),
        plain.absences(),
        plain.crops(),
        plain.place(),
        plain.room(),
        plain.bench(),
        plain.lamps(),
        plain.nursery(),
        plain.reservoir(),
        plain.feed(),
        List.of(),
        plain.watering(),
        tariff);
  }

  private static List<Boolean> sun(int from, int to) {
    return IntStream.range(0, 24).mapToObj(h -> h >= from && h < to).toList();
  }

  /**
   * By hand: two pots with 2 and 4 mol of daylight and 100 and 200 µmol/m²/s. Light of an hour is
   * 0.36 and 0.72 mol; for 14 mol the least squares want (0.36·12 + 0.72·10)/(0.36² + 0.72²) h.
   */
  @Test
  void hoursAreLeastSquares() {
    assertThat(LampWeek.fullHours(List.of(2.0, 4.0), List.of(100.0, 200.0), 14))
        .isEqualTo((4.32 + 7.2) / (0.1296 + 0.5184), within(1e-9));
  }

  /** No other number of hours comes nearer to the target. */
  @Test
  void noOtherHoursComeNearer() {
    Random random = new Random(3);
    for (int i = 0; i < 50; i++) {
      List<Double> window = new ArrayList<>();
      List<Double> ppfd = new ArrayList<>();
      for (int p = 0; p < 18; p++) {
        window.add(12 * random.nextDouble());
        ppfd.add(50 + 200 * random.nextDouble());
      }
      double best = LampWeek.fullHours(window, ppfd, 14);
      for (double step : new double[] {-1, -0.1, 0.1, 1}) {
        assertThat(miss(window, ppfd, best)).isLessThan(miss(window, ppfd, best + step));
      }
    }
  }

  private static double miss(List<Double> window, List<Double> ppfd, double hours) {
    double sum = 0;
    for (int i = 0; i < window.size(); i++) {
      double miss = window.get(i) + ppfd.get(i) * hours * 0.0036 - 14;
      sum += miss * miss;
    }
    return sum;
  }

  @Test
  void withoutATariffTheLampRunsLongAndDimAroundTheDay() {
    List<Double> dimming = LampWeek.schedule(9, sun(8, 16), 18, FREE);
    assertThat(dimming.stream().filter(d -> d > 0)).hasSize(18).allMatch(d -> d == 0.5);
    assertThat(dimming.subList(8, 16)).doesNotContain(0.0);
  }

  @Test
  void aDayLongerThanTheLongestKeepsTheLampInsideIt() {
    List<Double> dimming = LampWeek.schedule(3, sun(3, 22), 18, FREE);
    for (int h = 0; h < 24; h++) {
      assertThat(dimming.get(h) > 0 && (h < 3 || h >= 22)).isFalse();
    }
    assertThat(dimming.stream().mapToDouble(d -> d).sum()).isEqualTo(3, within(1e-9));
  }

  /** Brute force over all whole-hour choices inside every stretch that holds the day. */
  @Test
  void theCheapestHoursAreTaken() {
    Random random = new Random(5);
    for (int i = 0; i < 40; i++) {
      List<Double> prices =
          IntStream.range(0, 24).mapToObj(h -> (double) (1 + random.nextInt(4))).toList();
      int hours = 2 + random.nextInt(8);
      int most = 14;
      List<Boolean> sun = sun(9, 16);
      List<Double> ours = LampWeek.schedule(hours, sun, most, prices);
      double least = Double.POSITIVE_INFINITY;
      for (int start = 0; start < 24; start++) {
        int first = start;
        List<Integer> stretch = IntStream.range(first, first + most).mapToObj(h -> h % 24).toList();
        if (IntStream.range(9, 16).allMatch(stretch::contains)) {
          double cost =
              stretch.stream().map(prices::get).sorted().limit(hours).mapToDouble(p -> p).sum();
          least = Math.min(least, cost);
        }
      }
      double cost = IntStream.range(0, 24).mapToDouble(h -> ours.get(h) * prices.get(h)).sum();
      assertThat(cost).as("try %d", i).isEqualTo(least, within(1e-9));
    }
  }

  @Test
  void nightHoursRunOverMidnight() {
    Tariff tariff = new Tariff(0.30, 0.10, LocalTime.of(22, 30), LocalTime.of(6, 0));
    assertThat(tariff.ofHour(23)).isEqualTo(0.10, within(1e-12));
    assertThat(tariff.ofHour(22)).isEqualTo(0.20, within(1e-12));
    assertThat(tariff.ofHour(5)).isEqualTo(0.10, within(1e-12));
    assertThat(tariff.ofHour(6)).isEqualTo(0.30, within(1e-12));
  }

  @Test
  void winterWeeksNeedMoreLampThanSummerWeeks() {
    Household household = household(Optional.empty());
    HourlyLight light = RoomLight.atPots(household, LocalDate.of(2027, 1, 1), 364);
    List<LampWeek> weeks = LampWeek.of(household, light, LightTarget.LEAFY, household.tariff());
    assertThat(weeks).hasSize(52);
    assertThat(weeks.get(25).fullHours()).isGreaterThan(0);
    double mean = weeks.get(25).dliMol().stream().mapToDouble(d -> d).average().orElseThrow();
    assertThat(mean).isBetween(10.0, 15.0);
    weeks.forEach(week -> assertThat(week.dimming()).allMatch(share -> share >= 0 && share <= 1));
  }

  @Test
  void aTariffNeverCostsMoreThanRunningLongAndDim() {
    Tariff tariff = new Tariff(0.40, 0.10, LocalTime.of(22, 0), LocalTime.of(7, 0));
    Household household = household(Optional.of(tariff));
    HourlyLight light = RoomLight.atPots(household, LocalDate.of(2027, 6, 1), 28);
    List<LampWeek> cheap = LampWeek.of(household, light, LightTarget.LEAFY, Optional.of(tariff));
    List<LampWeek> plain = LampWeek.of(household, light, LightTarget.LEAFY, Optional.empty());
    for (int w = 0; w < 4; w++) {
      List<Double> dimming = plain.get(w).dimming();
      double price =
          0.12 * IntStream.range(0, 24).mapToDouble(h -> dimming.get(h) * tariff.ofHour(h)).sum();
      assertThat(cheap.get(w).costPerDay()).isLessThanOrEqualTo(price + 1e-9);
      assertThat(cheap.get(w).fullHours()).isEqualTo(plain.get(w).fullHours(), within(1e-9));
    }
  }

  @Test
  void aSolvedHeightGivesTheMeanAskedFor() {
    Household household = household(Optional.empty());
    for (double wanted : new double[] {90, 120, 150}) {
      LampHeight height = LampHeight.forMean(household, wanted).orElseThrow();
      assertThat(LampHeight.at(household, height.aboveBenchM()).map().meanUmol())
          .isEqualTo(wanted, within(0.1));
    }
    assertThat(LampHeight.forMean(household, 2000)).isEmpty();
    assertThat(LampHeight.forMean(household, 1)).isEmpty();
  }

  /**
   * After every raise, and on every day, leaves keep the least distance; never a needless raise.
   */
  @Test
  void lampsGoUpWithTheLeaves() {
    Household household =
        household(Optional.empty()).withLamps(List.of(Households.LAMP.atHeight(0.32)));
    LampRaise.Canopy canopy = new LampRaise.Canopy(0.03, 0.18, 35);
    double least = LampRaise.leastDistanceM(household, 600);
    List<LampRaise> raises = LampRaise.of(household, canopy, 600);
    assertThat(raises).isNotEmpty();
    double height = 0.32;
    int next = 0;
    for (int day = 0; day <= 35; day++) {
      if (next < raises.size() && raises.get(next).day() == day) {
        height = raises.get(next++).toAboveBenchM();
      }
      double leaves = 0.12 + 0.03 + 0.15 * day / 35.0;
      assertThat(height - leaves).as("day %d", day).isGreaterThanOrEqualTo(least - 1e-9);
      assertThat(height - leaves).isLessThan(least + 0.05 + 0.16);
    }
    assertThat(
            LampRaise.of(household.withLamps(List.of(Households.LAMP.atHeight(1.2))), canopy, 600))
        .isEmpty();
  }

  /** 8 to 14 mol for seedlings, 12 at least for heads, below 6 stretching: crop_light_needs.csv. */
  @Test
  void placesAndWarningsFollowTheTable() {
    assertThat(PlaceUse.of(13)).isEqualTo(PlaceUse.HEADS);
    assertThat(PlaceUse.of(9)).isEqualTo(PlaceUse.SEEDLINGS);
    assertThat(PlaceUse.of(7)).isEqualTo(PlaceUse.SHADE);
    assertThat(PlaceUse.of(3)).isEqualTo(PlaceUse.TOO_DARK);
    assertThat(LightWarning.of(12.5, 200, 14)).isEmpty();
    assertThat(LightWarning.of(5, 0, 12))
        .singleElement()
        .satisfies(w -> assertThat(w.grade()).isEqualTo(LightWarning.Grade.STRONG));
    assertThat(LightWarning.of(7, 0, 12))
        .singleElement()
        .satisfies(w -> assertThat(w.grade()).isEqualTo(LightWarning.Grade.MILD));
    assertThat(LightWarning.of(18, 1100, 16))
        .extracting(LightWarning::grade)
        .containsExactly(
            LightWarning.Grade.STRONG, LightWarning.Grade.STRONG, LightWarning.Grade.MILD);
  }
}
