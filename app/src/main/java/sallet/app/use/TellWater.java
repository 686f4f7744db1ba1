package sallet.app.use;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sallet.app.report.water.AwayReport;
import sallet.app.report.water.Explained;
import sallet.app.report.water.WaterReport;
import sallet.crop.Catalogue;
import sallet.household.Absence;
import sallet.household.Household;
import sallet.household.Watering;
import sallet.journal.Journal;
import sallet.learn.Standing;
import sallet.learn.WaterRows;
import sallet.plan.LastPlan;
import sallet.plan.SowingPlan;
import sallet.plan.linear.LinearSolver;
import sallet.water.WaterFault;
import sallet.water.absence.AwayExplanation;
import sallet.water.absence.AwaySheet;
import sallet.water.absence.Leaving;
import sallet.water.home.HomeBench;
import sallet.water.home.HomeWater;
import sallet.water.transpiration.StandingPlant;

/** How often should the pump run, how long does the water last, and can I go away? */
public final class TellWater {
  /** Weeks a sowing plan needs until the bench is as full as it gets. */
  public static final int RUN_UP_WEEKS = 12;

  private static final int MOST_WEEKS = 52;

  /** Weeks planned beyond the last day told: what stands then is for bowls still to come. */
  private static final int WEEKS_BEYOND = 6;

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
   * @param since first day of the sowing plan whose plants stand on the bench; with a journal the
   *     first day it knows what stood
   * @param stock what the household's journal comes to today; without one the plan tells
   * @param last the last plan, of which little is changed
   * @param seconds time to think about the plan
   * @param dives searches to make without a clock; 0 to go by the clock
   */
  public record Wish(
      LocalDate today,
      LocalDate since,
      Optional<MakePlan.Stock> stock,
      Optional<LastPlan> last,
      double seconds,
      int dives) {
    /** The same with what a journal comes to today. */
    public Wish with(MakePlan.Stock known) {
      LocalDate first = Standing.firstDay(known.journal(), today);
      return new Wish(today, first, Optional.of(known), last, seconds, dives);
    }

    /** First day of the plan the bench follows. */
    private LocalDate planFrom() {
      return stock.isPresent() ? today : since;
    }
  }

  /**
   * The sheet of the coming weeks.
   *
   * @param explain path of a number to explain
   * @throws sallet.water.WaterFault when pump, pots, flood and reservoir do not go together
   * @throws sallet.plan.NoPlan when nothing can stand on the bench
   */
  public static WaterReport water(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Optional<String> explain,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    Household home = known(household, wish);
    HomeBench.of(home);
    TellWater tell = new TellWater(home, catalogue, wish);
    LocalDate until = wish.today().plusDays(HomeWater.DAYS + 1L);
    List<StandingPlant> plants = tell.plants(until, progress, cancelled);
    progress.accept("Water of every pot and hour");
    HomeWater water = HomeWater.of(home, wish.today(), plants);
    return new WaterReport(
        water.sheet(),
        Basis.of(household, home, wish),
        explain.map(path -> new Explained(path, water.explain(path))));
  }

  /**
   * The sheet of an absence.
   *
   * @param explain path of a number to explain
   * @throws sallet.water.WaterFault when the dates are wrong, or pump, pots, flood and reservoir do
   *     not go together
   * @throws sallet.plan.NoPlan when nothing can stand on the bench
   */
  public static AwayReport away(
      Household household,
      Catalogue catalogue,
      Wish wish,
      Absence absence,
      Optional<String> explain,
      Consumer<String> progress,
      BooleanSupplier cancelled) {
    List<WaterFault.Line> faults =
        new ArrayList<>(Leaving.dates(wish.today(), absence.from(), absence.to()));
    LocalDate known = wish.planFrom().plusWeeks(MOST_WEEKS - WEEKS_BEYOND);
    if (faults.isEmpty() && absence.to().isAfter(known)) {
      faults.add(
          new WaterFault.Line(
              "--to",
              "the absence ends on %s, and what will stand on the bench can be told until %s; ask again nearer the time"
                  .formatted(absence.to(), known)));
    }
    if (!faults.isEmpty()) {
      throw new WaterFault(faults);
    }
    HomeBench.of(household);
    List<Absence> absences = new ArrayList<>(household.absences());
    absences.add(absence);
    Household away = known(household, wish).withAbsences(absences);
    TellWater tell = new TellWater(away, catalogue, wish);
    LocalDate until = absence.to().plusDays(2);
    List<StandingPlant> plants = tell.plants(until, progress, cancelled);
    progress.accept("Trying out what saves water");
    AwaySheet sheet = Leaving.sheet(away, plants, wish.today(), absence.from(), absence.to());
    return new AwayReport(
        sheet,
        Basis.of(household, away, wish),
        explain.map(path -> new Explained(path, AwayExplanation.of(away, sheet, path))));
  }

  /**
   * The household with its journal's readings; they teach only about days on which it is known what
   * stood on the bench.
   */
  private static Household known(Household household, Wish wish) {
    Watering told = told(household, wish);
    return household.withWatering(
        told.withLevels(
            told.readings().levels().stream().filter(l -> knownOn(l.date(), wish)).toList()));
  }

  /** Pump, tank and readings as file and journal have them. */
  static Watering told(Household household, Wish wish) {
    return wish.stock()
        .map(stock -> WaterRows.of(household, stock.journal(), wish.today()).watering())
        .orElse(household.watering());
  }

  private static boolean knownOn(LocalDate day, Wish wish) {
    return !day.isBefore(wish.since()) && !day.isAfter(wish.today());
  }

  /** What stands on the bench, and will when the household follows its plan. */
  private List<StandingPlant> plants(
      LocalDate until, Consumer<String> progress, BooleanSupplier cancelled) {
    LocalDate from = wish.planFrom();
    int weeks =
        (int) Math.min(MOST_WEEKS, (until.toEpochDay() - from.toEpochDay()) / 7 + WEEKS_BEYOND);
    SowingPlan plan =
        MakePlan.sowings(
            household,
            catalogue,
            new MakePlan.Wish(
                from,
                weeks,
                Optional.empty(),
                wish.seconds(),
                wish.dives(),
                LinearSolver.NATIVE,
                false),
            wish.stock(),
            wish.last(),
            progress,
            cancelled);
    Standing standing =
        wish.stock()
            .map(MakePlan.Stock::standing)
            .orElseGet(() -> Standing.of(Journal.EMPTY, catalogue, household, from));
    return BenchPlants.of(plan, household, catalogue, standing, until);
  }
}
