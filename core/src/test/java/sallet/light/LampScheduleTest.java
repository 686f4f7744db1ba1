package sallet.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
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
    assertThat(LampWeek.fullHours(List.of(2.0, 4.0), List.of(100.0, 200.0), wanting(14, 14)))
        .isEqualTo((4.32 + 7.2) / (0.1296 + 0.5184), within(1e-9));
  }

  private static List<Optional<LightNeed>> wanting(double... mol) {
    return Arrays.stream(mol).mapToObj(m -> Optional.of(LightNeed.leafy(m))).toList();
  }

  /** By hand: the same pots, for 16 and 10 mol (0.36·14 + 0.72·6)/(0.36² + 0.72²) h. */
  @Test
  void eachPotCountsWithItsOwnCrop() {
    List<Double> window = List.of(2.0, 4.0);
    List<Double> ppfd = List.of(100.0, 200.0);
    assertThat(LampWeek.fullHours(window, ppfd, wanting(16, 10)))
        .isEqualTo((5.04 + 4.32) / (0.1296 + 0.5184), within(1e-9));
  }

  /** An empty pot has no say: for the first alone (0.36·12)/0.36² h. */
  @Test
  void emptyPotsHaveNoSay() {
    List<Optional<LightNeed>> needs = List.of(Optional.of(LightNeed.leafy(14)), Optional.empty());
    assertThat(LampWeek.fullHours(List.of(2.0, 4.0), List.of(100.0, 200.0), needs))
        .isEqualTo(12 / 0.36, within(1e-9));
    assertThat(LampWeek.fullHours(List.of(2.0), List.of(100.0), List.of(Optional.empty())))
        .isZero();
  }

  /** No other number of hours comes nearer to the targets. */
  @Test
  void noOtherHoursComeNearer() {
    Random random = new Random(3);
    for (int i = 0; i < 50; i++) {
      List<Double> window = new ArrayList<>();
      List<Double> ppfd = new ArrayList<>();
      double[] wanted = random.doubles(18, 10, 18).toArray();
      for (int p = 0; p < 18; p++) {
        window.add(12 * random.nextDouble());
        ppfd.add(50 + 200 * random.nextDouble());
      }
      double best = LampWeek.fullHours(window, ppfd, wanting(wanted));
      for (double step : new double[] {-1, -0.1, 0.1, 1}) {
        assertThat(miss(window, ppfd, wanted, best))
            .isLessThan(miss(window, ppfd, wanted, best + step));
      }
    }
  }

  private static double miss(
      List<Double> window, List<Double> ppfd, double[] wanted, double hours) {
    double sum = 0;
    for (int i = 0; i < window.size(); i++) {
      double miss = window.get(i) + ppfd.get(i) * hours * 0.0036 - wanted[i];
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
    List<LampWeek> weeks =
        LampWeek.of(household, light, everywhere(LightTarget.LEAFY, light), household.tariff());
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
    List<LampWeek> cheap =
        LampWeek.of(household, light, everywhere(LightTarget.LEAFY, light), Optional.of(tariff));
    List<LampWeek> plain =
        LampWeek.of(household, light, everywhere(LightTarget.LEAFY, light), Optional.empty());
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

  private static LightTarget everywhere(LightTarget target, HourlyLight light) {
    return target.placed(
        Collections.nCopies(light.places(), 1.0), light.from(), light.from().plusDays(400));
  }

  private static LightNeed crop(String name, boolean heads, double target) {
    return new LightNeed(name, heads, 10, 6, target, heads, !heads);
  }

  /** By hand: five pots by light are 4, 0, 2, 3, 1; of three crops the modest get two each. */
  @Test
  void theBrightestPotsGoToTheMostDemandingCrops() {
    LightNeed heads = crop("heads", true, 14);
    LightNeed leaves = crop("leaves", false, 12);
    LightNeed strong = crop("strong", false, 16);
    LocalDate day = LocalDate.of(2027, 1, 1);
    LightTarget target =
        LightTarget.wanted(List.of(heads, strong, leaves), 16)
            .placed(List.of(5.0, 9.0, 6.0, 8.0, 3.0), day, day.plusDays(9));
    assertThat(IntStream.range(0, 5).mapToObj(i -> target.need(i, day).orElseThrow().crop()))
        .containsExactly("leaves", "strong", "heads", "heads", "leaves");
    assertThat(target.meanMol(day)).hasValue((12 + 12 + 14 + 14 + 16) / 5.0);
    assertThat(target.need(0, day.plusDays(10))).isEmpty();
  }

  /** A plan's places are its own; a pot between two crops is empty. */
  @Test
  void aPlanSaysWhatStandsWhere() {
    LightNeed heads = crop("heads", true, 14);
    LocalDate day = LocalDate.of(2027, 1, 1);
    LightTarget planned =
        new LightTarget(
            LightTarget.Origin.PLAN,
            List.of(heads),
            List.of(
                new LightTarget.Standing(1, day, day.plusDays(4), heads),
                new LightTarget.Standing(1, day.plusDays(8), day.plusDays(20), heads)),
            16);
    LightTarget placed = planned.placed(List.of(1.0, 2.0), day, day.plusDays(30));
    assertThat(placed).isEqualTo(planned);
    assertThat(placed.need(1, day.plusDays(4))).contains(heads);
    assertThat(placed.need(1, day.plusDays(6))).isEmpty();
    assertThat(placed.need(0, day)).isEmpty();
    assertThat(placed.needs(1, day.plusDays(5), day.plusDays(8))).containsExactly(heads);
    assertThat(placed.meanMol(day.plusDays(6))).isEmpty();
  }

  @Test
  void placesFollowWhatTheCropsWant() {
    List<LightNeed> wanted = List.of(crop("heads", true, 14), crop("leaves", false, 12));
    assertThat(PlaceUse.of(14, wanted)).isEqualTo(PlaceUse.HEADS);
    assertThat(PlaceUse.of(13, wanted)).isEqualTo(PlaceUse.LEAVES);
    assertThat(PlaceUse.of(10, wanted)).isEqualTo(PlaceUse.SEEDLINGS);
    assertThat(PlaceUse.of(7, wanted)).isEqualTo(PlaceUse.SLOW);
    assertThat(PlaceUse.of(3, wanted)).isEqualTo(PlaceUse.TOO_DARK);
    assertThat(PlaceUse.of(20, wanted.subList(1, 2))).as("no heads").isEqualTo(PlaceUse.LEAVES);
  }

  /** 8 to 14 mol for seedlings, below 6 stretching, 14 and 17 tip burn: crop_light_needs.csv. */
  @Test
  void warningsFollowTheTable() {
    List<LightNeed> heads = List.of(crop("heads", true, 14));
    List<LightNeed> both = List.of(crop("heads", true, 14), crop("leaves", false, 12));
    assertThat(LightWarning.of(12.5, 200, 14, both)).isEmpty();
    assertThat(LightWarning.of(5, 0, 12, both))
        .singleElement()
        .satisfies(w -> assertThat(w.grade()).isEqualTo(LightWarning.Grade.STRONG));
    assertThat(LightWarning.of(7, 0, 12, both))
        .singleElement()
        .satisfies(w -> assertThat(w.grade()).isEqualTo(LightWarning.Grade.MILD));
    assertThat(LightWarning.of(18, 1100, 16, both))
        .extracting(LightWarning::kind)
        .containsExactly(
            LightWarning.Kind.TIP_BURN, LightWarning.Kind.BLEACHING, LightWarning.Kind.BOLTING);
    assertThat(LightWarning.of(15, 200, 16, heads))
        .singleElement()
        .satisfies(
            w -> {
              assertThat(w.kind()).isEqualTo(LightWarning.Kind.TIP_BURN);
              assertThat(w.grade()).isEqualTo(LightWarning.Grade.MILD);
              assertThat(w.text()).startsWith("Heads may burn");
            });
    assertThat(LightWarning.of(3, 1100, 16, List.of())).as("an empty pot").isEmpty();
  }
}
