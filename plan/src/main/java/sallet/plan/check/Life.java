package sallet.plan.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sallet.crop.Bolting;
import sallet.crop.Crop;
import sallet.crop.HarvestRule;
import sallet.crop.LifeDays;
import sallet.crop.PlantDay;
import sallet.crop.PlantModel;
import sallet.crop.PlantParameters;
import sallet.crop.PlantState;
import sallet.crop.Stay;
import sallet.plan.Present;

/**
 * The life of one pot's plants grown again, day by day, from emergence or from what stands.
 *
 * <p>A day's picks come after its growth. Masses are of the whole pot: a clump counts with all its
 * plants.
 */
final class Life {
  /**
   * Factor on assimilation in a household: growth is less than in the trials the model was fitted
   * to. Judgement, docs/models/growth.md.
   */
  static final double VIGOUR = 0.85;

  private final LocalDate first;
  private final List<Double> standingG;
  private final List<Double> leaves;
  private final double leftG;
  private final HarvestRule rule;

  private Life(
      LocalDate first,
      List<Double> standingG,
      List<Double> leaves,
      double leftG,
      HarvestRule rule) {
    this.first = first;
    this.standingG = standingG;
    this.leaves = leaves;
    this.leftG = leftG;
    this.rule = rule;
  }

  /**
   * What growth goes on from.
   *
   * @param emergence first day of growth
   * @param grownUntil day whose growth is in the state already, its picks not
   * @param vigour factor on assimilation
   */
  record Start(LocalDate emergence, LocalDate grownUntil, PlantState state, double vigour) {
    /** A plant that comes up. */
    static Start atEmergence(Crop crop, LocalDate emergence, double vigour) {
      PlantState state = PlantState.atEmergence(crop.growth().orElseThrow());
      return new Start(emergence, emergence.minusDays(1), state, vigour);
    }

    /** Plants that stand on the first day of a plan, or come up later. */
    static Start of(Present.Plants plants, Crop crop, LocalDate from) {
      return plants.emergence().isAfter(from)
          ? atEmergence(crop, plants.emergence(), plants.vigour())
          : new Start(plants.emergence(), from, plants.state(), plants.vigour());
    }

    /** First day of which the plant's mass is known. */
    LocalDate first() {
      return grownUntil.isBefore(emergence) ? emergence : grownUntil;
    }
  }

  /**
   * Grows a plant.
   *
   * @param crop a crop that can be planned
   * @param stays where it stands, in order
   * @param last last day of growth, not before the first
   * @param pickedShares share of the leaf area taken on a day
   */
  static Life grow(
      Crop crop,
      Start start,
      List<Stay> stays,
      LocalDate last,
      Map<LocalDate, Double> pickedShares) {
    PlantParameters parameters = crop.growth().orElseThrow();
    HarvestRule rule = crop.harvest().orElseThrow();
    PlantDay[] days =
        LifeDays.of(parameters, rule, start.vigour(), start.emergence(), stays, last.plusDays(1));
    PlantState state = start.state();
    List<Double> standing = new ArrayList<>();
    List<Double> leaves = new ArrayList<>();
    double left = 0;
    for (LocalDate day = start.first(); !day.isAfter(last); day = day.plusDays(1)) {
      int age = (int) ChronoUnit.DAYS.between(start.emergence(), day);
      if (day.isAfter(start.grownUntil())) {
        state = PlantModel.step(state, parameters, days[age]);
      }
      standing.add(rule.plantsPerPot() * state.freshG(days[age].dryMatterShare()));
      leaves.add(state.leaves());
      state = state.pickedLeaves(pickedShares.getOrDefault(day, 0.0));
      left = rule.plantsPerPot() * state.freshG(days[age].dryMatterShare());
    }
    return new Life(start.first(), List.copyOf(standing), List.copyOf(leaves), left, rule);
  }

  /** Fresh mass of one plant on a day before its pick, g. */
  double plantG(LocalDate day) {
    return standingG(day) / rule.plantsPerPot();
  }

  /** Fresh mass in the pot on a day before its pick, g. */
  double standingG(LocalDate day) {
    return standingG.get((int) ChronoUnit.DAYS.between(first, day));
  }

  /** Leaves on one plant on a day before its pick. */
  double leaves(LocalDate day) {
    return leaves.get((int) ChronoUnit.DAYS.between(first, day));
  }

  /** Edible grams a pick of a share of the leaf area gives on a day. */
  double pickGrams(LocalDate day, double share) {
    return share * standingG(day) * rule.edibleShare();
  }

  /** Edible grams that stand after the last day's pick. */
  double leftGrams() {
    return leftG * rule.edibleShare();
  }

  /**
   * The last day a plant may stand on the bench: its age limit or, if sooner, the first day on
   * which the bolting sum from emergence has reached its limit. Days after {@code horizon} are not
   * looked at.
   */
  static LocalDate lastBenchDay(
      Crop crop, LocalDate emergence, List<Stay> stays, LocalDate horizon) {
    LocalDate oldest = emergence.plusDays(crop.harvest().orElseThrow().overAgeDays());
    if (crop.bolting().isEmpty()) {
      return oldest;
    }
    Bolting bolting = crop.bolting().get();
    double limitCd = Bolting.LEAVE_AT * bolting.halfSumCd();
    double sumCd = 0;
    for (LocalDate day = emergence;
        day.isBefore(oldest) && !day.isAfter(horizon);
        day = day.plusDays(1)) {
      Stay stay = stayOn(stays, day);
      int at = stay.place().index(day);
      sumCd += bolting.dayCd(stay.place().boltingHeatCd(at), stay.place().photoperiodHours(at));
      if (sumCd >= limitCd) {
        return day;
      }
    }
    return oldest;
  }

  private static Stay stayOn(List<Stay> stays, LocalDate day) {
    Stay found = stays.get(0);
    for (Stay stay : stays) {
      if (!stay.from().isAfter(day)) {
        found = stay;
      }
    }
    return found;
  }
}
