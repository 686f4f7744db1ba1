package sallet.water.absence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sallet.household.Bench;
import sallet.household.Household;
import sallet.household.Reservoir;
import sallet.household.Watering;
import sallet.water.home.Households;
import sallet.water.transpiration.StandingPlant;

/**
 * What must hold for the verdict of any absence: it never gets better with days, nor worse with
 * litres. Random benches, from large pots of coir to small ones of clay that no timer can serve,
 * with timers of all kinds. The seed is the name of the case.
 */
class VerdictLawsTest {
  private static final int MOST_DAYS = 24;
  private static final List<String> MEDIA =
      List.of("coir", "stone wool", "peat and perlite", "perlite", "expanded clay");

  static LongStream seeds() {
    return LongStream.range(0, 10);
  }

  /**
   * A random household.
   *
   * @param before days until it leaves
   */
  private record Home(Household household, List<StandingPlant> plants, int before) {
    static Home of(long seed) {
      SplittableRandom dice = new SplittableRandom(seed);
      Household usual = Households.of(dice.nextDouble(30, 120), dice.nextDouble(22, 70));
      Bench b = usual.bench();
      Bench bench =
          new Bench(
              b.xM(),
              b.yM(),
              b.widthM(),
              b.depthM(),
              b.heightM(),
              b.pots(),
              b.potHeightM() * dice.nextDouble(0.6, 1),
              b.potVolumeL() * dice.nextDouble(0.1, 1),
              MEDIA.get(dice.nextInt(MEDIA.size())));
      Watering w = usual.watering();
      Watering watering =
          new Watering(
              w.pump(),
              timer(dice, w.timer().soakMinutes()),
              w.floodDepthM(),
              w.tank(),
              w.otherPots(),
              new Watering.Airing(dice.nextInt(3) == 0, w.airing().changesPerHour()),
              w.readings());
      Household household = usual.withBench(bench).withWatering(watering);
      List<LocalDate> up =
          Stream.generate(() -> Households.DAY.minusDays(dice.nextInt(15, 50)))
              .limit(dice.nextInt(1, 13))
              .toList();
      return new Home(household, Households.lettuce(household, up), dice.nextInt(0, 8));
    }

    private static Watering.TimerSetting timer(SplittableRandom dice, double soakMinutes) {
      return switch (dice.nextInt(3)) {
        case 0 -> new Watering.TimerSetting("minutes", 1, dice.nextInt(2, 10), soakMinutes);
        case 1 -> new Watering.TimerSetting("interval", 5, 8, soakMinutes);
        default ->
            new Watering.TimerSetting("segments", dice.nextBoolean() ? 15 : 30, 8, soakMinutes);
      };
    }

    Home withTank(double litres) {
      return new Home(household.withReservoir(new Reservoir(litres)), plants, before);
    }

    AwaySheet away(int days) {
      LocalDate from = Households.DAY.plusDays(before);
      return Leaving.sheet(household, plants, Households.DAY, from, from.plusDays(days - 1L));
    }
  }

  /** From worst to best: each sheet must be at least as good as the one before it. */
  private static void neverWorse(List<AwaySheet> sheets) {
    for (int i = 1; i < sheets.size(); i++) {
      AwaySheet worse = sheets.get(i - 1);
      AwaySheet better = sheets.get(i);
      String of = "%d days, then %d".formatted(worse.days(), better.days());
      assertThat(better.verdict()).as(of).isLessThanOrEqualTo(worse.verdict());
      assertThat(better.asItStands().lasts())
          .as(of)
          .isGreaterThanOrEqualTo(worse.asItStands().lasts());
      if (worse.asItStands().atRisk().isEmpty()) {
        assertThat(better.asItStands().atRisk()).as(of).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreDaysNeverMakeItSafer(long seed) {
    Home home = Home.of(seed);
    List<AwaySheet> sheets =
        new ArrayList<>(
            IntStream.rangeClosed(1, MOST_DAYS).parallel().mapToObj(home::away).toList());
    Collections.reverse(sheets);
    neverWorse(sheets);
    assertThat(sheets.get(MOST_DAYS - 1).asItStands().lasts())
        .isGreaterThan(sheets.get(0).asItStands().lasts());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void moreLitresNeverMakeItLessSafe(long seed) {
    Home home = Home.of(seed);
    neverWorse(
        IntStream.range(0, 9)
            .parallel()
            .mapToObj(i -> home.withTank(36 + 12.0 * i).away(9))
            .toList());
  }
}
