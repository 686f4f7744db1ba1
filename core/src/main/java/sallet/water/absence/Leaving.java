package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import sallet.household.Household;
import sallet.water.WaterFault;
import sallet.water.caution.WaterCaution;
import sallet.water.home.HomeBench;
import sallet.water.home.HomeWater;
import sallet.water.home.Learned;
import sallet.water.transpiration.StandingPlant;

/** Can this bench be left alone, and what makes it so? */
public final class Leaving {
  /** Longest absence looked at. */
  public static final int LONGEST_DAYS = 60;

  private final LocalDate from;
  private final int days;
  private final Learned learned;
  private final Watcher watcher;
  private final Scene start;
  private final HomeBench bench;
  private final Departure departure;

  private Leaving(
      Household household,
      List<StandingPlant> plants,
      LocalDate day,
      LocalDate from,
      LocalDate to) {
    this.from = from;
    this.days = (int) (to.toEpochDay() - from.toEpochDay()) + 1;
    this.bench = HomeBench.of(household);
    this.learned = HomeWater.learned(bench, plants, day);
    this.watcher = new Watcher(from, days, learned);
    this.departure = Departure.of(bench, plants, day, from, learned);
    this.start =
        new Scene(household, plants, departure.levelL(), departure.msCm(), departure.usedL());
  }

  /**
   * The sheet of an absence.
   *
   * @param day today; the reservoir is reckoned from what stands in it then
   * @param plants what stands on the bench from today on
   * @throws WaterFault when the dates or the bench are wrong
   */
  public static AwaySheet sheet(
      Household household,
      List<StandingPlant> plants,
      LocalDate day,
      LocalDate from,
      LocalDate to) {
    List<WaterFault.Line> faults = dates(day, from, to);
    if (!faults.isEmpty()) {
      throw new WaterFault(faults);
    }
    return new Leaving(household, plants, day, from, to).sheet();
  }

  /** What is wrong with the dates of an absence. */
  public static List<WaterFault.Line> dates(LocalDate day, LocalDate from, LocalDate to) {
    List<WaterFault.Line> faults = new ArrayList<>();
    if (to.isBefore(from)) {
      faults.add(
          new WaterFault.Line(
              "--to", "the absence ends on " + to + ", before it starts on " + from));
    } else if (to.isAfter(from.plusDays(LONGEST_DAYS - 1))) {
      faults.add(
          new WaterFault.Line(
              "--to",
              "an absence of more than %d days is not reckoned; empty the bench and the reservoir before so long a time"
                  .formatted(LONGEST_DAYS)));
    }
    if (from.isBefore(day)) {
      faults.add(
          new WaterFault.Line(
              "--from",
              "the absence starts on "
                  + from
                  + ", before today, "
                  + day
                  + "; --today sets another day"));
    }
    return faults;
  }

  private AwaySheet sheet() {
    double highest = bench.household().watering().tank().highestMsCm();
    Outlook asItStands = watcher.look(start);
    Supplies supplies = new Supplies(watcher, learned, from, bench.household());
    Preparing preparing = new Preparing(start, from, watcher, supplies);
    Outlook full = preparing.full();
    List<Lever> levers = levers(preparing);
    List<Lever> clearings =
        full.safe(highest)
            ? List.of()
            : new Clearing(start, from, watcher.potsMl(start)).choices(preparing::lastsAlone);
    boolean safe = asItStands.safe(highest);
    Preparation best = safe ? preparing.nothing(asItStands) : preparing.best(levers, clearings);
    List<AwaySheet.Visit> visits = visits(best.visits());
    return new AwaySheet(
        from,
        from.plusDays(days - 1L),
        safe
            ? AwaySheet.Verdict.SAFE
            : best.safe() ? AwaySheet.Verdict.SAFE_WHEN_PREPARED : AwaySheet.Verdict.NOT_SAFE,
        departure,
        asItStands,
        best.outlook(),
        best.steps(),
        best.scene().levelL(),
        best.scene().msCm(),
        visits,
        preparing.helping(levers, clearings, asItStands),
        breaks(best),
        HelperNote.of(bench, best, visits, from, days),
        learned,
        cautions(best));
  }

  private List<Lever> levers(Preparing preparing) {
    Outlook full = preparing.full();
    double gPerHour = 1000 * full.demand().medianL() / (24.0 * days);
    List<Lever> levers = new ArrayList<>(Levers.of(start, from, full.atRisk(), gPerHour));
    new Moving(start, bench, watcher.light(start))
        .lever(full.atRisk())
        .filter(preparing::helps)
        .ifPresent(levers::add);
    return levers;
  }

  private List<AwaySheet.Visit> visits(Visits visits) {
    return IntStream.range(0, visits.mornings().size())
        .mapToObj(
            i ->
                new AwaySheet.Visit(
                    from.plusDays(visits.mornings().get(i)), visits.litres().get(i)))
        .toList();
  }

  private List<String> breaks(Preparation best) {
    List<String> breaks = new ArrayList<>();
    double fragile = best.outlook().mostFragileHours();
    if (Double.isFinite(fragile)) {
      breaks.add(
          String.format(
              Locale.ROOT,
              "a pump, timer or power that fails for more than %.0f hours: then the first pot wilts",
              Math.floor(fragile)));
    }
    Scene drier = best.scene().with(Helps.drier(best.scene().household()));
    Outlook dry = watcher.look(drier);
    double lasts = dry.demand().lasts(dry.usableL() + best.connectedL());
    if (best.visits().mornings().isEmpty() && lasts < Outlook.SAFE) {
      breaks.add(
          String.format(
              Locale.ROOT,
              "air 10 points drier than told: the water then lasts with %.0f %%",
              100 * lasts));
    }
    breaks.add("a leak, or an overflow that does not find back into the reservoir");
    return breaks;
  }

  private static List<WaterCaution> cautions(Preparation best) {
    List<WaterCaution> cautions =
        new ArrayList<>(List.of(WaterCaution.MAINS, WaterCaution.TIMER, WaterCaution.OVERFLOW));
    for (Step step : best.steps()) {
      if (step.kind() == Step.Kind.TANK) {
        cautions.add(WaterCaution.REFILL);
      } else if (step.kind() == Step.Kind.COOL || step.kind() == Step.Kind.DOOR) {
        cautions.add(WaterCaution.HEATING);
      }
    }
    cautions.addAll(List.of(WaterCaution.MASS, WaterCaution.WARM_WATER, WaterCaution.FOOD));
    return cautions.stream().distinct().toList();
  }
}
