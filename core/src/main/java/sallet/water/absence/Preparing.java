package sallet.water.absence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.IntStream;
import sallet.water.home.HomeBench;
import sallet.water.reservoir.TopUp;

/** Tries out sets of steps, each with the reservoir filled up before leaving. */
final class Preparing {
  /** A step that saves less is not worth telling. */
  private static final double LEAST_CHANGE = -0.01;

  /** Less is not worth a step, L. */
  private static final double LEAST_POUR_L = 0.5;

  /** Thinner by so much than after any other top-up is told, mS/cm. */
  private static final double THINNER_MS_CM = 0.05;

  /** A set that lasts so much more surely is better. */
  private static final double SURER = 0.005;

  private final Scene start;
  private final LocalDate from;
  private final Watcher watcher;
  private final Supplies supplies;
  private final Outlook full;
  private final IdentityHashMap<Lever, Step> told = new IdentityHashMap<>();

  Preparing(Scene start, LocalDate from, Watcher watcher, Supplies supplies) {
    this.start = start;
    this.from = from;
    this.watcher = watcher;
    this.supplies = supplies;
    this.full = watcher.look(filled(start));
  }

  /** What becomes of the bench when only the reservoir is filled up. */
  Outlook full() {
    return full;
  }

  /** Whether a move leaves fewer pots at risk. */
  boolean helps(Lever move) {
    return watcher.look(filled(move.change().apply(start))).atRisk().size() < full.atRisk().size();
  }

  /** Whether the water lasts and every pot outlives a missed flood once the reservoir is full. */
  boolean lastsAlone(Scene scene) {
    Outlook outlook = watcher.look(filled(scene));
    return outlook.waterSafe() && outlook.atRisk().isEmpty();
  }

  /** When nothing is done. */
  Preparation nothing(Outlook asItStands) {
    return new Preparation(List.of(), start, asItStands, Visits.NONE, 0, 0, true);
  }

  /**
   * The set of steps with the least trouble that is safe; else the one that lasts best.
   *
   * @param levers steps of which any set may be taken
   * @param clearings steps of which one at the most may be added
   */
  Preparation best(List<Lever> levers, List<Lever> clearings) {
    List<List<Lever>> sets =
        IntStream.range(0, 1 << levers.size())
            .mapToObj(mask -> chosen(levers, mask))
            .flatMap(set -> withOneOf(set, clearings).stream())
            .sorted(Comparator.comparingInt(Preparing::trouble))
            .toList();
    Preparation best = prepared(List.of());
    for (List<Lever> set : sets) {
      if (best.safe() && trouble(set) >= best.trouble()) {
        break;
      }
      Preparation next = prepared(set);
      best = better(next, best) ? next : best;
    }
    return best;
  }

  private static boolean better(Preparation next, Preparation best) {
    if (next.safe() != best.safe()) {
      return next.safe();
    }
    return next.safe()
        ? next.trouble() < best.trouble()
        : next.outlook().lasts() > best.outlook().lasts() + SURER;
  }

  /** Everything that would help, each alone, most water first. */
  List<Step> helping(List<Lever> levers, List<Lever> clearings, Outlook asItStands) {
    List<Step> steps = new ArrayList<>();
    double pour = filled(start).levelL() - start.levelL();
    if (pour >= LEAST_POUR_L) {
      steps.add(fill(filled(start)));
    }
    for (Lever lever : levers) {
      Step step = told(lever);
      if (step.useChange() <= LEAST_CHANGE
          || lever.kind() == Step.Kind.LIFT
          || lever.kind() == Step.Kind.MOVE) {
        steps.add(step);
      }
    }
    clearings.stream().skip(Math.max(0, clearings.size() - 1)).forEach(c -> steps.add(told(c)));
    if (!asItStands.waterSafe() && !full.waterSafe()) {
      Visits visits = supplies.visits(full, filled(start));
      if (visits.safe()) {
        steps.add(Helps.neighbour(visits, from));
      }
      steps.add(Helps.tank(Math.ceil(full.missingL())));
    }
    return sorted(steps);
  }

  private Preparation prepared(List<Lever> levers) {
    Scene scene = start;
    for (Lever lever : levers) {
      scene = lever.change().apply(scene);
    }
    Scene brim = filled(scene);
    Outlook alone = watcher.look(brim);
    Supplies.Supply supply = supplies.of(alone, brim);
    Scene thinned = supplies.thinned(alone, brim, supply);
    Outlook outlook = supplies.supplied(watcher.look(thinned), thinned, supply);
    List<Step> steps = new ArrayList<>(filling(thinned));
    levers.forEach(lever -> steps.add(told(lever)));
    steps.addAll(supply.steps());
    return new Preparation(
        sorted(steps),
        thinned,
        outlook,
        supply.visits(),
        supply.connectedL(),
        steps.stream().mapToInt(Step::trouble).sum(),
        outlook.safe(start.household().watering().tank().highestMsCm()));
  }

  private List<Step> filling(Scene scene) {
    List<Step> steps = new ArrayList<>();
    if (scene.levelL() - start.levelL() >= LEAST_POUR_L || !start.usedL().isEmpty()) {
      steps.add(fill(scene));
    }
    double exchanged = start.levelL() - scene.levelL() * scene.msCm() / start.msCm();
    if (exchanged >= LEAST_POUR_L && scene.msCm() < filled(start).msCm() - THINNER_MS_CM) {
      steps.add(Helps.dilute(scene.msCm(), exchanged));
    }
    return steps;
  }

  /** Filling up, with what makes it as strong as it is to be. */
  private Step fill(Scene scene) {
    double pour = scene.levelL() - start.levelL();
    double saltMsCmL = scene.levelL() * scene.msCm() - start.levelL() * start.msCm();
    double strength = pour > 0 ? Math.max(0, saltMsCmL / pour) : 0;
    boolean thin = scene.msCm() < filled(start).msCm() - THINNER_MS_CM;
    return Helps.fill(pour, strength, thin, start.usedL().isEmpty()).alone(full.lasts(), pour);
  }

  private Step told(Lever lever) {
    return told.computeIfAbsent(
        lever, l -> l.told(full, watcher.look(filled(l.change().apply(start)))));
  }

  /** To the brim and, as with every top-up, back to its strength. */
  private static Scene filled(Scene scene) {
    double fullL = HomeBench.of(scene.household()).tank().fullL();
    double wantedMsCm = scene.household().watering().tank().ecMsCm();
    return scene.filled(
        fullL, TopUp.of(scene.levelL(), scene.msCm(), fullL, wantedMsCm).endsMsCm());
  }

  private static List<Step> sorted(List<Step> steps) {
    return steps.stream().sorted(Comparator.comparingDouble(step -> -step.gainL())).toList();
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
}
