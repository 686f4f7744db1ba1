package sallet.water.home;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import sallet.household.Household;
import sallet.water.flood.FloodSchedule;
import sallet.water.flood.FloodTimes;
import sallet.water.flood.PotDay;
import sallet.water.learn.UseFactor;
import sallet.water.medium.PotWater;
import sallet.water.transpiration.HourlyUse;

/**
 * When to flood a household's bench over some days: every hour as thirsty as on the thirstiest of
 * them.
 *
 * @param bench the bench
 * @param use use at factor 1; open water does not matter
 * @param factor the factor to be safe for
 * @param fromDay first of these days, counted from the first of {@code use}
 * @param days number of days
 */
public record BenchFloods(HomeBench bench, HourlyUse use, double factor, int fromDay, int days) {
  /** A schedule is safe for a factor that is not passed nine times in ten. */
  public static final double SAFE = 0.9;

  /** Over the first days of some. */
  public static BenchFloods of(HomeBench bench, BenchDays all, UseFactor factor, int days) {
    return new BenchFloods(bench, all.use(bench.around(0)), factor.quantile(SAFE), 0, days);
  }

  /** Use at factor 1, open water with it, when the bench is flooded by a schedule. */
  public HourlyUse useBy(FloodSchedule schedule) {
    return use.withOpenM2(bench.around(schedule.floodsPerDay()).openM2());
  }

  /** The schedule. */
  public FloodSchedule schedule() {
    return without(List.of());
  }

  /** The same as if some pots were not there. Empty pots count only where nothing is planted. */
  FloodSchedule without(List<String> some) {
    boolean bare = IntStream.range(0, bench.size()).noneMatch(this::planted);
    List<PotDay> each =
        IntStream.range(0, bench.size())
            .filter(pot -> bare || planted(pot))
            .filter(pot -> !some.contains(bench.name(pot)))
            .mapToObj(pot -> potDay(pot, bench.water(pot).allowedMl(), mostMl(pot)))
            .toList();
    LocalDate middle = use.from().plusDays(fromDay + days / 2);
    return FloodTimes.of(each, light(bench.household(), middle), bench.timer(), bench.length());
  }

  /** Whether leaves stand in a pot on any of the days. */
  private boolean planted(int pot) {
    return IntStream.range(fromDay, fromDay + days).anyMatch(day -> use.leavesDayMl(pot, day) > 0);
  }

  /** A pot on the thirstiest of the days, with all the water it can lose before it wilts. */
  public PotDay untilWilting(int pot) {
    double lasting = bench.water(pot).lastingMl();
    return potDay(pot, lasting, lasting);
  }

  /** The same with the water that may go between floods. */
  PotDay untilDue(int pot) {
    double allowed = bench.water(pot).allowedMl();
    return potDay(pot, allowed, allowed);
  }

  private double mostMl(int pot) {
    PotWater water = bench.water(pot);
    return Math.max(water.allowedMl(), water.withDepletion(PotWater.MOST_DEPLETION).allowedMl());
  }

  private PotDay potDay(int pot, double allowedMl, double mostMl) {
    return new PotDay(
        bench.name(pot),
        allowedMl,
        mostMl,
        IntStream.range(0, 24)
            .mapToObj(
                h ->
                    factor
                        * IntStream.range(fromDay, fromDay + days)
                            .mapToDouble(day -> use.potMl(pot, 24 * day + h))
                            .max()
                            .orElse(0))
            .toList());
  }

  /** When it is light on the bench: by its lamps, else from sunrise to sunset. */
  static FloodTimes.Light light(Household household, LocalDate day) {
    return BenchDaylight.byLamps(household.lamps())
        .orElseGet(() -> BenchDaylight.bySun(household.place(), day));
  }
}
