package sallet.water.absence;

import java.time.LocalDate;
import java.util.List;
import sallet.household.Household;
import sallet.water.home.HomeBench;
import sallet.water.home.Learned;
import sallet.water.reservoir.Demand;
import sallet.water.reservoir.TankForecast;

/** Water that is brought when the reservoir alone is not enough, and the salt to leave with. */
final class Supplies {
  /** Solution is not thinned further than this for an absence, mS/cm. Judgement. */
  private static final double THINNEST_MS_CM = 0.4;

  private static final int VISIT_TROUBLE = 6;

  private final Watcher watcher;
  private final Learned learned;
  private final LocalDate from;
  private final HomeBench bench;

  Supplies(Watcher watcher, Learned learned, LocalDate from, Household household) {
    this.watcher = watcher;
    this.learned = learned;
    this.from = from;
    this.bench = HomeBench.of(household);
  }

  /**
   * Water that is brought.
   *
   * @param visits visits that bring it
   * @param connectedL water of a second container, L
   * @param steps what to do for it
   */
  record Supply(Visits visits, double connectedL, List<Step> steps) {
    static final Supply NONE = new Supply(Visits.NONE, 0, List.of());
  }

  /** What a full reservoir needs besides: nothing, visits or a second container. */
  Supply of(Outlook alone, Scene brim) {
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

  /** Visits that fill a reservoir. */
  Visits visits(Outlook outlook, Scene scene) {
    double usable = HomeBench.of(scene.household()).tank().usableL(scene.levelL());
    return Visits.of(perDayL(outlook), learned.factor().logSd(), usable, usable);
  }

  /** As strong as it is, or so thin that the salt stays below its limit on return. */
  Scene thinned(Outlook alone, Scene brim, Supply supply) {
    double used = alone.demand().litresFor(Outlook.SAFE);
    double limit = bench.household().watering().tank().highestMsCm();
    double onReturn = books(brim, supply, used, alone.demand().medianL()).highestLeaveMsCm(limit);
    double highest =
        supply.visits().mornings().isEmpty()
            ? onReturn
            : Math.min(onReturn, untilVisit(alone, brim, supply).highestLeaveMsCm(limit));
    return Double.isNaN(highest)
        ? brim
        : brim.filled(brim.levelL(), Math.min(brim.msCm(), Math.max(THINNEST_MS_CM, highest)));
  }

  /** The outlook with what is brought. */
  Outlook supplied(Outlook outlook, Scene scene, Supply supply) {
    double median = outlook.demand().medianL();
    double high = outlook.demand().litresFor(Outlook.SAFE);
    double more = supply.connectedL() + supply.visits().pouredL();
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

  /** Salt on the evening before the first visit, when it is strongest, if much water is used. */
  private SaltBooks untilVisit(Outlook alone, Scene brim, Supply supply) {
    double median =
        perDayL(alone).stream()
            .limit(supply.visits().mornings().get(0))
            .mapToDouble(Double::doubleValue)
            .sum();
    double used = Demand.of(median, learned.factor().logSd()).litresFor(Outlook.SAFE);
    return new SaltBooks(brim.levelL(), 0, 0, used, learned.uptake().msCm());
  }

  /** Visitors fill it to the brim, so more is poured in when more was used. */
  private SaltBooks books(Scene scene, Supply supply, double usedL, double medianL) {
    double poured = medianL == 0 ? 0 : supply.visits().pouredL() * usedL / medianL;
    return new SaltBooks(
        scene.levelL(), poured, supply.connectedL(), usedL, learned.uptake().msCm());
  }

  private static List<Double> perDayL(Outlook outlook) {
    return outlook.tank().days().stream().map(TankForecast.Day::useL).toList();
  }
}
