package sallet.app.use;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sallet.crop.Catalogue;
import sallet.household.Absence;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.plan.SowingPlan;
import sallet.plan.linear.LinearSolver;
import sallet.water.WaterFault;
import sallet.water.absence.AwaySheet;
import sallet.water.absence.Leaving;
import sallet.water.home.HomeBench;
import sallet.water.home.HomeWater;
import sallet.water.home.WaterSheet;
import sallet.water.transpiration.StandingPlant;

/** How often should the pump run, how long does the water last, and can I go away? */
public final class TellWater {
  /** Weeks a sowing plan needs until the bench is as full as it gets. */
  public static final int RUN_UP_WEEKS = 12;

  private static final int MOST_WEEKS = 52;

  private final Household household;
  private final Catalogue catalogue;
  private final Wish wish;

  private TellWater(Household household, Catalogue catalogue, Wish wish) {
    this.household = household;
    this.catalogue = catalogue;
    this.wish = wish;
  }

  /**
   * What to tell.
   *
   * @param today first day told
   * @param since first day of the sowing plan whose plants stand on the bench
   * @param seconds time to think about that plan
   * @param dives searches to make without a clock; 0 to go by the clock
   */
  public record Wish(LocalDate today, LocalDate since, double seconds, int dives) {}

  /**
   * The sheet of the coming weeks.
   *
   * @throws sallet.water.WaterFault when pump, pots, flood and reservoir do not go together
   * @throws sallet.plan.NoPlan when nothing can stand on the bench
   */
  public static WaterSheet water(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    Household home = known(household, wish, progress);
    HomeBench.of(home);
    TellWater tell = new TellWater(home, catalogue, wish);
    LocalDate until = wish.today().plusDays(HomeWater.DAYS + 1L);
    return HomeWater.sheet(home, wish.today(), tell.plants(until, progress, cancelled));
  }

  /**
   * The sheet of an absence.
   *
   * @throws sallet.water.WaterFault when the dates are wrong, or pump, pots, flood and reservoir do
   *     not go together
   * @throws sallet.plan.NoPlan when nothing can stand on the bench
   */
  public static AwaySheet away(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Absence absence,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    List<WaterFault.Line> faults = Leaving.dates(wish.today(), absence.from(), absence.to());
    if (!faults.isEmpty()) {
      throw new WaterFault(faults);
    }
    HomeBench.of(household);
    List<Absence> absences = new ArrayList<>(household.absences());
    absences.add(absence);
    Household away = known(household, wish, progress).withAbsences(absences);
    TellWater tell = new TellWater(away, catalogue, wish);
    LocalDate until = absence.to().plusDays(2);
    return Leaving.sheet(
        away, tell.plants(until, progress, cancelled), wish.today(), absence.from(), absence.to());
  }

  /** Readings teach only about days on which it is known what stood on the bench. */
  private static Household known(Household household, Wish wish, Consumer<String> progress) {
    List<Watering.Level> all = household.watering().levels();
    List<Watering.Level> within =
        all.stream()
            .filter(l -> !l.date().isBefore(wish.since()) && !l.date().isAfter(wish.today()))
            .toList();
    if (within.size() < all.size()) {
      progress.accept(
          "Left out %d readings of the reservoir before %s or after %s"
              .formatted(all.size() - within.size(), wish.since(), wish.today()));
    }
    return household.withWatering(household.watering().withLevels(within));
  }

  /** What stands on the bench when the household has followed its plan. */
  private List<StandingPlant> plants(
      LocalDate until, Consumer<String> progress, BooleanSupplier cancelled) {
    int weeks =
        (int) Math.min(MOST_WEEKS, (until.toEpochDay() - wish.since().toEpochDay()) / 7 + 2);
    SowingPlan plan =
        MakePlan.of(
                household,
                catalogue,
                new MakePlan.Wish(
                    wish.since(),
                    weeks,
                    Optional.empty(),
                    wish.seconds(),
                    wish.dives(),
                    LinearSolver.NATIVE,
                    false),
                Optional.empty(),
                Optional.empty(),
                progress,
                cancelled)
            .plan();
    return BenchPlants.of(plan, household, catalogue, until);
  }
}
