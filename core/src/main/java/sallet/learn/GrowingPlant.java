package sallet.learn;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;
import sallet.crop.Stay;
import sallet.learn.StandingGroup.Taken;

/**
 * One plant (or the clump of a pot) lived on the growth model with the moves and picks that were
 * done. Growth comes before the picks of a day.
 */
final class GrowingPlant {
  /** Largest share of the leaf a pick is believed to have taken. Judgement. */
  static final double MOST_TAKEN = 0.5;

  private final PlantParameters parameters;
  private final HarvestRule rule;
  private final LocalDate emergence;
  private final List<Stay> stays;
  private final List<PlantStory.Pick> picks;
  private final PlantDay[] days;

  /**
   * @param emergence first day of growth
   * @param stays in order of time, the first from emergence or before
   * @param picks in order of time
   * @param until last day of growth
   */
  GrowingPlant(
      Crop crop,
      LocalDate emergence,
      List<Stay> stays,
      List<PlantStory.Pick> picks,
      LocalDate until) {
    this.parameters = crop.growth().orElseThrow();
    this.rule = crop.harvest().orElseThrow();
    this.emergence = emergence;
    this.stays = List.copyOf(stays);
    this.picks = List.copyOf(picks);
    this.days = LifeDays.of(parameters, rule, 1, emergence, stays, until.plusDays(1));
  }

  /**
   * How a plant grows.
   *
   * @param log logarithm of its factor on assimilation
   * @param logRegrowth logarithm of the factor each pick it has had puts on assimilation
   */
  record Vigour(double log, double logRegrowth) {
    Vigour plus(double more) {
      return new Vigour(log + more, logRegrowth);
    }

    Vigour regrowing(double more) {
      return new Vigour(log, logRegrowth + more);
    }
  }

  /**
   * A plant found larger or smaller than it was thought.
   *
   * @param picksBefore picks it had had
   * @param logScale logarithm of the factor on its size
   */
  record Scaling(LocalDate date, int picksBefore, double logScale) {}

  /** A plant as it stands, and what was taken from it. */
  record Lived(PlantState state, List<Taken> taken) {}

  List<Stay> stays() {
    return stays;
  }

  int picks() {
    return picks.size();
  }

  /** The plant at the end of a day, after so many of its picks. */
  Lived live(Vigour vigour, List<Scaling> scalings, LocalDate until, int picksDone) {
    return live(vigour, scalings, until, picksDone, state -> {});
  }

  /** The same, telling the state at the end of each day from emergence on. */
  Lived live(
      Vigour vigour,
      List<Scaling> scalings,
      LocalDate until,
      int picksDone,
      Consumer<PlantState> evening) {
    PlantState state = PlantState.atEmergence(parameters);
    List<Taken> taken = new ArrayList<>();
    int last = (int) ChronoUnit.DAYS.between(emergence, until);
    for (int i = 0; i <= last; i++) {
      LocalDate date = emergence.plusDays(i);
      double factor = Math.exp(vigour.log() + taken.size() * vigour.logRegrowth());
      state = PlantModel.step(state, parameters, stronger(days[i], factor));
      state = scaled(state, scalings, date, taken.size());
      while (taken.size() < picksDone && picks.get(taken.size()).date().equals(date)) {
        state = pick(state, i, taken);
        state = scaled(state, scalings, date, taken.size());
      }
      evening.accept(state);
    }
    return new Lived(state, taken);
  }

  private static PlantDay stronger(PlantDay day, double factor) {
    return new PlantDay(
        factor * day.assimilateGPerCm2(),
        day.upkeepFactor(),
        day.growthFactor(),
        day.slaCm2PerG(),
        day.dryMatterShare(),
        day.siteCm2(),
        day.leavesAdded());
  }

  private static PlantState scaled(
      PlantState state, List<Scaling> scalings, LocalDate date, int picks) {
    double log = 0;
    for (Scaling one : scalings) {
      log += one.date().equals(date) && one.picksBefore() == picks ? one.logScale() : 0;
    }
    return log == 0 ? state : times(state, Math.exp(log));
  }

  /** The plant in other proportions of mass and leaf, its leaves as many as before. */
  private static PlantState times(PlantState s, double factor) {
    return new PlantState(
        s.shootG() * factor,
        s.rootG() * factor,
        s.reserveG() * factor,
        s.leafCm2() * factor,
        s.leaves());
  }

  private PlantState pick(PlantState before, int day, List<Taken> taken) {
    PlantStory.Pick pick = picks.get(taken.size());
    PlantState state = before;
    double edibleG = freshG(state, day) * rule.edibleShare();
    double share = pick.share().orElse(HarvestRule.LARGEST_PICK);
    if (pick.edibleG().isPresent()) {
      share = pick.edibleG().getAsDouble() / edibleG;
      if (share > MOST_TAKEN) {
        state = times(state, share / MOST_TAKEN);
        share = MOST_TAKEN;
      }
    }
    taken.add(new Taken(pick.date(), share, pick.edibleG().orElse(share * edibleG)));
    return state.pickedLeaves(share);
  }

  /** Fresh grams of the pot at the end of a day. */
  double freshG(PlantState state, LocalDate date) {
    return freshG(state, (int) ChronoUnit.DAYS.between(emergence, date));
  }

  private double freshG(PlantState state, int day) {
    return state.freshG(days[Math.max(0, day)].dryMatterShare()) * rule.plantsPerPot();
  }

  /** Diameter of the pot's crown at the end of a day as a disc of its light-catching area, cm. */
  double widthCm(PlantState state, LocalDate date) {
    PlantDay day = days[(int) ChronoUnit.DAYS.between(emergence, date)];
    double crown = PlantModel.crownCm2(state.leafCm2(), parameters.crownC(), day.siteCm2());
    return 2 * Math.sqrt(crown * rule.plantsPerPot() / Math.PI);
  }
}
