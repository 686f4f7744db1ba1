package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import sallet.household.Household;
import sallet.water.WaterFault;
import sallet.water.caution.WaterCaution;
import sallet.water.home.HomeBench;
import sallet.water.home.HomeWater;
import sallet.water.home.Learned;
import sallet.water.home.TankNow;
import sallet.water.reservoir.TankForecast;
import sallet.water.transpiration.StandingPlant;

/** Can this bench be left alone, and what makes it so? */
public final class Leaving {
  /** Longest absence looked at. */
  public static final int LONGEST_DAYS = 60;

  /** Solution is not thinned further than this for an absence, mS/cm. Judgement. */
  private static final double THINNEST_MS_CM = 0.4;

  /** A step that saves less is not worth telling. */
  private static final double LEAST_CHANGE = -0.01;

  private static final int VISIT_TROUBLE = 6;

  /** Less is not worth a step, L. */
  private static final double LEAST_POUR_L = 0.5;

  private final LocalDate from;
  private final int days;
  private final Learned learned;
  private final Watcher watcher;
  private final Scene start;
  private final HomeBench bench;

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
    TankNow now = TankNow.of(bench, plants, day, learned);
    boolean soon = !from.isAfter(day.plusDays(1));
    this.start =
        soon
            ? new Scene(household, plants, now.litres(), now.msCm())
            : new Scene(
                household, plants, bench.tank().fullL(), household.watering().tank().ecMsCm());
  }

  /**
   * The sheet of an absence.
   *
   * @param day today; the level of the reservoir counts when the absence begins by tomorrow, else
   *     it is taken to be kept full until then
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
          new WaterFault.Line("--from", "the absence starts on " + from + ", before " + day));
    }
    return faults;
  }

  private AwaySheet sheet() {
    Outlook asItStands = watcher.look(start);
    Scene filled = filled(start);
    Outlook full = watcher.look(filled);
    List<Lever> levers =
        new ArrayList<>(
            Levers.of(start, from, full.atRisk(), 1000 * full.demand().medianL() / (24.0 * days)));
    new Moving(start, bench, watcher.light(start))
        .lever(full.atRisk())
        .filter(move -> helps(move, full))
        .ifPresent(levers::add);
    List<Lever> clearings =
        full.safe(highestMsCm())
            ? List.of()
            : new Clearing(start, from, watcher.potsMl(start)).choices(this::lastsAlone);
    Preparation best =
        asItStands.safe(highestMsCm())
            ? new Preparation(List.of(), start, asItStands, Visits.NONE, 0, 0, true)
            : best(levers, clearings, full);
    List<Step> steps = helping(levers, clearings, asItStands, full);
    List<AwaySheet.Visit> visits =
        IntStream.range(0, best.visits().mornings().size())
            .mapToObj(
                i ->
                    new AwaySheet.Visit(
                        from.plusDays(best.visits().mornings().get(i)),
                        best.visits().litres().get(i)))
            .toList();
    return new AwaySheet(
        from,
        from.plusDays(days - 1L),
        verdict(asItStands, best),
        asItStands,
        best.outlook(),
        best.steps(),
        best.scene().levelL(),
        best.scene().msCm(),
        visits,
        steps,
        breaks(best),
        HelperNote.of(bench, best, visits, from, days),
        learned,
        cautions(best));
  }

  /** Whether a move leaves fewer pots at risk. */
  private boolean helps(Lever move, Outlook full) {
    return watcher.look(filled(move.change().apply(start))).atRisk().size() < full.atRisk().size();
  }

  /** Whether the water lasts and every pot outlives a missed flood once the reservoir is full. */
  private boolean lastsAlone(Scene scene) {
    Outlook outlook = watcher.look(filled(scene));
    return outlook.waterSafe() && outlook.atRisk().isEmpty();
  }

  /** Everything that would help, each alone, most water first. */
  private List<Step> helping(
      List<Lever> levers, List<Lever> clearings, Outlook asItStands, Outlook full) {
    List<Step> steps = new ArrayList<>();
    double pour = bench.tank().fullL() - start.levelL();
    if (pour >= LEAST_POUR_L) {
      steps.add(Helps.fill(pour, false).alone(full.lasts(), pour));
    }
    for (Lever lever : levers) {
      Step step = told(lever, full);
      if (step.useChange() <= LEAST_CHANGE
          || lever.kind() == Step.Kind.LIFT
          || lever.kind() == Step.Kind.MOVE) {
        steps.add(step);
      }
    }
    clearings.stream()
        .skip(Math.max(0, clearings.size() - 1))
        .forEach(c -> steps.add(told(c, full)));
    if (!asItStands.waterSafe() && !full.waterSafe()) {
      Visits visits = visits(full, filled(start));
      if (visits.safe()) {
        steps.add(Helps.neighbour(visits, from));
      }
      steps.add(Helps.tank(Math.ceil(full.missingL())));
    }
    steps.sort(Comparator.comparingDouble(step -> -step.gainL()));
    return steps;
  }

  private AwaySheet.Verdict verdict(Outlook asItStands, Preparation best) {
    if (asItStands.safe(highestMsCm())) {
      return AwaySheet.Verdict.SAFE;
    }
    return best.safe() ? AwaySheet.Verdict.SAFE_WHEN_PREPARED : AwaySheet.Verdict.NOT_SAFE;
  }

  private double highestMsCm() {
    return bench.household().watering().tank().highestMsCm();
  }

  private Step told(Lever lever, Outlook full) {
    return lever.told(full, watcher.look(filled(lever.change().apply(start))));
  }

  private Scene filled(Scene scene) {
    return scene.filled(HomeBench.of(scene.household()).tank().fullL(), scene.msCm());
  }

  /** The set of steps with the least trouble that is safe; else the one that lasts best. */
  private Preparation best(List<Lever> levers, List<Lever> clearings, Outlook full) {
    List<List<Lever>> sets =
        IntStream.range(0, 1 << levers.size())
            .mapToObj(mask -> chosen(levers, mask))
            .flatMap(set -> withOneOf(set, clearings).stream())
            .sorted(Comparator.comparingInt(Leaving::trouble))
            .toList();
    Preparation best = prepared(List.of(), full);
    for (List<Lever> set : sets) {
      if (best.safe() && trouble(set) >= best.trouble()) {
        break;
      }
      Preparation next = prepared(set, full);
      boolean better =
          next.safe() == best.safe()
              ? next.safe()
                  ? next.trouble() < best.trouble()
                  : next.outlook().lasts() > best.outlook().lasts() + 0.005
              : next.safe();
      best = better ? next : best;
    }
    return best;
  }

  private static List<Lever> chosen(List<Lever> levers, int mask) {
    return IntStream.range(0, levers.size())
        .filter(i -> (mask & (1 << i)) != 0)
        .mapToObj(levers::get)
        .toList();
  }

  private static List<List<Lever>> withOneOf(List<Lever> set, List<Lever> clearings) {
    List<List<Lever>> sets = new ArrayList<>(List.of(set));
    for (Lever one : clearings) {
      List<Lever> more = new ArrayList<>(set);
      more.add(one);
      sets.add(more);
    }
    return sets;
  }

  private static int trouble(List<Lever> levers) {
    return levers.stream().mapToInt(Lever::trouble).sum();
  }

  private Preparation prepared(List<Lever> levers, Outlook full) {
    Scene scene = start;
    for (Lever lever : levers) {
      scene = lever.change().apply(scene);
    }
    Scene brim = filled(scene);
    Outlook alone = watcher.look(brim);
    Supply supply = supply(alone, brim);
    Scene thinned = brim.filled(brim.levelL(), leaveMsCm(alone, brim, supply));
    Outlook outlook = supplied(watcher.look(thinned), thinned, supply);
    List<Step> steps = new ArrayList<>(filling(thinned, full));
    levers.forEach(lever -> steps.add(told(lever, full)));
    steps.addAll(supply.steps());
    steps.sort(Comparator.comparingDouble(step -> -step.gainL()));
    return new Preparation(
        steps,
        thinned,
        outlook,
        supply.visits(),
        supply.connectedL(),
        steps.stream().mapToInt(Step::trouble).sum(),
        outlook.safe(highestMsCm()));
  }

  /** Water that is brought because the reservoir alone is not enough. */
  private record Supply(Visits visits, double connectedL, List<Step> steps) {
    static final Supply NONE = new Supply(Visits.NONE, 0, List.of());

    double pouredL() {
      return visits.pouredL();
    }
  }

  private Supply supply(Outlook alone, Scene brim) {
    if (alone.waterSafe()) {
      return Supply.NONE;
    }
    Visits visits = visits(alone, brim);
    if (visits.safe()
        && VISIT_TROUBLE * visits.mornings().size() <= Helps.tankTrouble(alone.missingL())) {
      return new Supply(visits, 0, List.of(Helps.neighbour(visits, from)));
    }
    double litres = Math.ceil(alone.missingL());
    return new Supply(Visits.NONE, litres, List.of(Helps.tank(litres)));
  }

  /** Visitors fill it to the brim, so more is poured in when more was used. */
  private SaltBooks books(Scene scene, Supply supply, double usedL, double medianL) {
    double poured = medianL == 0 ? 0 : supply.pouredL() * usedL / medianL;
    return new SaltBooks(
        scene.levelL(), poured, supply.connectedL(), usedL, learned.uptake().msCm());
  }

  /** As strong as it is, or so thin that the salt stays below its limit on return. */
  private double leaveMsCm(Outlook alone, Scene brim, Supply supply) {
    double used = alone.demand().litresFor(Outlook.SAFE);
    double highest =
        books(brim, supply, used, alone.demand().medianL()).highestLeaveMsCm(highestMsCm());
    return Double.isNaN(highest)
        ? brim.msCm()
        : Math.min(brim.msCm(), Math.max(THINNEST_MS_CM, highest));
  }

  private Outlook supplied(Outlook outlook, Scene scene, Supply supply) {
    double median = outlook.demand().medianL();
    double high = outlook.demand().litresFor(Outlook.SAFE);
    double more = supply.connectedL() + supply.pouredL();
    double lasts =
        supply.visits().mornings().isEmpty()
            ? outlook.demand().lasts(outlook.usableL() + more)
            : supply.visits().lasts();
    return outlook.supplied(
        more,
        lasts,
        books(scene, supply, median, median).returnMsCm(scene.msCm()),
        books(scene, supply, high, median).returnMsCm(scene.msCm()),
        watcher.tank(
            bench.tank().with(supply.connectedL()),
            scene,
            perDayL(outlook),
            supply.visits().mornings()));
  }

  private static List<Double> perDayL(Outlook outlook) {
    return outlook.tank().days().stream().map(TankForecast.Day::useL).toList();
  }

  private Visits visits(Outlook outlook, Scene scene) {
    double usable = HomeBench.of(scene.household()).tank().usableL(scene.levelL());
    return Visits.of(perDayL(outlook), learned.factor().logSd(), usable, usable);
  }

  private List<Step> filling(Scene scene, Outlook full) {
    List<Step> steps = new ArrayList<>();
    double pour = scene.levelL() - start.levelL();
    boolean thinner = scene.msCm() < start.msCm() - 0.05;
    if (pour >= LEAST_POUR_L) {
      steps.add(Helps.fill(pour, thinner).alone(full.lasts(), pour));
    }
    if (thinner) {
      steps.add(Helps.dilute(start, scene));
    }
    return steps;
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

  private List<WaterCaution> cautions(Preparation best) {
    List<WaterCaution> cautions =
        new ArrayList<>(List.of(WaterCaution.MAINS, WaterCaution.TIMER, WaterCaution.OVERFLOW));
    for (Step step : best.steps()) {
      if (step.kind() == Step.Kind.TANK) {
        cautions.add(WaterCaution.REFILL);
        cautions.add(WaterCaution.MASS);
      } else if (step.kind() == Step.Kind.COOL || step.kind() == Step.Kind.DOOR) {
        cautions.add(WaterCaution.HEATING);
      }
    }
    cautions.add(WaterCaution.WARM_WATER);
    return cautions.stream().distinct().toList();
  }
}
